import { type Ink, ink } from './ink.ts'
import { type PlotScale, plotScale } from './plotScale.ts'

/** What a small plot of characters shows; friction and speed in the unit in which they are printed. */
export interface PlotData {
  readonly points: readonly { readonly speed: number; readonly friction: number; readonly trusted: boolean }[]
  readonly line: readonly { readonly speed: number; readonly friction: number }[]
  readonly speedUnit: string
  /** What lies along the horizontal axis; sliding speed where nothing is said. */
  readonly along?: string
}

export interface PlotOptions {
  readonly width: number
  readonly rows: number
  /** Braille dots for the line; else dots of ASCII. */
  readonly unicode: boolean
}

const labelWidth = 9

/**
 * The curve in characters, friction up and speed to the right, both on logarithms: `o` a step, `x` a step that the fit
 * leaves out, dots the fitted curve. Undefined where there are fewer than two places to show.
 */
export function characterPlot(data: PlotData, { width, rows, unicode }: PlotOptions): string | undefined {
  const speeds = plotScale([...data.points, ...data.line].map(({ speed }) => speed))
  const values = plotScale([...data.points, ...data.line].map(({ friction }) => friction))
  if (speeds === undefined || values === undefined || data.points.length < 2) return undefined
  const columns = Math.max(20, width - labelWidth - 2)
  const paper = ink(columns, rows, unicode)
  drawLine(
    paper,
    data.line.map(({ speed, friction }) => [speeds.share(speed), values.share(friction)] as const),
  )
  for (const { speed, friction, trusted } of data.points) {
    paper.letter(speeds.share(speed), values.share(friction), trusted ? 'o' : 'x')
  }
  const body = withLabels(paper, values, rows)
  const corner = unicode ? '└' : '+'
  const rule = `${' '.repeat(labelWidth)}${corner}${(unicode ? '─' : '-').repeat(columns)}`
  return [...body, rule, ...speedLine(speeds, columns, `${data.along ?? 'sliding speed'} (${data.speedUnit})`)]
    .map((line) => line.trimEnd())
    .join('\n')
}

type Place = readonly [right: number, up: number]

/** Dots from place to place, close enough to run together. */
function drawLine(paper: Ink, places: readonly Place[]): void {
  for (const [index, [right, up]] of places.entries()) {
    const [lastRight, lastUp] = places[index - 1] ?? [right, up]
    const dots = 1 + Math.ceil(400 * Math.hypot(right - lastRight, up - lastUp))
    for (let dot = 1; dot <= dots; dot++) {
      paper.dot(lastRight + ((right - lastRight) * dot) / dots, lastUp + ((up - lastUp) * dot) / dots)
    }
  }
}

function withLabels(paper: Ink, values: PlotScale, rows: number): readonly string[] {
  const labels = new Map<number, string>()
  for (const tick of values.ticks) {
    const row = Math.round((1 - values.share(tick)) * (rows - 1))
    if (!labels.has(row) && !labels.has(row - 1) && !labels.has(row + 1)) labels.set(row, String(tick))
  }
  return paper.lines().map((line, row) => `${(labels.get(row) ?? '').padStart(labelWidth - 1)} ${paper.wall}${line}`)
}

/** Ticks below the axis, as many as stand apart, and its title. */
function speedLine(speeds: PlotScale, columns: number, title: string): readonly string[] {
  let line = ''
  for (const tick of speeds.ticks) {
    const label = String(tick)
    const start = Math.round(speeds.share(tick) * (columns - 1)) - (label.length >> 1) + labelWidth + 1
    if (start < line.length + 2 && line !== '') continue
    if (start + label.length > columns + labelWidth + 2) continue
    line = line.padEnd(Math.max(0, start)) + label
  }
  return [line, ' '.repeat(labelWidth + 1 + Math.max(0, (columns - title.length) >> 1)) + title]
}
