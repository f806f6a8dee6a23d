import { printQuantity } from '../../core/quantity/index.ts'
import type { JudgedAnswer, OrderedSheet, SheetEntry, SheetPart } from '../../core/terms/index.ts'
import { escapeHtml } from '../html/escapeHtml.ts'
import { pageStyle } from '../html/pageStyle.ts'
import { boxText } from './boxText.ts'
import { runSheetStyle } from './runSheetStyle.ts'
import { sheetTotal } from './sheetTotal.ts'

/**
 * A run sheet as one HTML file that needs nothing else and prints on A4: boxes for what was read, cautions before the step that they
 * belong to. Answers, where there are any, stand in the boxes.
 */
export function runSheetHtml(sheet: OrderedSheet, answers: readonly JudgedAnswer[] = []): string {
  const given = new Map(answers.map((answer) => [answer.id, answer]))
  const { title, subtitle, foreword, parts } = sheet
  const numbered = new Map(parts.flatMap(({ entries }) => entries).map(({ id }, i) => [id, i + 1]))
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml(`${title}: run sheet`)}</title>
<style>${pageStyle}${runSheetStyle}</style>
</head>
<body>
<article>
<header>
<p class="kind">Run sheet</p>
<h1>${escapeHtml(title)}</h1>
<p class="subtitle">${escapeHtml(subtitle)}</p>
</header>
<section class="summary" aria-label="Before you begin">
${foreword.map((text) => `<p>${escapeHtml(text)}</p>`).join('\n')}
<p>${escapeHtml(sheetTotal(sheet))}</p>
<p class="fill">Sample <span></span> Replicate <span></span> Date <span></span> By <span></span></p>
</section>
${parts.map((part) => partHtml(part, { numbered, given, sheet })).join('\n')}
</article>
</body>
</html>
`
}

interface Context {
  readonly numbered: ReadonlyMap<string, number>
  readonly given: ReadonlyMap<string, JudgedAnswer>
  readonly sheet: OrderedSheet
}

const partHtml = ({ name, heading, entries }: SheetPart, context: Context): string =>
  `<section id="${escapeHtml(name)}" aria-labelledby="${escapeHtml(name)}-heading">
<h2 id="${escapeHtml(name)}-heading">${escapeHtml(heading)}</h2>
<ol class="sheet" start="${context.numbered.get(entries[0]?.id ?? '') ?? 1}">
${entries.map((entry) => entryHtml(entry, context)).join('\n')}
</ol>
${name === 'sweep' ? sweepHtml(context.sheet) : ''}</section>`

function entryHtml({ id, cautions, text, check }: SheetEntry, { given }: Context): string {
  const warned = cautions.map((caution) => `<p class="caution"><b>Caution.</b> ${escapeHtml(caution)}</p>`).join('')
  const answer = given.get(id)
  const box =
    check === null
      ? ''
      : `<div class="check"><span class="box${answer === undefined || answer.state === 'open' ? '' : ` ${answer.state}`}">${escapeHtml(boxText(answer, check.dimension))}</span><p>${escapeHtml(check.read)}: <b>${escapeHtml(check.accept)}</b>. <span class="otherwise">Otherwise: ${escapeHtml(check.otherwise)}</span></p></div>`
  return `<li id="step-${escapeHtml(id)}">${warned}<p>${escapeHtml(text)}</p>${box}</li>`
}

function sweepHtml({ sweep }: OrderedSheet): string {
  const cell = (value: string): string => `<td class="right">${escapeHtml(value)}</td>`
  const rows = sweep.map(
    ({ step, slidingSpeed, angularVelocity, dwell, turns }) =>
      `<tr>${cell(String(step))}${cell(printQuantity(slidingSpeed, 'velocity', { digits: 3 }))}${cell(printQuantity(angularVelocity, 'angularVelocity', { digits: 3, unit: 'rad/s' }))}${cell(printQuantity(dwell, 'time', { digits: 3, unit: 's' }))}${cell(turns.toFixed(2))}</tr>`,
  )
  const heads = ['step', 'sliding speed', 'rotation', 'dwell', 'turns'].map(
    (head) => `<th class="right" scope="col">${head}</th>`,
  )
  return `<div class="table wide"><table><caption>The steps of the sweep</caption><thead><tr>${heads.join('')}</tr></thead><tbody>
${rows.join('\n')}
</tbody></table></div>
`
}
