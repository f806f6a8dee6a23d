import { fromSi, readableUnit } from '../../core/quantity/index.ts'
import type { Comparison, SampleDifference } from '../../core/terms/index.ts'
import { ink } from './ink.ts'
import { plotScale } from './plotScale.ts'

const labelWidth = 9
const rows = 13

/**
 * The difference with its band in characters: `o` the estimate, dots the ends of the band, a rule where there is no difference, and
 * `m` at the margins. Undefined for fewer than two speeds.
 */
export function differencePlot(
  { value, low, high }: SampleDifference,
  { speeds, scale, margin }: Comparison,
  { width, unicode }: { readonly width: number; readonly unicode: boolean },
): string | undefined {
  const unit = readableUnit(Math.sqrt(speeds[0] * speeds[speeds.length - 1]), 'velocity')
  const axis = plotScale(speeds.map((speed) => fromSi(speed, unit)))
  if (axis === undefined || speeds.length < 2) return undefined
  const size = scale === 'ratio' ? 100 : 1
  const margins = [scale === 'ratio' ? 1 / (1 + margin) - 1 : -margin, margin]
  const all = [...low, ...high, ...margins, 0].map((one) => one * size)
  const [least, most] = [Math.min(...all), Math.max(...all)]
  const up = (one: number): number => (one * size - least) / (most - least)
  const across = (i: number): number => axis.share(fromSi(speeds[i], unit))
  const columns = Math.max(20, width - labelWidth - 2)
  const paper = ink(columns, rows, unicode)
  for (const edge of [low, high]) {
    for (let i = 1; i < speeds.length; i++) {
      for (let dot = 0; dot <= 8; dot++) {
        const share = dot / 8
        paper.dot(
          across(i - 1) + share * (across(i) - across(i - 1)),
          up(edge[i - 1]) + share * (up(edge[i]) - up(edge[i - 1])),
        )
      }
    }
  }
  for (let column = 0; column < columns; column++) paper.letter(column / (columns - 1), up(0), unicode ? '─' : '-')
  for (const one of margins) {
    for (let column = 0; column < columns; column += 6) paper.letter(column / (columns - 1), up(one), 'm')
  }
  for (let i = 0; i < speeds.length; i += 2) paper.letter(across(i), up(value[i]), 'o')
  const labels = new Map([...margins, 0].map((one) => [Math.round((1 - up(one)) * (rows - 1)), one * size]))
  const body = paper.lines().map((line, row) => {
    const label = labels.get(row)
    return `${(label === undefined ? '' : short(label)).padStart(labelWidth - 1)} ${paper.wall}${line}`
  })
  const ticks = tickLine(axis, columns)
  const title = `sliding speed (${unit.text})   o difference${scale === 'ratio' ? ' (%)' : ''}   dots 95 % band   m margin`
  const rule = `${' '.repeat(labelWidth)}${unicode ? '└' : '+'}${(unicode ? '─' : '-').repeat(columns)}`
  return [...body, rule, ticks, ' '.repeat(labelWidth + 1) + title].map((line) => line.trimEnd()).join('\n')
}

const short = (value: number): string => String(Number(value.toPrecision(3)))

function tickLine(axis: NonNullable<ReturnType<typeof plotScale>>, columns: number): string {
  let line = ''
  for (const tick of axis.ticks) {
    const label = String(tick)
    const start = Math.round(axis.share(tick) * (columns - 1)) - (label.length >> 1) + labelWidth + 1
    if (start < line.length + 2 && line !== '') continue
    if (start + label.length <= columns + labelWidth + 2) line = line.padEnd(start) + label
  }
  return line
}
