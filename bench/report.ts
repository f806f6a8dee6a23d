// How long a report takes: from a reduced record to its pictures, its content, HTML and PDF, and how large they are.
// node bench/report.ts --rounds 20

import { basename } from 'node:path'
import { parseArgs } from 'node:util'
import { fitRecord, type ReducedRecord, reduceFile } from '../src/bench/index.ts'
import { reportInput } from '../src/bench/reportInput.ts'
import type { Channels, Outcome, Outside } from '../src/core/terms/index.ts'
import { readRecord } from '../src/io/index.ts'
import { type ReportContent, reportHtml, reportOf, reportPdf } from '../src/report/index.ts'

/** Longest that two pages may take once the thread is warm, ms. */
const allowed = 150

const { values } = parseArgs({ options: { rounds: { type: 'string', default: '20' } } })
const rounds = Number(values.rounds)
const record = 'examples/lacquer/lacquer-a-1.csv'
const outside: Outside = {
  now: () => new Date(),
  progress: () => {},
  stop: { aborted: false },
  program: 'kufe, measured',
}

const say = (text: string): boolean => process.stdout.write(`${text}\n`)
const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[times.length >> 1]

/** Median and longest time of a job over the rounds, ms. */
async function time(job: () => unknown): Promise<{ middle: number; longest: number }> {
  const times: number[] = []
  for (let round = 0; round < rounds; round++) {
    const started = performance.now()
    await job()
    times.push(performance.now() - started)
  }
  return { middle: median(times), longest: Math.max(...times) }
}

function value<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

async function reduced(): Promise<{ fitted: ReducedRecord; channels: Channels }> {
  const setup = record.replace('.csv', '.setup.yaml')
  const reading = { units: [], columns: [], mappings: '' }
  const fitted = fitRecord(value(await reduceFile({ file: record, setup, reading, options: {} }, outside)), outside)
  return { fitted, channels: value(await readRecord(record)).channels }
}

/** The first of the parts that fill two pages. */
const short: readonly string[] = ['question', 'pair', 'conditions', 'zeroes', 'budget', 'provenance']
const cut = (content: ReportContent): ReportContent => ({
  ...content,
  sections: content.sections.filter(({ name }) => short.includes(name)),
})

const pagesOf = (pdf: Uint8Array): number =>
  Buffer.from(pdf)
    .toString('latin1')
    .match(/\/Type \/Page\b/g)?.length ?? 0

const { fitted, channels } = await reduced()
const texts = { question: 'Which lacquer slides easier on a drawer runner?', date: '2026-11-25' }
const content = reportOf(reportInput(fitted, channels, texts))
const started = performance.now()
const whole = await reportPdf(content)
const first = performance.now() - started
const two = await reportPdf(cut(content))
const html = reportHtml(content)

const row = (what: string, { middle, longest }: { middle: number; longest: number }, note = ''): void => {
  say(`${what.padEnd(28)} ${middle.toFixed(1).padStart(7)} ms  at most ${longest.toFixed(1).padStart(7)} ms  ${note}`)
}
say(`${basename(record)}, ${rounds} rounds, medians`)
row('pictures, light and dark', await time(() => reportInput(fitted, channels, texts)))
const input = reportInput(fitted, channels, texts)
row('content', await time(() => reportOf(input)))
row('HTML', await time(() => reportHtml(content)), `${(html.length / 1024).toFixed(0)} KiB`)
say(`${'PDF, first, thread started'.padEnd(28)} ${first.toFixed(1).padStart(7)} ms`)
row(
  'PDF, warm',
  await time(() => reportPdf(content)),
  `${pagesOf(whole)} pages, ${(whole.length / 1024).toFixed(0)} KiB`,
)
const warm = await time(() => reportPdf(cut(content)))
row('PDF, short, warm', warm, `${pagesOf(two)} pages, allowed ${allowed} ms`)
if (!(warm.middle <= allowed) || pagesOf(two) !== 2) process.exitCode = 1
