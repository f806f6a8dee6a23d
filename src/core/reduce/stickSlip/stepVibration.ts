import { nthSmallest } from '../../numeric/index.ts'
import type { Interval, MetrePerSecond, RadianPerSecond, Ratio } from '../../terms/index.ts'
import { lineAt } from './lineAt.ts'
import { slipCycles } from './slipCycles.ts'
import { type TurningPoint, turningPoints } from './turningPoints.ts'
import { type VibrationNumbers, vibrationNumbers } from './vibrationNumbers.ts'
import type { VibrationRows } from './vibrationRows.ts'

/**
 * What a step's vibration is. `quiet`: none that counts. `irregular`: swings without cycles, as noise makes them. `stickSlip`: slow
 * loading, quick fall. `turnLocked`: fixed to places of the turn. `hunting`: the controller's own, seen in the speed or without
 * contact. `ringing`: even, at the natural frequency. `unclear`: even cycles without a cause. `cannotTell`: too few samples or cycles.
 */
export const vibrationVerdicts = [
  'quiet',
  'irregular',
  'stickSlip',
  'turnLocked',
  'hunting',
  'ringing',
  'unclear',
  'cannotTell',
] as const

/** One of `vibrationVerdicts`. */
export type VibrationVerdict = (typeof vibrationVerdicts)[number]

/** Swing under this share of friction counts as quiet. Common practice, no source. */
export const smallestSwing = 0.05
/** Fewest whole cycles. */
const fewestCycles = 5
/** Fewest samples in a cycle; under them a fall cannot be told from a rise. */
const samplesPerCycle = 5
/** Scatter of the periods above which there are no cycles; a clear saw-tooth may be less regular. */
const regular = { even: 0.3, sawTooth: 0.6 } as const
/** A fall that takes at most this share of a cycle is quick. */
const quickFall = 0.36

/** The vibration of one step. */
export interface StepVibration {
  readonly step: number
  readonly slidingSpeed: MetrePerSecond
  readonly angularVelocity: RadianPerSecond
  readonly friction: number
  readonly verdict: VibrationVerdict
  /** Middle 95 % of the rows over friction, and the share that it was held against. */
  readonly swing: Ratio
  readonly numbers: VibrationNumbers | null
  /** Torque gained per angle turned while friction rises, N·m/rad: that of the shaft where the contact truly stands. */
  readonly stiffness: Interval | null
  /** Amplitude of the speed at the same frequency, as a share of the speed; null where noise explains it. */
  readonly speedSwing: Ratio | null
  /** Torque amplitude without contact at the same frequency, as a share of that in contact; null where there is none or it is noise. */
  readonly blankSwing: Ratio | null
  /** Cycles per turn where they keep to the same places of the turn. */
  readonly turnOrder: number | null
}

/** What a step is held against. */
export interface VibrationContext {
  readonly step: number
  readonly slidingSpeed: MetrePerSecond
  /** √(κ/J)/2π in Hz; null where the setup does not tell. */
  readonly naturalFrequency: number | null
  /** The same rig without contact, at the speed nearest to this one. */
  readonly blank: VibrationRows | undefined
}

