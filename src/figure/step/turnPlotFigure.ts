import type { Radian, TurnHarmonic } from '../../core/terms/index.ts'
import { lettering } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { footNote, heading, picture, type Sheet, sheetOf, type Words } from '../sheet.ts'
import { tickLabel } from '../ticks.ts'
import { acrossHeight, type PlainPlot, plainAxes, plainMargins, plainPlot, roomFor } from './plainPlot.ts'
import { type KeyEntry, plotKey } from './plotKey.ts'
import { checkedHeight, type StepFigureOptions } from './stepTraceFigure.ts'

/** Friction of the kept rows of one step against the place of the shaft in its turn. */
export interface TurnPlotFigureData extends Words {
  /** Running angle of each row, not folded into one turn. */
  readonly angle: ArrayLike<Radian>
  /** Friction of each row; NaN where there is none. */
  readonly friction: ArrayLike<number>
  /** The step's value and what the turns add to it; null where it has none. */
  readonly fit: { readonly friction: number; readonly harmonics: readonly TurnHarmonic[] } | null
}

const defaults: StepFigureOptions = { palette: 'light', width: 640, plotHeight: 180, id: 'turn-plot' }

const turn = 2 * Math.PI
/** Places of the turn over which rows are averaged: five degrees. */
const bins = 72

/**
 * One turn across, friction up, every turn of the step over the others: what repeats every turn shows as a wave, and the mean
 * over five degrees with what the harmonics say of it.
 */
export function turnPlotFigure(data: TurnPlotFigureData, options: Partial<StepFigureOptions> = {}): Markup {
  const chosen = checkedHeight({ ...defaults, ...options })
  const sheet = sheetOf(chosen)
  const head = heading(data, sheet)
  const box = {
    left: plainMargins.left,
    right: sheet.width - plainMargins.right,
    top: head.height + 6,
    bottom: head.height + 6 + chosen.plotHeight,
  }
  const up = roomFor(Array.from(data.friction)) ?? [0, 1]
  const every = box.right - box.left >= 400 ? 45 : 90
  const ticks = Array.from({ length: 360 / every + 1 }, (_, index) => index * every)
  const plot = plainPlot(
    box,
    { from: 0, to: 360, title: 'place in the turn (°)', ticks },
    { from: up[0], to: up[1], title: 'friction µ (1)' },
  )
  const turns = turnsOf(data.angle)
  const key = plotKey(keyOf(data, sheet), { left: box.left, top: box.bottom + acrossHeight + 4 }, sheet)
  const foot = footNote(data, { left: box.left, top: box.bottom + acrossHeight + 4 + key.height }, sheet)
  const body = [
    head.markup,
    plainAxes(plot, sheet),
    rowDots(data, plot, sheet),
    lines(data, plot, sheet),
    key.markup,
    foot.markup,
  ]
  const height = box.bottom + acrossHeight + 4 + key.height + foot.height + 12
  return picture({ sheet, title: data.title, words: inWords(data, turns), height, body })
}

/** How many turns the rows span. */
function turnsOf(angle: ArrayLike<Radian>): number {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let row = 0; row < angle.length; row++) {
    if (angle[row] < low) low = angle[row]
    if (angle[row] > high) high = angle[row]
  }
  return low <= high ? (high - low) / turn : 0
}

const folded = (angle: Radian): number => 360 * (angle / turn - Math.floor(angle / turn))

/** One path of short strokes; thousands of circles would make a figure of hundreds of kilobytes. */
function rowDots({ angle, friction }: TurnPlotFigureData, { x, y, box }: PlainPlot, { palette }: Sheet): Markup {
  let d = ''
  for (let row = 0; row < angle.length; row++) {
    if (!Number.isFinite(angle[row]) || !Number.isFinite(friction[row])) continue
    d += `M${x(folded(angle[row])).toFixed(1)} ${y(friction[row]).toFixed(1)}h0`
  }
  if (d !== '') {
    const look = { stroke: palette.quiet, 'stroke-width': 2.4, 'stroke-linecap': 'round', 'stroke-opacity': 0.45 }
    return element('path', { d, fill: 'none', ...look })
  }
  const at = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 }
  return lettering('no row of this step gives friction', { ...at, fill: palette.ink, anchor: 'middle' })
}

