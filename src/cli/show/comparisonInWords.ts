import type { Compared } from '../../bench/compare/index.ts'
import { spokenShare } from '../../core/decide/index.ts'
import { fromSi, printQuantity, readableUnit } from '../../core/quantity/index.ts'
import type { Comparison, SampleDifference } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { characterPlot } from './characterPlot.ts'
import { differencePlot } from './differencePlot.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

const widest = 110

/** The whole answer for people: the verdict, the difference over the speeds, named speeds, ranking, scatter, and every replicate. */
export function comparisonInWords(compared: Compared, screen: Screen): string {
  const { comparison } = compared
  const width = Math.min(screen.width, widest)
  const say = (text: string): string => wrap(text, width, { indent: '  ' })
  const title = (text: string): string => painted(screen, text, 'strong')
  const sections = [
    `${painted(screen, compared.title, 'accent')} · ${compared.records.length} records`,
    saidSentences(compared).map(say).join('\n'),
    ...comparison.differences.map((difference) => differenceSection(difference, comparison, screen)),
    comparison.differences.length === 0 ? meanPlot(comparison, screen) : '',
    comparison.differences.length === 0 ? '' : `${title('At single speeds')}\n${namedTable(comparison)}`,
    comparison.ranking === null || comparison.samples.length < 3
      ? ''
      : `${title('Ranking')}\n${rankingTable(comparison.ranking)}\n${say(comparison.ranking.method)}`,
    `${title('Scatter between replicates')}\n${scatterTable(comparison)}`,
    `${title('Replicates')}\n${replicateTable(comparison)}`,
    compared.left.map(({ name, why }) => say(`Left aside: ${name}, as ${why}.`)).join('\n'),
    painted(screen, say(`${compared.program}. ${comparison.method}`), 'quiet'),
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

/** Verdicts, then what makes them doubtful, then what they rest on. */
function saidSentences({ comparison: { sentences, differences }, cautions, alarms }: Compared): string[] {
  const verdicts = Math.max(1, differences.length)
  return [
    ...sentences.slice(0, verdicts),
    ...cautions.map(({ sentence }) => sentence),
    ...alarms,
    ...sentences.slice(verdicts),
  ]
}

/** Every third speed of the grid, its ends too, as a table, and all of it as a small plot. */
function differenceSection(difference: SampleDifference, comparison: Comparison, screen: Screen): string {
  const { speeds, scale, samples } = comparison
  const unit = readableUnit(Math.sqrt(speeds[0] * speeds[speeds.length - 1]), 'velocity')
  const places = speeds.map((_, i) => i).filter((i) => i % 3 === 0 || i === speeds.length - 1)
  const cells = (print: (i: number) => string): string[] => places.map(print)
  const effect = (value: number): string => (scale === 'ratio' ? (100 * value).toFixed(1) : value.toFixed(4))
  const meanOf = (name: string) => samples.find(({ sample }) => sample === name)?.mean ?? []
  const head = (text: string, at: string, print: (i: number) => string) =>
    ({ head: text, unit: at, align: 'right', cells: cells(print) }) as const
  const size = scale === 'ratio' ? '%' : ''
  const table = textTable([
    head('speed', unit.text, (i) => String(Number(fromSi(speeds[i], unit).toPrecision(4)))),
    head(difference.first, '', (i) => meanOf(difference.first)[i].toFixed(4)),
    head(difference.second, '', (i) => meanOf(difference.second)[i].toFixed(4)),
    head('difference', size, (i) => effect(difference.value[i])),
    head('95 % from', size, (i) => effect(difference.low[i])),
    head('to', size, (i) => effect(difference.high[i])),
    { head: 'says', unit: '', align: 'left', cells: cells((i) => saidAt(difference, speeds[i])) },
  ])
  const plot = differencePlot(difference, comparison, { width: Math.min(screen.width, 78), unicode: screen.unicode })
  const title = painted(screen, `${difference.second} against ${difference.first}`, 'strong')
  return plot === undefined ? `${title}\n${table}` : `${title}\n${plot}\n\n${table}`
}

function saidAt({ stretches }: SampleDifference, speed: number): string {
  const stretch = stretches.find(({ from, to }) => from <= speed && speed <= to)
  if (stretch === undefined) return ''
  const { verdict, within, beyond } = stretch
  if (verdict === 'open') return within ? 'the same within the margin' : 'cannot tell'
  return `${verdict}${within ? ', within the margin' : beyond ? ', beyond the margin' : ''}`
}

function namedTable({ differences, scale }: Comparison): string {
  const rows = differences.flatMap(({ first, second, named }) =>
    named.map((effect) => ({ pair: `${second} against ${first}`, ...effect })),
  )
  const effect = (value: number): string => (scale === 'ratio' ? `${(100 * value).toFixed(1)} %` : value.toFixed(4))
  const chance = (p: number): string => (p < 0.001 ? '< 0.001' : p.toFixed(3))
  return textTable([
    { head: '', unit: '', align: 'left', cells: rows.map(({ pair }) => pair) },
    {
      head: 'speed',
      unit: '',
      align: 'right',
      cells: rows.map(({ slidingSpeed }) => printQuantity(slidingSpeed, 'velocity', { digits: 3 })),
    },
    { head: 'difference', unit: '', align: 'right', cells: rows.map(({ value }) => effect(value)) },
    {
      head: '95 % alone',
      unit: '',
      align: 'right',
      cells: rows.map(({ low, high }) => `${effect(low)} to ${effect(high)}`),
    },
    { head: 'p', unit: '', align: 'right', cells: rows.map(({ p }) => chance(p)) },
    { head: 'p by Holm', unit: '', align: 'right', cells: rows.map(({ adjusted }) => chance(adjusted)) },
  ])
}

function rankingTable({ samples }: NonNullable<Comparison['ranking']>): string {
  return textTable([
    { head: 'sample', unit: '', align: 'left', cells: samples.map(({ sample }) => sample) },
    { head: 'friction', unit: '', align: 'right', cells: samples.map(({ friction }) => friction.toFixed(4)) },
    { head: '95 % from', unit: '', align: 'right', cells: samples.map(({ low }) => low.toFixed(4)) },
    { head: 'to', unit: '', align: 'right', cells: samples.map(({ high }) => high.toFixed(4)) },
    { head: 'letters', unit: '', align: 'left', cells: samples.map(({ letters }) => letters) },
  ])
}

function scatterTable({ samples, repeatability }: Comparison): string {
  const rows = [
    ...samples.map(({ sample, used, repeatability: own }) => ({ sample, used: String(used), own })),
    ...(samples.length < 2 ? [] : [{ sample: 'together', used: '', own: repeatability }]),
  ]
  const print = (of: (own: NonNullable<Comparison['repeatability']>) => number): string[] =>
    rows.map(({ own }) => (own === null ? '–' : spokenShare(of(own))))
  return textTable([
    { head: 'sample', unit: '', align: 'left', cells: rows.map(({ sample }) => sample) },
    { head: 'replicates', unit: '', align: 'right', cells: rows.map(({ used }) => used) },
    { head: 's_r', unit: '', align: 'right', cells: print(({ pooled }) => pooled) },
    { head: '95 % from', unit: '', align: 'right', cells: print(({ low }) => low) },
    { head: 'to', unit: '', align: 'right', cells: print(({ high }) => high) },
    { head: 'least', unit: '', align: 'right', cells: print(({ profile }) => Math.min(...profile)) },
    { head: 'most', unit: '', align: 'right', cells: print(({ profile }) => Math.max(...profile)) },
    { head: 'limit r', unit: '', align: 'right', cells: print(({ limit }) => limit) },
  ])
}

function replicateTable({ samples, scale }: Comparison): string {
  const rows = samples.flatMap(({ sample, replicates, mean }) =>
    replicates.map((one) => {
      const off = one.friction.map((value, i) => (scale === 'ratio' ? value / mean[i] - 1 : value - mean[i]))
      const known = off.filter(Number.isFinite)
      const level = known.reduce((sum, value) => sum + value, 0) / known.length
      const text = scale === 'ratio' ? `${level < 0 ? '−' : '+'}${spokenShare(Math.abs(level))}` : level.toFixed(4)
      const most = one.h.length === 0 ? '–' : Math.max(...one.h.map(Math.abs)).toFixed(2)
      return { sample, name: one.name, off: text, most, words: flagWords(one) }
    }),
  )
  return textTable([
    { head: 'sample', unit: '', align: 'left', cells: rows.map(({ sample }) => sample) },
    { head: 'record', unit: '', align: 'left', cells: rows.map(({ name }) => name) },
    { head: 'off the mean', unit: '', align: 'right', cells: rows.map(({ off }) => off) },
    { head: 'largest h', unit: '', align: 'right', cells: rows.map(({ most }) => most) },
    { head: '', unit: '', align: 'left', cells: rows.map(({ words }) => words) },
  ])
}

function flagWords({ flags, removed }: Comparison['samples'][number]['replicates'][number]): string {
  if (removed !== null) return `taken out by ${removed.by}: ${removed.why}`
  return flags
    .map(({ test, outlier, seen, limit }) => {
      if (test === 'mandelH') return `h ${seen.toFixed(2)} over ${limit.toFixed(2)}`
      return `${outlier ? 'outlier' : 'straggler'} (Grubbs${test === 'grubbsPair' ? ' for two' : ''})`
    })
    .join('; ')
}

/** Replicates as points about their mean. */
function meanPlot({ samples, speeds }: Comparison, screen: Screen): string {
  const [{ replicates, mean }] = samples
  const unit = readableUnit(Math.sqrt(speeds[0] * speeds[speeds.length - 1]), 'velocity')
  const points = replicates.flatMap(({ friction, removed }) =>
    friction.flatMap((value, i) =>
      Number.isFinite(value) ? [{ speed: fromSi(speeds[i], unit), friction: value, trusted: removed === null }] : [],
    ),
  )
  const line = mean.map((friction, i) => ({ speed: fromSi(speeds[i], unit), friction }))
  const plot = characterPlot(
    { points: points.filter((_, i) => i % 2 === 0), line, speedUnit: unit.text },
    { width: Math.min(screen.width, 78), rows: 13, unicode: screen.unicode },
  )
  return plot === undefined
    ? ''
    : `${painted(screen, 'Friction coefficient', 'strong')}   o replicate   dots their mean\n${plot}`
}
