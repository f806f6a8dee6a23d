import { fromSi, readableUnit, type Unit } from '../../core/quantity/index.ts'
import type { Box } from '../sheet.ts'
import { linearTicks, logTicks } from '../ticks.ts'
import { channelWords } from './channelWords.ts'
import type { StripChannel, StripFigureData } from './stripData.ts'

/** The vertical scale of one panel. */
export interface PanelScale {
  readonly unit: Unit
  /** Pixels of an SI value, held to the panel. */
  readonly y: (value: number) => number
  /** Values worth a label, in `unit`, and their pixels. */
  readonly ticks: readonly { readonly value: number; readonly y: number }[]
  /** True where something leaves the panel. */
  readonly cut: boolean
}

/** Largest over smallest from which a channel that never falls to zero gets a logarithm. */
const logFrom = 30

/** Distance between labels in pixels. */
const closest = 17

/**
 * The scale serves the rows in contact: a gap of millimetres while the bodies are apart would leave nothing of the
 * micrometres that matter. Where nothing was in contact it serves all. Undefined for a channel without a number.
 */
export function panelScale(channel: StripChannel, data: StripFigureData, panel: Box): PanelScale | undefined {
  const whole = rangeOf(channel, () => true)
  if (whole === undefined || channel.name === 'time' || channel.name === 'step') return undefined
  const [low, high] = rangeOf(channel, touching(data, channel.columns.min.length)) ?? whole
  return { ...scaleBetween([low, high], channel.name, panel), cut: whole[0] < low || whole[1] > high }
}

/** A channel whose name is drawn. */
export type DrawnChannel = keyof typeof channelWords

/** The scale of a panel for values from `low` to `high`, SI. */
export function scaleBetween(
  [low, high]: readonly [number, number],
  name: DrawnChannel,
  panel: Pick<Box, 'top' | 'bottom'>,
): Omit<PanelScale, 'cut'> {
  const unit = readableUnit(Math.max(Math.abs(low), Math.abs(high)), channelWords[name].dimension)
  const ends = [fromSi(low, unit), fromSi(high, unit)] as const
  const log = ends[0] > 0 && ends[1] / ends[0] > logFrom
  const [bottom, top] = log ? [ends[0] / 1.3, ends[1] * 1.3] : widened(ends)
  const bend = log ? Math.log : (value: number): number => value
  const from = bend(bottom)
  const perUnit = (panel.bottom - panel.top) / (bend(top) - from)
  const place = (value: number): number => {
    if (log && !(value > 0)) return panel.bottom
    return Math.max(panel.top, Math.min(panel.bottom, panel.bottom - (bend(value) - from) * perUnit))
  }
  const apart = closest / (panel.bottom - panel.top)
  const values = log ? logTicks(bottom, top, apart) : fewTicks([bottom, top], apart)
  return {
    unit,
    // Not by way of `fromSi`, which is exact to the last digit and slow: here a tenth of a pixel is enough.
    y: (value) => place((value - unit.offset) / unit.factor),
    ticks: values.map((value) => ({ value, y: place(value) })),
  }
}

/** At least two round values, so that a panel tells its scale; every other one of a finer row where a coarser one holds too few. */
function fewTicks([bottom, top]: readonly [number, number], apart: number): readonly number[] {
  const coarse = linearTicks(bottom, top, apart)
  if (coarse.length >= 2) return coarse
  const fine = linearTicks(bottom, top, apart / 2)
  const most = Math.max(2, Math.floor(1 / apart))
  const stride = Math.ceil(fine.length / most)
  return fine.filter((_, index) => index % stride === 0)
}

/** Room above and below, also for a channel that never moves. */
function widened([low, high]: readonly [number, number]): readonly [number, number] {
  const margin = Math.max(0.08 * (high - low), 1e-3 * Math.max(Math.abs(low), Math.abs(high)), 1e-9)
  return [low - margin, high + margin]
}

function rangeOf(
  { columns }: StripChannel,
  counts: (column: number) => boolean,
): readonly [number, number] | undefined {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let column = 0; column < columns.min.length; column++) {
    const min = columns.min[column]
    const max = columns.max[column]
    if (!Number.isFinite(min) || !Number.isFinite(max) || !counts(column)) continue
    if (min < low) low = min
    if (max > high) high = max
  }
  return low <= high ? [low, high] : undefined
}

/** Columns of which no part was blank or out of contact. */
function touching({ time, stretches }: StripFigureData, columns: number): (column: number) => boolean {
  const apart = new Uint8Array(columns)
  const width = (time[1] - time[0]) / columns
  for (const { kind, from, to } of stretches) {
    if (kind !== 'blank' && kind !== 'outOfContact') continue
    const first = Math.max(0, Math.floor((from - time[0]) / width) - 1)
    apart.fill(1, first, Math.ceil((to - time[0]) / width) + 1)
  }
  return (column) => apart[column] === 0
}
