import type { Comparison, ReplicateCurve, SampleCurve } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup } from '../markup.ts'
import { footNote, heading, picture, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { fitted } from '../textWidth.ts'
import { type KeyEntry, keyOf } from './key.ts'
import { sampleStroke } from './sampleColours.ts'
import { areaBetween, barAt, lineThrough, type SpeedPanel, speedPanel } from './speedPanel.ts'

/** Replicates behind the means of their samples. */
export interface ReplicateCurvesFigureData extends Words, Pick<Comparison, 'speeds' | 'samples'> {}

export interface ReplicateCurvesFigureOptions extends SheetOptions {
  /** Height of the plot alone in pixels, 160 to 1200. */
  readonly plotHeight: number
}

const defaults: ReplicateCurvesFigureOptions = { palette: 'light', width: 880, plotHeight: 320, id: 'replicates' }

/** Every replicate as a thin line, the mean of each sample with its band over them; flagged ones stand out, removed ones are dashed. */
export function replicateCurvesFigure(
  data: ReplicateCurvesFigureData,
  options: Partial<ReplicateCurvesFigureOptions> = {},
): Markup {
  const chosen = { ...defaults, ...options }
  const sheet = { ...sheetOf(chosen), paletteName: chosen.palette }
  const head = heading(data, sheet)
  const values = data.samples.flatMap(({ mean, low, high, replicates }) => [
    ...mean,
    ...(low ?? []),
    ...(high ?? []),
    ...replicates.flatMap(({ friction }) => friction),
  ])
  const on = speedPanel({
    ...{ sheet, values, speeds: data.speeds },
    top: head.height + 10,
    height: chosen.plotHeight,
    title: 'friction coefficient µ (1)',
    right: 128,
  })
  const all = data.samples.flatMap(({ replicates }) => replicates)
  const key = keyOf(keyEntries(all), { left: 74, top: on.bottom + 6, sheet })
  const foot = footNote(data, { left: 74, top: key.bottom }, sheet)
  const body = [
    head.markup,
    on.markup,
    ...data.samples.flatMap(({ replicates }, place) =>
      replicates.map((one) => thinLine(one, { place, speeds: data.speeds, on })),
    ),
    ...data.samples.map((sample, place) => meanLine(sample, { place, speeds: data.speeds, on })),
    ...endLabels(data, on),
    key.markup,
    foot.markup,
  ]
  return picture({
    sheet,
    title: data.title,
    words: inWords(data),
    height: on.bottom + 6 + key.height + foot.height + 14,
    body,
  })
}

function thinLine({ friction, removed, flags }: ReplicateCurve, { place, speeds, on }: MeanPlace): Markup {
  const { palette } = on.stage
  const flagged = flags.some(({ test }) => test !== 'mandelH')
  const stroke = flagged ? palette.caution : removed === null ? sampleStroke(place, palette).colour : palette.quiet
  if (speeds.length === 1) {
    return Number.isFinite(friction[0])
      ? element('circle', {
          cx: on.stage.x(speeds[0]) + 14,
          cy: on.panel.y(friction[0]),
          r: 2.5,
          fill: removed === null ? stroke : palette.paper,
          stroke,
        })
      : ''
  }
  return element('path', {
    d: lineThrough(speeds, friction, on),
    fill: 'none',
    stroke,
    'stroke-width': flagged ? 2 : 0.9,
    'stroke-opacity': flagged ? 1 : 0.7,
    'stroke-dasharray': removed === null ? undefined : '6 4',
  })
}

interface MeanPlace {
  readonly place: number
  readonly speeds: readonly number[]
  readonly on: SpeedPanel
}

function meanLine({ mean, low, high }: SampleCurve, { place, speeds, on }: MeanPlace): Markup {
  const { palette } = on.stage
  const { colour, dash } = sampleStroke(place, palette)
  if (speeds.length === 1) {
    const x = on.stage.x(speeds[0])
    const bar = low === null || high === null ? '' : barAt(x, [on.panel.y(low[0]), on.panel.y(high[0])], colour)
    return bar + element('circle', { cx: x, cy: on.panel.y(mean[0]), r: 4, fill: colour })
  }
  const area =
    low === null || high === null
      ? ''
      : element('path', { d: areaBetween(speeds, [low, high], on), fill: colour, 'fill-opacity': palette.bandOpacity })
  return (
    area +
    element('path', {
      d: lineThrough(speeds, mean, on),
      fill: 'none',
      stroke: colour,
      'stroke-width': 2.2,
      'stroke-dasharray': dash,
    })
  )
}

/** Names at the fast end of the means, pushed apart where they would lie on each other. */
function endLabels({ samples }: ReplicateCurvesFigureData, { stage, panel }: SpeedPanel): Markup[] {
  const { plot, palette } = stage
  const places = samples
    .map(({ sample, mean }, place) => ({ sample, place, y: panel.y(mean[mean.length - 1]) }))
    .sort((a, b) => a.y - b.y)
  let last = Number.NEGATIVE_INFINITY
  return places.map(({ sample, place, y }) => {
    last = Math.max(y + 4, last + 15)
    return lettering(fitted(sample, sizes.small, 112), {
      x: plot.right + 8,
      y: last,
      fill: sampleStroke(place, palette).colour,
      size: sizes.small,
      weight: 600,
    })
  })
}

function keyEntries(all: readonly ReplicateCurve[]): KeyEntry[] {
  const entries: KeyEntry[] = [
    { mark: 'band', text: 'mean and its 95 % band' },
    { mark: 'thin', text: 'replicate' },
  ]
  if (all.some(({ flags }) => flags.some(({ test }) => test !== 'mandelH'))) {
    entries.push({ mark: 'flagged', text: 'stands out from its sample' })
  }
  if (all.some(({ removed }) => removed !== null)) entries.push({ mark: 'removed', text: 'taken out' })
  return entries
}

const inWords = ({ samples }: ReplicateCurvesFigureData): string =>
  samples
    .map(({ sample, used, replicates, mean }) => {
      const out = replicates.length - used
      const taken = out === 0 ? '' : `, ${out} more taken out`
      return `${sample}: ${used} ${used === 1 ? 'replicate' : 'replicates'}${taken}; mean friction ${Math.min(...mean).toPrecision(3)} to ${Math.max(...mean).toPrecision(3)}.`
    })
    .join(' ')
