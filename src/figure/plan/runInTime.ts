import type { Metre, MetrePerSecond, Second } from '../../core/terms/index.ts'
import { speedUnit } from '../axes.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { timeAxis, timeAxisHeight } from '../strip/timeAxis.ts'
import { fitted, textWidth } from '../textWidth.ts'
import { logTicks, tickLabel } from '../ticks.ts'

/** One record in time: the parts of the run sheet, and the speed of every step of the sweep. */
export interface RunInTimeData extends Words {
  readonly parts: readonly { readonly name: string; readonly duration: Second }[]
  readonly sweepFrom: Second
  readonly steps: readonly { readonly slidingSpeed: MetrePerSecond; readonly dwell: Second }[]
  /** Of the whole record. */
  readonly distance: Metre
}

export interface RunInTimeOptions extends SheetOptions {
  readonly plotHeight: number
}

const runInTimeDefaults: RunInTimeOptions = { palette: 'light', width: 880, plotHeight: 160, id: 'runInTime' }

const laneHeight = 26

/** The parts of the job as a lane, below it the speed over time. Equal data and options give equal bytes. */
export function runInTimeFigure(data: RunInTimeData, options: Partial<RunInTimeOptions> = {}): Markup {
  const chosen = { ...runInTimeDefaults, ...options }
  if (!(chosen.plotHeight >= 100 && chosen.plotHeight <= 1200)) {
    throw new RangeError(`plotHeight must be 100 to 1200 px, got ${chosen.plotHeight} px`)
  }
  const sheet = sheetOf(chosen)
  const head = heading(data, sheet)
  const total = data.parts.reduce((sum, { duration }) => sum + duration, 0)
  const top = head.height + 8
  const plot: Box = { left: 74, right: chosen.width - 24, top, bottom: top + laneHeight + 14 + chosen.plotHeight }
  const foot = footNote(data, { left: plot.left, top: plot.bottom + timeAxisHeight }, sheet)
  return picture({
    sheet,
    title: data.title,
    words: wordsOf(data, total),
    height: plot.bottom + timeAxisHeight + foot.height + 10,
    body: [
      head.markup,
      lane(data, plot, { sheet, total }),
      speedLine(data, plot, { sheet, total }),
      total > 0 ? timeAxis([0, total], plot, sheet) : '',
      foot.markup,
    ],
  })
}

interface Around {
  readonly sheet: Sheet
  readonly total: Second
}

const placeOf =
  ({ left, right }: Box, total: Second) =>
  (time: Second): number =>
    left + (total > 0 ? time / total : 0) * (right - left)

function lane({ parts }: RunInTimeData, plot: Box, { sheet, total }: Around): Markup {
  const { palette } = sheet
  const x = placeOf(plot, total)
  let from = 0
  const pieces: Markup[] = []
  for (const { name, duration } of parts) {
    const [left, right] = [x(from), x(from + duration)]
    from += duration
    pieces.push(
      element('path', { d: `M${rounded(right)} ${plot.top}v${laneHeight}`, stroke: palette.hairline, fill: 'none' }),
    )
    const words = fitted(name, sizes.small, right - left - 6)
    if (words.length < 5 || textWidth(words, sizes.small) > right - left - 4) continue
    pieces.push(
      lettering(words, {
        x: (left + right) / 2,
        y: plot.top + 17,
        fill: palette.ink,
        size: sizes.small,
        anchor: 'middle',
      }),
    )
  }
  const frame = element('path', {
    d: `M${plot.left} ${plot.top}H${plot.right}v${laneHeight}H${plot.left}z`,
    stroke: palette.hairline,
    fill: 'none',
  })
  return element('g', {}, frame, ...pieces)
}

function speedLine({ steps, sweepFrom }: RunInTimeData, plot: Box, { sheet, total }: Around): Markup {
  const { palette } = sheet
  if (steps.length === 0) return ''
  const speeds = steps.map(({ slidingSpeed }) => slidingSpeed)
  const [low, high] = [Math.min(...speeds) / 1.6, Math.max(...speeds) * 1.6]
  const [top, bottom] = [plot.top + laneHeight + 14, plot.bottom]
  const x = placeOf(plot, total)
  const y = (speed: MetrePerSecond): number => bottom - (Math.log(speed / low) / Math.log(high / low)) * (bottom - top)
  let time = sweepFrom
  let path = ''
  for (const { slidingSpeed, dwell } of steps) {
    path += `${path === '' ? 'M' : 'L'}${rounded(x(time))} ${rounded(y(slidingSpeed))}H${rounded(x(time + dwell))}`
    time += dwell
  }
  const unit = speedUnit([low, high])
  const ticks = logTicks(low / unit.metresPerSecond, high / unit.metresPerSecond, 26 / (bottom - top))
  const rules = ticks.map((tick) => `M${plot.left} ${rounded(y(tick * unit.metresPerSecond))}H${plot.right}`).join('')
  return element(
    'g',
    {},
    element('path', { d: rules, stroke: palette.hairline, fill: 'none' }),
    element('path', { d: `M${plot.left} ${top}V${bottom}`, stroke: palette.ink, fill: 'none' }),
    ...ticks.map((tick) =>
      lettering(tickLabel(tick), {
        x: plot.left - 9,
        y: y(tick * unit.metresPerSecond) + 4,
        fill: palette.quiet,
        size: sizes.small,
        anchor: 'end',
      }),
    ),
    lettering(`speed (${unit.text})`, { x: 17, y: (top + bottom) / 2, fill: palette.ink, anchor: 'middle', turn: -90 }),
    element('path', { d: path, stroke: palette.accent, 'stroke-width': 2, fill: 'none' }),
  )
}

function wordsOf({ parts, steps, distance }: RunInTimeData, total: Second): string {
  const minutes = (seconds: Second): string => `${Number((seconds / 60).toPrecision(2))} min`
  const told = parts.map(({ name, duration }) => `${name} ${minutes(duration)}`).join(', ')
  return `One record takes ${minutes(total)}: ${told}. ${steps.length} steps; ${Number(distance.toPrecision(2))} m slid in all.`
}
