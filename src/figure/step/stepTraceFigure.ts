import type { Second } from '../../core/terms/index.ts'
import { lettering } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { tickLabel } from '../ticks.ts'
import { hatching } from '../windowShade.ts'
import { acrossHeight, type PlainPlot, plainAxes, plainMargins, plainPlot, roomFor } from './plainPlot.ts'
import { type KeyEntry, plotKey } from './plotKey.ts'

/** Friction of the rows of one step over time, and what was made of it. */
export interface StepTraceFigureData extends Words {
  /** Time of each row, s from the start of the record, rising. */
  readonly time: ArrayLike<Second>
  /** Friction of each row after zeroes and blank; NaN where there is none. */
  readonly friction: ArrayLike<number>
  /** Rows from here on (and up to `keptTo`) made the value. */
  readonly keptFrom: Second
  readonly keptTo: Second
  /** The value with its own 95 % interval; null where the step gave none. */
  readonly value: { readonly friction: number; readonly low: number; readonly high: number } | null
}

export interface StepFigureOptions extends SheetOptions {
  /** Height of the plot alone in pixels, 80 to 800. */
  readonly plotHeight: number
}

const defaults: StepFigureOptions = { palette: 'light', width: 640, plotHeight: 180, id: 'step-trace' }

/** The rows of a step over time: what was cut is hatched, the value lies across what was kept with its own interval. */
export function stepTraceFigure(data: StepTraceFigureData, options: Partial<StepFigureOptions> = {}): Markup {
  const chosen = checkedHeight({ ...defaults, ...options })
  const sheet = sheetOf(chosen)
  const head = heading(data, sheet)
  const { time } = data
  const box = plotBox(head.height, chosen)
  const up = roomFor(shownValues(data)) ?? [0, 1]
  const [from, to] = time.length === 0 ? [0, 1] : [time[0], time[time.length - 1]]
  const plot = plainPlot(
    box,
    { from, to: to > from ? to : from + 1, title: 'time (s)' },
    { from: up[0], to: up[1], title: 'friction µ (1)' },
  )
  const key = plotKey(keyOf(data, sheet), { left: box.left, top: box.bottom + acrossHeight + 4 }, sheet)
  const foot = footNote(data, { left: box.left, top: box.bottom + acrossHeight + 4 + key.height }, sheet)
  const body = [
    head.markup,
    plainAxes(plot, sheet),
    cutTones(data, plot, sheet),
    traceOf(data, plot, sheet),
    valueMarks(data, plot, sheet),
    key.markup,
    foot.markup,
  ]
  const height = box.bottom + acrossHeight + 4 + key.height + foot.height + 12
  return picture({ sheet, title: data.title, words: inWords(data), height, defs: [hatching(sheet)], body })
}

/** Where the plot of `stepTraceFigure` lies in its picture, for what a page lays over it; time runs evenly from its left edge to its right. */
export function stepTracePlot(data: Words, options: Partial<StepFigureOptions> = {}): Box {
  const chosen = checkedHeight({ ...defaults, ...options })
  return plotBox(heading(data, sheetOf(chosen)).height, chosen)
}

const plotBox = (head: number, { width, plotHeight }: StepFigureOptions): Box => ({
  left: plainMargins.left,
  right: width - plainMargins.right,
  top: head + 6,
  bottom: head + 6 + plotHeight,
})

/** Throws RangeError for a height that no plot is made for. */
export function checkedHeight<T extends StepFigureOptions>(options: T): T {
  const { plotHeight } = options
  if (!(plotHeight >= 80 && plotHeight <= 800))
    throw new RangeError(`plotHeight must be 80 to 800 px, got ${plotHeight} px`)
  return options
}

/** All that must find room: kept rows and the interval; cut rows only where nothing was kept, or they would squeeze the rest. */
function* shownValues({ time, friction, keptFrom, keptTo, value }: StepTraceFigureData): Generator<number> {
  let kept = value !== null
  if (value !== null) yield* [value.low, value.high]
  for (let row = 0; row < time.length; row++) {
    if (!(time[row] >= keptFrom && time[row] <= keptTo) || Number.isNaN(friction[row])) continue
    kept = true
    yield friction[row]
  }
  if (kept) return
  for (let row = 0; row < time.length; row++) yield friction[row]
}

