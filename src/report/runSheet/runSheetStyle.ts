/** What a run sheet has beyond a report's page: boxes to write into, cautions that cannot be overlooked. */
export const runSheetStyle = `
.sheet{margin:0;padding-left:1.8rem}
.sheet li{margin-bottom:1rem;break-inside:avoid}
.caution{border-left:4px solid var(--caution);padding-left:.7rem;font-size:.95rem}
.check{display:grid;grid-template-columns:9rem 1fr;gap:.8rem;align-items:start}
.check p{font-size:.95rem;margin:0}
.box{display:block;min-height:2rem;border:1.5px solid var(--ink);padding:.2rem .4rem;font-variant-numeric:tabular-nums}
.box.outside{border-color:var(--stops);border-width:3px}
.otherwise{color:var(--quiet)}
.fill span{display:inline-block;min-width:7rem;border-bottom:1px solid var(--ink);margin-right:1rem}
`
