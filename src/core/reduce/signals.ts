import type { FixtureGeometry } from '../fixture/index.ts'
import type { Channels, Setup } from '../terms/index.ts'

/** The rows of one stretch in the quantities that the reduction works with, SI. */
export interface Signals {
  readonly time: Float64Array
  readonly angularVelocity: Float64Array
  readonly torque: Float64Array
  readonly axialForce: Float64Array
  /** Turn angle of the shaft, measured or integrated from the speed. */
  readonly angle: Float64Array
  readonly gap: Float64Array | null
  readonly temperature: Float64Array | null
}

/** Gives the signals of rows `from` to `to`, whatever channels the record has. */
export interface SignalSource {
  readonly rows: number
  readonly hasAngle: boolean
  readonly hasForce: boolean
  readonly hasGap: boolean
  readonly sampleInterval: number
  readonly signals: (from: number, to: number) => Signals
  readonly time: (from: number, to: number) => Float64Array
  readonly speed: (from: number, to: number) => Float64Array
  readonly force: (from: number, to: number) => Float64Array
  /** Throws RangeError where the record has no gap channel; ask `hasGap` first. */
  readonly gap: (from: number, to: number) => Float64Array
}

/**
 * Friction force becomes torque by the lever, sliding speed becomes angular velocity; what the record lacks is taken
 * from the setup (`run.angularVelocity`, `run.axialForce`). Rows with NaN in time, speed, torque or force must have
 * been left out by the reader.
 */
export function signalSource(channels: Channels, setup: Setup, geometry: FixtureGeometry): SignalSource {
  const has = new Set(channels.names)
  const lever = geometry.lever
  const constant = (value: number, from: number, to: number) => new Float64Array(to - from).fill(value)
  const speed = (from: number, to: number) => {
    if (has.has('angularVelocity')) return channels.read('angularVelocity', from, to)
    if (has.has('slidingSpeed')) return channels.read('slidingSpeed', from, to).map((v) => v / lever)
    return constant(setup.run.angularVelocity ?? Number.NaN, from, to)
  }
  const torque = (from: number, to: number) =>
    has.has('torque')
      ? channels.read('torque', from, to)
      : channels.read('frictionForce', from, to).map((force) => force * lever)
  const force = (from: number, to: number) =>
    has.has('axialForce')
      ? channels.read('axialForce', from, to)
      : constant(setup.run.axialForce ?? Number.NaN, from, to)
  const time = (from: number, to: number) => channels.read('time', from, to)
  const optional = (name: 'gap' | 'temperature', from: number, to: number) =>
    has.has(name) ? channels.read(name, from, to) : null
  const turned = has.has('angle') ? undefined : integratedAngle(channels.rows, time, speed)
  return {
    rows: channels.rows,
    hasAngle: has.has('angle'),
    hasForce: has.has('axialForce'),
    hasGap: has.has('gap'),
    sampleInterval: typicalInterval(time, channels.rows),
    time,
    speed,
    force,
    gap: (from, to) => channels.read('gap', from, to),
    signals: (from, to) => ({
      time: time(from, to),
      angularVelocity: speed(from, to),
      torque: torque(from, to),
      axialForce: force(from, to),
      angle: turned === undefined ? channels.read('angle', from, to) : turned(from, to),
      gap: optional('gap', from, to),
      temperature: optional('temperature', from, to),
    }),
  }
}

type Reader = (from: number, to: number) => Float64Array<ArrayBufferLike>

const pageRows = 65_536

/**
 * Angle as the running integral of the speed (trapezoids), kept as one start value a page so that long records need
 * no column of their own. Time that restarts at a step adds nothing.
 */
function integratedAngle(rows: number, time: Reader, speed: Reader): Reader {
  const starts: number[] = [0]
  const page = (index: number): Float64Array => {
    const from = index * pageRows
    const to = Math.min(rows, from + pageRows)
    // One row before, so that pages join without a seam.
    const back = from === 0 ? 0 : 1
    const t = time(from - back, to)
    const w = speed(from - back, to)
    const angle = new Float64Array(to - from)
    let sum = starts[index]
    for (let i = 0; i < angle.length; i++) {
      const j = i + back
      if (j > 0) sum += Math.max(0, t[j] - t[j - 1]) * 0.5 * (w[j] + w[j - 1])
      angle[i] = sum
    }
    starts[index + 1] = sum
    return angle
  }
  let last: { index: number; angle: Float64Array } = { index: -1, angle: new Float64Array(0) }
  const cached = (index: number) => {
    if (last.index !== index) last = { index, angle: page(index) }
    return last.angle
  }
  return (from, to) => {
    const out = new Float64Array(to - from)
    const first = Math.floor(from / pageRows)
    for (let index = starts.length - 1; index < first; index++) page(index)
    for (let index = first; index * pageRows < to; index++) {
      const start = index * pageRows
      const part = cached(index).subarray(Math.max(0, from - start), to - start)
      out.set(part, Math.max(start, from) - from)
    }
    return out
  }
}

function typicalInterval(time: Reader, rows: number): number {
  if (rows < 2) return Number.NaN
  const t = time(0, Math.min(rows, 10_000))
  const gaps = Array.from(t.subarray(1), (value, i) => value - t[i])
    .filter((gap) => gap > 0)
    .sort((a, b) => a - b)
  return gaps.length === 0 ? Number.NaN : gaps[gaps.length >> 1]
}