function traceOf({ time, friction }: StepTraceFigureData, { x, y, box }: PlainPlot, { palette }: Sheet): Markup {
  let d = ''
  let pen = 'M'
  for (let row = 0; row < time.length; row++) {
    if (Number.isNaN(friction[row])) {
      pen = 'M'
      continue
    }
    d += `${pen}${rounded(x(time[row]))} ${rounded(y(friction[row]))}`
    pen = 'L'
  }
  if (d !== '')
    return element('path', { d, fill: 'none', stroke: palette.ink, 'stroke-width': 0.9, 'stroke-linejoin': 'round' })
  const at = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 }
  return lettering('no row of this step gives friction', { ...at, fill: palette.ink, anchor: 'middle' })
}

function cutTones(
  { time, keptFrom, keptTo }: StepTraceFigureData,
  { x, box }: PlainPlot,
  { palette, id }: Sheet,
): Markup {
  if (time.length === 0) return ''
  const tone = (from: number, to: number): Markup => {
    if (!(to - from > 0.5)) return ''
    const area = { x: from, width: to - from, y: box.top, height: box.bottom - box.top }
    return (
      element('rect', { ...area, fill: palette.shade, 'fill-opacity': 0.12 }) +
      element('rect', { ...area, fill: `url(#${id}-hatch)` })
    )
  }
  return tone(box.left, x(keptFrom)) + tone(x(keptTo), box.right)
}

function valueMarks({ value, keptFrom, keptTo }: StepTraceFigureData, { x, y }: PlainPlot, { palette }: Sheet): Markup {
  if (value === null) return ''
  const [left, right] = [x(keptFrom), x(keptTo)]
  const band = { x: left, width: right - left, y: y(value.high), height: Math.max(0.5, y(value.low) - y(value.high)) }
  const line = { d: `M${rounded(left)} ${rounded(y(value.friction))}H${rounded(right)}`, fill: 'none' }
  return (
    element('rect', { ...band, fill: palette.accent, 'fill-opacity': palette.bandOpacity + 0.15 }) +
    element('path', { ...line, stroke: palette.accent, 'stroke-width': 2 })
  )
}

function keyOf({ value, time, keptFrom, keptTo }: StepTraceFigureData, { palette, id }: Sheet): readonly KeyEntry[] {
  const stroke = (colour: string, width: number) => (at: { x: number; y: number }) =>
    element('path', { d: `M${rounded(at.x - 11)} ${at.y}h22`, stroke: colour, 'stroke-width': width, fill: 'none' })
  const entries: KeyEntry[] = [{ text: 'rows after zeroes and blank', draw: stroke(palette.ink, 0.9) }]
  if (value !== null) entries.push({ text: 'value and its own 95 % interval', draw: stroke(palette.accent, 2) })
  if (time.length > 0 && (keptFrom > time[0] || keptTo < time[time.length - 1])) {
    const area = { width: 20, height: 12, fill: `url(#${id}-hatch)`, stroke: palette.shade }
    entries.push({ text: 'cut', draw: ({ x, y }) => element('rect', { x: x - 10, y: y - 6, ...area }) })
  }
  return entries
}

function inWords({ time, keptFrom, keptTo, value }: StepTraceFigureData): string {
  if (time.length === 0) return 'This step holds no rows.'
  const end = time[time.length - 1]
  const cut = Math.max(0, keptFrom - time[0]) + Math.max(0, end - keptTo)
  const seconds = (span: number): string => `${tickLabel(Number(span.toPrecision(3)))} s`
  const kept = `${seconds(keptTo - keptFrom)} of ${seconds(end - time[0])} were kept, ${seconds(cut)} cut.`
  if (value === null) return `${kept} They gave no friction value.`
  const five = (number: number): string => tickLabel(Number(number.toPrecision(5)))
  return `${kept} Friction ${five(value.friction)}, own 95 % interval from ${five(value.low)} to ${five(value.high)}.`
}
