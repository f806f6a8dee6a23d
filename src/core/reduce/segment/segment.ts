import type { Channels, ReduceOptions, Reduction } from '../../terms/index.ts'
import type { SignalSource } from '../signals.ts'
import { byPlateaus } from './byPlateaus.ts'
import { bySpeedBins } from './bySpeedBins.ts'
import { byStepColumn, type Stretch } from './byStepColumn.ts'

/** Fewest rows that a plateau or a speed bin may have. */
const fewestRows = 10

/** Share of rows that must lie on plateaus before a record counts as stepped. */
const plateauShare = 0.5

/** A speed range (largest over smallest) above which a record without plateaus is a ramp. */
const rampRange = 1.5

/** How a record was split, and into what. */
export interface Segmentation {
  readonly how: Reduction['segmentation']
  readonly stretches: readonly Stretch[]
}

/**
 * Splits a record into stretches: by its step column where it has one, else by plateaus of speed, else, where the
 * speed runs through a range, as a ramp in bins of log speed; a record at one speed is one stretch.
 */
export function segment(channels: Channels, source: SignalSource, options: ReduceOptions): Segmentation {
  const wanted = options.segmentation
  if (wanted === 'stepColumn' || (wanted === 'auto' && channels.names.includes('step'))) {
    const stretches = byStepColumn(stepReader(channels), channels.rows)
    return { how: 'stepColumn', stretches }
  }
  const speed = source.speed(0, channels.rows)
  if (wanted === 'ramp') return { how: 'ramp', stretches: bySpeedBins(speed, options.rampBinsPerDecade, fewestRows) }
  const plateaus = byPlateaus(speed, options.settleTolerance, fewestRows)
  const stepped = wanted === 'plateaus' || plateaus.share > plateauShare
  if (stepped && plateaus.stretches.length > 0) {
    return { how: plateaus.stretches.length === 1 ? 'whole' : 'plateaus', stretches: plateaus.stretches }
  }
  if (speedRange(speed) > rampRange) {
    return { how: 'ramp', stretches: bySpeedBins(speed, options.rampBinsPerDecade, fewestRows) }
  }
  return { how: 'whole', stretches: [{ number: 1, from: 0, to: channels.rows }] }
}

/** Reads the step column, into the same array again and again where the record lies outside memory. */
function stepReader(channels: Channels): (from: number, to: number) => Float64Array {
  let room = new Float64Array(0)
  return (from, to) => {
    if (channels.readInto === undefined) return channels.read('step', from, to)
    if (room.length < to - from) room = new Float64Array(to - from)
    const out = room.subarray(0, to - from)
    channels.readInto('step', from, out)
    return out
  }
}

function speedRange(speed: Float64Array): number {
  let low = Number.POSITIVE_INFINITY
  let high = 0
  for (const value of speed) {
    const size = Math.abs(value)
    if (!(size > 0)) continue
    low = Math.min(low, size)
    high = Math.max(high, size)
  }
  return high > 0 ? high / low : 1
}
