import type { FixtureGeometry } from '../../fixture/index.ts'
import { linearLeastSquares } from '../../numeric/index.ts'
import type { Second, Step } from '../../terms/index.ts'
import type { SignalSource } from '../signals.ts'
import { correctedTorque } from '../zero/correctedTorque.ts'
import { valueAt, type ZeroCorrections } from '../zero/corrections.ts'

/** A step looked at row by row for vibration; torque in units of friction, slow change and turn ripple taken off. */
export interface VibrationRows {
  readonly time: Float64Array
  readonly friction: Float64Array
  /** Running angle of the shaft. */
  readonly angle: Float64Array
  readonly speed: Float64Array
  readonly mean: number
  readonly turns: number
  readonly sampleInterval: Second
  /** Torque of one unit of friction, N·m. */
  readonly torquePerFriction: number
}

/** The last rows of a longer step are enough: cycles repeat. */
const mostRows = 65_536

/** From so many turns on the ripple of whole turns can be told from a slow change. */
const turnsForRipple = 1.5

interface Where {
  readonly source: SignalSource
  readonly geometry: FixtureGeometry
  readonly corrections: Pick<ZeroCorrections, 'forceZero' | 'blank'>
  readonly from: number
  /** Axial force to divide by where the step itself has none, such as a blank. */
  readonly load?: number
}

/**
 * Rows `from` to the end of a step. The torque is divided by the mean force, not by each reading, so that the noise of the force
 * stays out; a straight line, a parabola and the first four turn harmonics are taken off. Inertia is left in: what
 * shakes the speed must be seen.
 */
export function vibrationRows(step: Step, where: Where): VibrationRows | undefined {
  const { source, geometry, corrections } = where
  const from = Math.max(where.from, step.to - mostRows)
  if (!(step.to - from >= 8)) return undefined
  const signals = source.signals(from, step.to)
  const { time, angle } = signals
  const torque = correctedTorque(signals, { ...corrections, inertia: 0 })
  const force =
    where.load ??
    signals.axialForce.reduce((sum, value, i) => sum + value - valueAt(corrections.forceZero, time[i]), 0) / time.length
  const torquePerFriction = geometry.loadFactor * geometry.lever * force
  if (!(torquePerFriction > 0)) return undefined
  const sign = step.target < 0 ? -1 : 1
  const whole = torque.map((value) => (sign * value) / torquePerFriction)
  const turns = Math.abs(angle[angle.length - 1] - angle[0]) / (2 * Math.PI)
  return {
    time,
    friction: withoutSlow(whole, angle, turns),
    angle,
    speed: signals.angularVelocity,
    mean: whole.reduce((a, b) => a + b, 0) / whole.length,
    turns,
    sampleInterval: source.sampleInterval,
    torquePerFriction,
  }
}

function withoutSlow(values: Float64Array, angle: Float64Array, turns: number): Float64Array {
  const along = values.map((_, i) => (2 * i) / (values.length - 1) - 1)
  const columns = [new Float64Array(values.length).fill(1), along, along.map((x) => x * x)]
  if (turns >= turnsForRipple && values.length > 24) {
    for (let order = 1; order <= 4; order++) {
      columns.push(angle.map((a) => Math.cos(order * a)))
      columns.push(angle.map((a) => Math.sin(order * a)))
    }
  }
  const { coefficients } = linearLeastSquares(columns, values)
  return values.map((value, i) => columns.reduce((left, column, k) => left - coefficients[k] * column[i], value))
}
