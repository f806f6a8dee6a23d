import type { FixtureGeometry } from '../../fixture/index.ts'
import type { Step } from '../../terms/index.ts'
import type { Signals } from '../signals.ts'
import { valueAt, type ZeroCorrections } from '../zero/corrections.ts'

/**
 * Rows of one step after zeroes, blank and inertia, in the direction of sliding. `tangential` is M/(c r), so that
 * friction is tangential over force. Rows out of contact and rows with a hole are left out; long steps are averaged
 * in blocks, which keeps every mean.
 */
export interface StepRows {
  readonly step: Step
  readonly time: Float64Array
  readonly speed: Float64Array
  readonly tangential: Float64Array
  readonly force: Float64Array
  readonly angle: Float64Array
  /** Regressors cos kθ, sin kθ for each of `orders`, averaged like the rows. */
  readonly turnColumns: readonly Float64Array[]
  readonly orders: readonly number[]
  /** Raw rows behind one row here. */
  readonly block: number
  /** Rows of the step that were kept, counted from its first. */
  readonly kept: Uint32Array
  readonly outOfContact: number
  /** Longest uninterrupted run out of contact, in raw rows, and where it begins in the record. */
  readonly longestLoss: { readonly rows: number; readonly at: number }
  readonly lowestForce: number
  readonly holes: number
}

/** Steps with more rows than this are averaged in blocks of equal length. */
const mostRows = 20_000

/** What turns raw rows into rows of friction. */
export interface RowContext {
  readonly geometry: FixtureGeometry
  readonly corrections: ZeroCorrections
  readonly load: number
  readonly contactShare: number
  readonly orders: readonly number[]
}

/** Rows of a step after all corrections; see `StepRows`. */
export function stepRows(step: Step, signals: Signals, context: RowContext): StepRows {
  const { geometry, corrections, load, contactShare, orders } = context
  const sign = step.target < 0 ? -1 : 1
  const perFriction = sign / (geometry.loadFactor * geometry.lever)
  const rows = signals.time.length
  const torque = correctedTorque(signals, corrections)
  const zero = (i: number) => valueAt(corrections.forceZero, signals.time[i])
  const kept = new Uint32Array(rows)
  let count = 0
  let out = 0
  let holes = 0
  let run = 0
  let longest = { rows: 0, at: 0 }
  let lowest = Number.POSITIVE_INFINITY
  const force = new Float64Array(rows)
  for (let i = 0; i < rows; i++) {
    force[i] = signals.axialForce[i] - zero(i)
    if (Number.isNaN(force[i] + torque[i] + signals.angularVelocity[i])) {
      holes++
      continue
    }
    if (force[i] < contactShare * load) {
      out++
      run++
      lowest = Math.min(lowest, force[i])
      if (run > longest.rows) longest = { rows: run, at: step.from + i - run + 1 }
      continue
    }
    run = 0
    kept[count++] = i
  }
  const chosen = kept.subarray(0, count)
  const block = Math.max(1, Math.floor(count / mostRows))
  const angle = Float64Array.from(chosen, (i) => signals.angle[i])
  return {
    step,
    time: blockMeans(chosen, block, (i) => signals.time[i]),
    speed: blockMeans(chosen, block, (i) => Math.abs(signals.angularVelocity[i])),
    tangential: blockMeans(chosen, block, (i) => torque[i] * perFriction),
    force: blockMeans(chosen, block, (i) => force[i]),
    angle: blockMeans(chosen, block, (i) => signals.angle[i]),
    turnColumns: turnColumns(angle, orders, block),
    orders,
    block,
    kept: chosen,
    outOfContact: out,
    longestLoss: longest,
    lowestForce: lowest,
    holes,
  }
}

/** Torque less blank and inertia. */
export function correctedTorque(signals: Signals, corrections: ZeroCorrections): Float64Array {
  const { blank, inertia } = corrections
  const acceleration = inertia === 0 ? undefined : accelerationOf(signals.time, signals.angularVelocity)
  return signals.torque.map((torque, i) => {
    let value = torque - blank.level - blank.perSpeed * signals.angularVelocity[i]
    for (const turn of blank.turn) {
      const phase = turn.order * signals.angle[i]
      value -= turn.cosine * Math.cos(phase) + turn.sine * Math.sin(phase)
    }
    return acceleration === undefined ? value : value - inertia * acceleration[i]
  })
}

/** Central differences over three rows, one-sided at the ends. */
export function accelerationOf(time: Float64Array, speed: Float64Array): Float64Array {
  const last = time.length - 1
  return speed.map((_, i) => {
    const a = Math.max(0, i - 1)
    const b = Math.min(last, i + 1)
    const span = time[b] - time[a]
    return span > 0 ? (speed[b] - speed[a]) / span : 0
  })
}

function blockMeans(chosen: Uint32Array, block: number, value: (row: number) => number): Float64Array {
  if (block === 1) return Float64Array.from(chosen, value)
  const means = new Float64Array(Math.floor(chosen.length / block))
  for (let b = 0; b < means.length; b++) {
    let sum = 0
    for (let i = b * block; i < (b + 1) * block; i++) sum += value(chosen[i])
    means[b] = sum / block
  }
  return means
}

function turnColumns(angle: Float64Array, orders: readonly number[], block: number): Float64Array[] {
  const all = Uint32Array.from(angle, (_, i) => i)
  return orders.flatMap((order) => [
    blockMeans(all, block, (i) => Math.cos(order * angle[i])),
    blockMeans(all, block, (i) => Math.sin(order * angle[i])),
  ])
}