/** Looks for cycles in a step and says whose they are. */
export function stepVibration(rows: VibrationRows, context: VibrationContext): StepVibration {
  const { friction, mean, sampleInterval } = rows
  const swing = (quantile(friction, 0.975) - quantile(friction, 0.025)) / Math.abs(mean)
  const angularVelocity = Math.abs(rows.speed.reduce((a, b) => a + b, 0) / rows.speed.length)
  const bare = {
    step: context.step,
    slidingSpeed: context.slidingSpeed,
    angularVelocity,
    friction: mean,
    swing,
    numbers: null,
    stiffness: null,
    speedSwing: null,
    blankSwing: null,
    turnOrder: null,
  }
  if (!(swing > smallestSwing)) return { ...bare, verdict: 'quiet' }
  const turns = turningPoints(friction, 0.4 * swing * Math.abs(mean))
  const cycles = slipCycles(rows, turns)
  const numbers = cycles && vibrationNumbers(cycles, sampleInterval)
  if (numbers === undefined || numbers.cycles < fewestCycles) return { ...bare, verdict: 'cannotTell' }
  if (1 / numbers.frequency.value < samplesPerCycle * sampleInterval) return { ...bare, verdict: 'cannotTell' }
  // Swings that noise alone would make: their size cannot be told from none.
  if (!(numbers.amplitude.low > 0)) return { ...bare, verdict: 'irregular' }
  const sawTooth = numbers.falling < quickFall
  if (!(numbers.irregularity < (sawTooth ? regular.sawTooth : regular.even))) return { ...bare, verdict: 'irregular' }
  const perAngle = rows.torquePerFriction / angularVelocity
  const seen = {
    ...bare,
    numbers,
    stiffness: scaled(numbers.loading, perAngle),
    speedSwing: speedSwing(rows, numbers.frequency.value, angularVelocity),
    blankSwing: blankSwing(rows, context.blank, numbers),
    turnOrder: turnOrder(rows, turns, numbers.frequency.value / (angularVelocity / (2 * Math.PI))),
  }
  return { ...seen, verdict: verdictOf(seen, sawTooth, context.naturalFrequency) }
}

function verdictOf(
  seen: Omit<StepVibration, 'verdict'>,
  sawTooth: boolean,
  naturalFrequency: number | null,
): VibrationVerdict {
  if (seen.turnOrder !== null) return 'turnLocked'
  if (sawTooth) return 'stickSlip'
  if (seen.speedSwing !== null || seen.blankSwing !== null) return 'hunting'
  const frequency = seen.numbers?.frequency.value ?? Number.NaN
  if (naturalFrequency !== null && Math.abs(frequency / naturalFrequency - 1) < 0.15) return 'ringing'
  return 'unclear'
}

const scaled = ({ value, low, high }: Interval, by: number): Interval => ({
  value: value * by,
  low: low * by,
  high: high * by,
})

/** A line so many times above its noise is there. */
const clearLine = 5

function speedSwing({ speed, time }: VibrationRows, frequency: number, mean: number): Ratio | null {
  const line = lineAt(speed, time, frequency)
  return line.amplitude > clearLine * line.noise && line.amplitude > 1e-9 * mean ? line.amplitude / mean : null
}

/** Both in N·m: the divisor of a blank is another one. */
function blankSwing(rows: VibrationRows, blank: VibrationRows | undefined, numbers: VibrationNumbers): Ratio | null {
  if (blank === undefined || blank.friction.length < 16) return null
  const line = lineAt(blank.friction, blank.time, numbers.frequency.value)
  if (!(line.amplitude > clearLine * line.noise)) return null
  const share = (line.amplitude * blank.torquePerFriction) / ((numbers.amplitude.value / 2) * rows.torquePerFriction)
  return share > 0.2 ? share : null
}

/** Peaks that come again at the same places of the turn. Their number per turn may be off by what one sector of the cycle allows. */
function turnOrder(rows: VibrationRows, turns: readonly TurningPoint[], perTurn: number): number | null {
  const order = Math.round(perTurn)
  if (!(order >= 1 && order <= 60 && rows.turns >= 2)) return null
  let cosine = 0
  let sine = 0
  const peaks = turns.filter(({ kind }) => kind === 'peak')
  for (const { row } of peaks) {
    cosine += Math.cos(order * rows.angle[row])
    sine += Math.sin(order * rows.angle[row])
  }
  return Math.hypot(cosine, sine) / peaks.length > 0.9 ? order : null
}

const quantile = (series: Float64Array, share: number): number =>
  nthSmallest(series.slice(), Math.min(series.length - 1, Math.floor(share * series.length)))