/** Mean friction of each five degrees; NaN where no row lies. */
export function turnMeans(angle: ArrayLike<Radian>, friction: ArrayLike<number>): Float64Array {
  const sum = new Float64Array(bins)
  const count = new Float64Array(bins)
  for (let row = 0; row < angle.length; row++) {
    if (!Number.isFinite(angle[row]) || !Number.isFinite(friction[row])) continue
    const bin = Math.min(bins - 1, Math.floor((folded(angle[row]) / 360) * bins))
    sum[bin] += friction[row]
    count[bin]++
  }
  return sum.map((total, bin) => (count[bin] === 0 ? Number.NaN : total / count[bin]))
}

function lines(data: TurnPlotFigureData, plot: PlainPlot, { palette }: Sheet): Markup {
  const means = turnMeans(data.angle, data.friction)
  const degrees = Array.from({ length: bins }, (_, bin) => (360 * (bin + 0.5)) / bins)
  const seen = pathOf(
    degrees.map((at, bin) => [at, means[bin]]),
    plot,
  )
  const mean = seen === '' ? '' : element('path', { d: seen, fill: 'none', stroke: palette.ink, 'stroke-width': 1.4 })
  if (data.fit === null || seen === '') return mean
  const { friction, harmonics } = data.fit
  const wave = Array.from({ length: 181 }, (_, index): [number, number] => [
    2 * index,
    waveAt(2 * index, friction, harmonics),
  ])
  const dashes = { fill: 'none', stroke: palette.accent, 'stroke-width': 2, 'stroke-dasharray': '7 4' }
  return mean + element('path', { d: pathOf(wave, plot), ...dashes })
}

/** Friction that value and harmonics give at an angle: µ·(1 + Σ a·cos(kθ − φ)). */
const waveAt = (degrees: number, friction: number, harmonics: readonly TurnHarmonic[]): number =>
  friction +
  Math.abs(friction) *
    harmonics.reduce(
      (sum, { order, amplitude, phase }) => sum + amplitude * Math.cos((order * degrees * Math.PI) / 180 - phase),
      0,
    )

function pathOf(places: readonly (readonly [number, number])[], { x, y }: PlainPlot): string {
  let d = ''
  let pen = 'M'
  for (const [at, value] of places) {
    if (!Number.isFinite(value)) {
      pen = 'M'
      continue
    }
    d += `${pen}${rounded(x(at))} ${rounded(y(value))}`
    pen = 'L'
  }
  return d
}

function keyOf({ fit }: TurnPlotFigureData, { palette }: Sheet): readonly KeyEntry[] {
  const stroke = (look: Readonly<Record<string, string | number>>) => (at: { x: number; y: number }) =>
    element('path', { d: `M${rounded(at.x - 11)} ${at.y}h22`, fill: 'none', ...look })
  const dot = { fill: palette.quiet, 'fill-opacity': 0.6 }
  const entries: KeyEntry[] = [
    { text: 'rows', draw: ({ x, y }) => element('circle', { cx: x, cy: y, r: 2, ...dot }) },
    { text: 'mean of 5°', draw: stroke({ stroke: palette.ink, 'stroke-width': 1.4 }) },
  ]
  if (fit !== null) {
    const look = { stroke: palette.accent, 'stroke-width': 2, 'stroke-dasharray': '7 4' }
    entries.push({ text: 'value with its waves over the turn', draw: stroke(look) })
  }
  return entries
}

function inWords({ fit }: TurnPlotFigureData, turns: number): string {
  const span = `The kept rows span ${tickLabel(Number(turns.toPrecision(3)))} turns.`
  if (fit === null) return `${span} They gave no friction value.`
  const waves = fit.harmonics.map(
    ({ order, amplitude, uncertainty }) =>
      `${order === 1 ? 'once a turn' : `${order} times a turn`} ${percent(amplitude)} ± ${percent(uncertainty)} %`,
  )
  return waves.length === 0
    ? `${span} No wave of the turn could be told.`
    : `${span} Friction swings ${waves.join(', ')} of its value (amplitude and standard uncertainty).`
}

const percent = (share: number): string => tickLabel(Number((100 * share).toPrecision(2)))
