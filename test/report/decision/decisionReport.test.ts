import { expect, test } from 'vitest'
import {
  type DecisionInput,
  decisionReport,
  type ReportFigure,
  reportHtml,
  reportPdf,
} from '../../../src/report/index.ts'
import { four, single } from '../../figure/compare/compared.ts'
import { picture } from '../inventedInput.ts'

const records = four.samples.flatMap(({ sample, replicates }) =>
  replicates.map(({ name }, i) => ({ name, sample, replicate: i + 1, raw: 'ab'.repeat(32), setup: 'cd'.repeat(32) })),
)

const figures: ReportFigure[] = [
  ...four.differences.map(() => picture('difference')),
  picture('ranking'),
  picture('replicates'),
]

const whole: DecisionInput = {
  title: 'Drawer runners <invented>',
  question: 'Which slips most easily?',
  author: 'MK',
  date: '2026-11-25',
  comparison: four,
  records,
  left: [{ name: 'odd.csv', why: 'it is not reduced yet' }],
  cautions: ['wax against oil & soap: their loads differ.'],
  removals: [{ record: 'varnish B-5', by: 'MK', why: 'ball scratched' }],
  figures,
  program: 'kufe 0.0.0-test',
}

test('the verdict stands first, and all parts come in their order, their figures and tables numbered through', () => {
  const { summary, sections, subtitle } = decisionReport(whole)
  expect(summary[0]).toBe(four.differences[0].sentence)
  expect(sections.map(({ name }) => name)).toEqual([
    ...['decision', 'differences', 'speeds', 'ranking', 'scatter', 'replicates', 'how', 'records'],
  ])
  const blocks = sections.flatMap((section) => section.blocks)
  const figureNumbers = blocks.flatMap((block) => (block.kind === 'figure' ? [block.figure.number] : []))
  const tableNumbers = blocks.flatMap((block) => (block.kind === 'table' ? [block.table.number] : []))
  expect(figureNumbers).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
  expect(tableNumbers).toEqual(tableNumbers.map((_, i) => i + 1))
  expect(tableNumbers).toHaveLength(10)
  expect(subtitle).toBe('varnish A (5), varnish B (4), wax (3), oil & soap (5) · 18 records')
})

test('who took a replicate out and why, what stands out, and what was left aside, are told', () => {
  const html = reportHtml(decisionReport(whole))
  expect(html).toContain('Taken out by MK: ball scratched')
  expect(html).toContain('lies above the others of its sample: Grubbs')
  expect(html).toContain('odd.csv, as it is not reduced yet')
  expect(html).toContain('wax against oil &amp; soap: their loads differ.')
  expect(html).toContain('Drawer runners &lt;invented&gt;')
  expect(html).not.toContain('<invented>')
})

test('a decision of one pair at one speed has neither ranking nor pictures that were not drawn', () => {
  const { sections } = decisionReport({ ...whole, comparison: single, figures: [], question: undefined })
  expect(sections.map(({ name }) => name)).not.toContain('ranking')
  expect(sections.flatMap(({ blocks }) => blocks).filter(({ kind }) => kind === 'figure')).toEqual([])
})

test('the PDF is set, and equal content gives equal bytes', async () => {
  const [first, again] = [await reportPdf(decisionReport(whole)), await reportPdf(decisionReport(whole))]
  expect(Buffer.from(first.subarray(0, 5)).toString()).toBe('%PDF-')
  expect(Buffer.compare(Buffer.from(first), Buffer.from(again))).toBe(0)
})
