import { fourierTransform, linearLeastSquares, nthSmallest, powerOfTwoFrom } from '../../numeric/index.ts'
import { printQuantity } from '../../quantity/index.ts'
import type { Ratio, Remark, Second } from '../../terms/index.ts'

/** Most rows, from the end of the step, that the spectrum is taken of. */
const mostRows = 4_096
const fewestRows = 40

/** Fewest cycles in the step. */
const fewestCycles = 4

/** Share of the residual's variance that the line and its next two harmonics must hold. */
const lineShare = 0.5

/** Peak to trough under this share of friction is left unsaid. Common practice, no source. */
const smallestSwing = 0.05

/** What stick and slip is looked for in. */
export interface StickSlipSeen {
  /** Residual of the step's fit in friction units, turn ripple taken off. */
  readonly residual: Float64Array
  readonly friction: number
  readonly sampleInterval: Second
  readonly turns: number
  readonly step: number
}

/** The line that stick and slip draws in the spectrum. */
export interface StickSlipLine {
  /** Hz */
  readonly frequency: number
  /** Peak to trough over the mean friction. */
  readonly swing: Ratio
  /** Share of the rows in which friction rises: sticking loads the spring, slipping empties it. */
  readonly rising: Ratio
}

/**
 * A strong line in the residual that is not locked to the turns. Under it the mean of the step is no kinetic friction.
 * The torque is known at the shaft alone, so the frequency may belong to the rig (TRADE practice: compare √(k/I)/2π).
 */
function stickSlipLine(seen: StickSlipSeen): StickSlipLine | undefined {
  const series = seen.residual.subarray(Math.max(0, seen.residual.length - mostRows))
  if (series.length < fewestRows || !(seen.sampleInterval > 0)) return undefined
  const size = Math.abs(seen.friction)
  // Most steps are quiet, and the extremes tell it sooner.
  if (!(range(series) / size > smallestSwing)) return undefined
  const swing = (percentile(series, 0.975) - percentile(series, 0.025)) / size
  if (!(swing > smallestSwing)) return undefined
  const cycles = strongestCycles(series)
  if (cycles === undefined || !(explained(series, cycles) > lineShare)) return undefined
  const turns = (seen.turns * series.length) / seen.residual.length
  if (turns > 0.5 && isTurnLocked(cycles, turns)) return undefined
  return { frequency: cycles / (series.length * seen.sampleInterval), swing, rising: risingShare(series) }
}

/** Stick and slip with frequency and swing, where `stickSlipLine` finds it. */
export function stickSlip(seen: StickSlipSeen): Remark | undefined {
  const line = stickSlipLine(seen)
  if (line === undefined) return undefined
  return {
    kind: 'stickSlip',
    seen: line.swing,
    limit: smallestSwing,
    unit: '',
    step: seen.step,
    sentence:
      `Friction swings at ${printQuantity(line.frequency, 'frequency', { digits: 3 })} by ` +
      `${printQuantity(line.swing, 'ratio', { digits: 3 })} of its mean, not locked to the turn: stick–slip. The mean is no kinetic friction.`,
    next: 'Slide faster, raise the stiffness of shaft and coupling, or report this speed as unsteady.',
  }
}

/** Cycles within the series at the top of its spectrum; undefined where the top is at the edge of what can be told. */
function strongestCycles(series: Float64Array): number | undefined {
  const size = 4 * powerOfTwoFrom(series.length)
  const real = new Float64Array(size)
  const mean = series.reduce((a, b) => a + b, 0) / series.length
  series.forEach((value, i) => {
    real[i] = value - mean
  })
  const imaginary = new Float64Array(size)
  fourierTransform(real, imaginary)
  const perBin = series.length / size
  let best = { power: 0, bin: 0 }
  for (let bin = Math.ceil(fewestCycles / perBin); bin < size / 2; bin++) {
    const power = real[bin] ** 2 + imaginary[bin] ** 2
    if (power > best.power) best = { power, bin }
  }
  return best.bin === 0 ? undefined : best.bin * perBin
}

/** Share of the variance that a line at `cycles` and its next two harmonics explain. */
function explained(series: Float64Array, cycles: number): number {
  const columns: Float64Array[] = [new Float64Array(series.length).fill(1)]
  for (let order = 1; order <= 3; order++) {
    const turn = (2 * Math.PI * cycles * order) / series.length
    if (turn > Math.PI) break
    columns.push(series.map((_, i) => Math.cos(turn * i)))
    columns.push(series.map((_, i) => Math.sin(turn * i)))
  }
  const mean = series.reduce((a, b) => a + b, 0) / series.length
  const total = series.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  const { residualSumOfSquares } = linearLeastSquares(columns, series)
  return 1 - residualSumOfSquares / total
}

function isTurnLocked(cycles: number, turns: number): boolean {
  const order = Math.round(cycles / turns)
  return order >= 1 && order <= 12 && Math.abs(cycles - order * turns) < 1
}

function risingShare(series: Float64Array): number {
  let rising = 0
  for (let i = 1; i < series.length; i++) if (series[i] > series[i - 1]) rising++
  return rising / (series.length - 1)
}

function range(series: Float64Array): number {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let i = 0; i < series.length; i++) {
    if (series[i] < low) low = series[i]
    if (series[i] > high) high = series[i]
  }
  return high - low
}

const percentile = (series: Float64Array, share: number): number =>
  nthSmallest(series.slice(), Math.min(series.length - 1, Math.floor(share * series.length)))
