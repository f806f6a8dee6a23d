// Long because a style sheet reads best in one piece.

/** Style of the page: a journal's methods page with its headings in the margin. Colours as in the figures. */
export const pageStyle = `
:root{--paper:#fff;--ink:#1b2730;--quiet:#566670;--line:#cfd8dc;--accent:#1f6b52;--stops:#d55e00;--caution:#e69f00;--note:#0072b2;--on-caution:#1b2730;--on:#fff}
@media (prefers-color-scheme:dark){:root{--paper:#0f1a2b;--ink:#e8edf1;--quiet:#a3b3bf;--line:#2d3c50;--accent:#5cc49c;--note:#56b4e9;--on:#0f1a2b;--on-caution:#0f1a2b}}
*{box-sizing:border-box}
html{background:var(--paper);color:var(--ink);-webkit-text-size-adjust:100%}
body{margin:0;font:1.0625rem/1.55 'Source Serif 4','Source Serif Pro',Charter,'Bitstream Charter',Cambria,Georgia,serif;font-variant-numeric:lining-nums;overflow-wrap:anywhere;hyphens:auto}
article{max-width:66rem;margin:0 auto;padding:3rem 1.5rem 4rem}
header,.summary{max-width:52rem}
h1,h2,.kind,.by,dt,table,figcaption,.state,.where,.lead,footer,.note,.remarks b,.checklist b{font-family:'Source Sans 3','Source Sans Pro','Noto Sans','Helvetica Neue',Arial,sans-serif}
h1{font-size:2.1rem;line-height:1.15;font-weight:600;margin:.2rem 0 .4rem;hyphens:none}
.kind{color:var(--accent);font-weight:600;margin:0;letter-spacing:.02em}
.subtitle{margin:0;max-width:none;color:var(--quiet);font-size:1.05rem}
.by{margin:.6rem 0 0;color:var(--quiet);font-size:.9rem}
.summary{border-top:2px solid var(--accent);border-bottom:1px solid var(--line);margin:1.8rem 0 0;padding:.9rem 0}
.summary p{margin:0 0 .45rem}
.summary p:last-child{margin:0}
section[id]{margin-top:2rem;padding-top:.7rem;border-top:1px solid var(--line)}
h2{font-size:1.05rem;line-height:1.35;font-weight:600;color:var(--accent);margin:0 0 .6rem;hyphens:none}
p{margin:0 0 .7rem;max-width:40rem}
.lead{font-weight:600;font-size:.97em}
dl{display:grid;grid-template-columns:minmax(8rem,12rem) 1fr;gap:.3rem 1.2rem;margin:0 0 1rem}
dt{color:var(--quiet);font-size:.9rem;padding-top:.12rem}
dd{margin:0;font-variant-numeric:lining-nums tabular-nums}
code{font:.82em ui-monospace,'DejaVu Sans Mono',Menlo,Consolas,monospace}
figure{margin:.4rem 0 1.2rem}
figure svg{display:block;width:100%;height:auto}
.paper{background:#fff}
figcaption,caption{font-size:.9rem;line-height:1.4;text-align:left}
figcaption{margin-top:.4rem;max-width:46rem}
.table{margin:.4rem 0 1.3rem;overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:.875rem;line-height:1.35;font-variant-numeric:lining-nums tabular-nums}
caption{padding-bottom:.4rem;caption-side:top}
thead{border-top:1.5px solid var(--ink);border-bottom:1px solid var(--ink)}
tbody{border-bottom:1.5px solid var(--ink)}
th,td{text-align:left;vertical-align:top;padding:.2rem .7rem .2rem 0;hyphens:none;overflow-wrap:normal}
th:last-child,td:last-child{padding-right:0}
th{font-weight:600}
.units td{color:var(--quiet);padding-top:0}
tbody tr+tr td{border-top:1px solid var(--line)}
.right{text-align:right;white-space:pre}
.note{color:var(--quiet);font-size:.85rem;margin:.35rem 0 0}
ol.remarks,ul.checklist{list-style:none;margin:0;padding:0}
.remarks li{display:grid;grid-template-columns:1.7rem 1fr;gap:.2rem;margin-bottom:.9rem}
.remarks p{margin:0 0 .15rem;max-width:44rem}
.where{color:var(--quiet);font-size:.9rem}
.next{font-style:italic}
.sign{width:1.25rem;height:1.25rem;margin-top:.15rem}
.sign text{font:700 11px 'Source Sans 3',Arial,sans-serif;text-anchor:middle;fill:#fff}
.sign.stops{fill:var(--stops)}
.sign.caution{fill:var(--caution)}
.sign.caution text{fill:var(--on-caution)}
.sign.note{fill:var(--note)}
.sign.note text{fill:var(--on)}
.checklist li{display:grid;grid-template-columns:5rem 1fr;gap:.2rem .8rem;padding:.35rem 0;border-top:1px solid var(--line)}
.checklist li:last-child{border-bottom:1px solid var(--line)}
.checklist p{margin:0;max-width:44rem}
.checklist b{font-weight:600;font-size:.95rem}
.state{font-size:.85rem;padding-top:.15rem;color:var(--quiet)}
.lacking .state{color:var(--ink);font-weight:600}
.lacking .state::before{content:'\\25CB\\2002'}
.partly .state::before{content:'\\25D0\\2002'}
.present .state::before{content:'\\25CF\\2002';color:var(--accent)}
footer{margin-top:2.5rem;color:var(--quiet);font-size:.85rem}
.dark{display:none}
@media (prefers-color-scheme:dark){.light{display:none}.dark{display:block}}
@media screen and (min-width:60rem){
section[id]{display:grid;grid-template-columns:11rem minmax(0,1fr);column-gap:2rem}
section[id]>h2{grid-column:1;grid-row:1}
section[id]>:not(h2){grid-column:2}
section[id]>figure,section[id]>.wide{grid-column:1/-1}
section.reaching>h2{grid-column:1/-1}
.summary{padding-left:13rem}
header,.summary{max-width:none}
}
@page{size:A4;margin:18mm 16mm 20mm}
@media print{
:root{--paper:#fff;--ink:#000;--quiet:#404040;--line:#bdbdbd;--accent:#1f6b52;--note:#0072b2;--on:#fff;--on-caution:#1b2730;color-scheme:light;font-size:9pt}
body{line-height:1.4}
article{max-width:none;padding:0}
.light{display:block}.dark{display:none}
h2{break-after:avoid}
figure,.remarks li,.checklist li,tr{break-inside:avoid}
thead{display:table-header-group}
section[id]{margin-top:1.4rem;border-top:0;padding-top:0}
p{orphans:3;widows:3;max-width:none}
}
`
