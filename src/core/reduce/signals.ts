import type { FixtureGeometry } from '../fixture/index.ts'
import { nthSmallest } from '../numeric/index.ts'
import type { ChannelName, Channels, Setup } from '../terms/index.ts'
import { integratedAngle, type Reader } from './integratedAngle.ts'

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

/** Signals of consecutive rows, the first of which is `from`. */
export interface SignalPage extends Signals {
  readonly from: number
  readonly rows: number
}

/** Gives the signals of rows `from` to `to`, whatever channels the record has. */
export interface SignalSource {
  readonly rows: number
  readonly hasAngle: boolean
  readonly hasForce: boolean
  readonly hasGap: boolean
  readonly sampleInterval: number
  readonly signals: (from: number, to: number) => Signals
  /**
   * The same in pages, read as they are asked for. One page lives at a time: what it gives is gone when another one is
   * read, also by somebody else.
   */
  readonly pages: (from: number, to: number) => Iterable<SignalPage>
  readonly time: (from: number, to: number) => Float64Array
  readonly speed: (from: number, to: number) => Float64Array
  readonly force: (from: number, to: number) => Float64Array
}

/** Rows of one page: few enough that all its columns stay near the processor. */
const pageRows = 16_384

/**
 * Friction force becomes torque by the lever, sliding speed becomes angular velocity; what the record lacks is taken
 * from the setup (`run.angularVelocity`, `run.axialForce`). Rows with NaN in time, speed, torque or force must have
 * been left out by the reader.
 */
export function signalSource(channels: Channels, setup: Setup, geometry: FixtureGeometry): SignalSource {
  const readers = readersOf(channels, setup, geometry.lever)
  const rooms = new Map<keyof Signals, Float64Array>()
  const signals = (from: number, to: number): SignalPage => new ReadSignals(readers, { from, rows: to - from })
  return {
    rows: channels.rows,
    hasAngle: channels.names.includes('angle'),
    hasForce: channels.names.includes('axialForce'),
    hasGap: channels.names.includes('gap'),
    sampleInterval: typicalInterval(readers.time, channels.rows),
    time: readers.time,
    speed: readers.angularVelocity,
    force: readers.axialForce,
    signals,
    *pages(from, to) {
      for (let start = from; start < to; start += pageRows) {
        yield new ReadSignals(readers, { from: start, rows: Math.min(pageRows, to - start), rooms })
      }
    },
  }
}

type Readers = { readonly [Name in keyof Signals]: null extends Signals[Name] ? Reader | null : Reader }

function readersOf(channels: Channels, setup: Setup, lever: number): Readers {
  const has = (name: ChannelName) => channels.names.includes(name)
  const channel =
    (name: ChannelName): Reader =>
    (from, to, room) => {
      if (room === undefined || channels.readInto === undefined) return channels.read(name, from, to)
      const out = room().subarray(0, to - from)
      channels.readInto(name, from, out)
      return out
    }
  const changed =
    (reader: Reader, change: (value: number) => number): Reader =>
    (from, to, room) => {
      const values = reader(from, to, room)
      const out = room === undefined ? new Float64Array(values.length) : room().subarray(0, values.length)
      for (let i = 0; i < out.length; i++) out[i] = change(values[i])
      return out
    }
  const constant =
    (value = Number.NaN): Reader =>
    (from, to) =>
      new Float64Array(to - from).fill(value)
  const time = channel('time')
  const angularVelocity = has('angularVelocity')
    ? channel('angularVelocity')
    : has('slidingSpeed')
      ? changed(channel('slidingSpeed'), (speed) => speed / lever)
      : constant(setup.run.angularVelocity)
  return {
    time,
    angularVelocity,
    torque: has('torque') ? channel('torque') : changed(channel('frictionForce'), (force) => force * lever),
    axialForce: has('axialForce') ? channel('axialForce') : constant(setup.run.axialForce),
    angle: has('angle') ? channel('angle') : integratedAngle(channels.rows, time, angularVelocity),
    gap: has('gap') ? channel('gap') : null,
    temperature: has('temperature') ? channel('temperature') : null,
  }
}

/** Reads each signal when it is first asked for. */
class ReadSignals implements SignalPage {
  readonly from: number
  readonly rows: number
  readonly #readers: Readers
  readonly #rooms: Map<keyof Signals, Float64Array> | undefined
  readonly #read = new Map<keyof Signals, Float64Array>()

  constructor(
    readers: Readers,
    { from, rows, rooms }: { from: number; rows: number; rooms?: Map<keyof Signals, Float64Array> },
  ) {
    this.#readers = readers
    this.from = from
    this.rows = rows
    this.#rooms = rooms
  }

  get time(): Float64Array {
    return this.#signal('time', this.#readers.time)
  }
  get angularVelocity(): Float64Array {
    return this.#signal('angularVelocity', this.#readers.angularVelocity)
  }
  get torque(): Float64Array {
    return this.#signal('torque', this.#readers.torque)
  }
  get axialForce(): Float64Array {
    return this.#signal('axialForce', this.#readers.axialForce)
  }
  get angle(): Float64Array {
    return this.#signal('angle', this.#readers.angle)
  }
  get gap(): Float64Array | null {
    return this.#readers.gap && this.#signal('gap', this.#readers.gap)
  }
  get temperature(): Float64Array | null {
    return this.#readers.temperature && this.#signal('temperature', this.#readers.temperature)
  }

  #signal(name: keyof Signals, reader: Reader): Float64Array {
    const known = this.#read.get(name)
    if (known !== undefined) return known
    const values = reader(this.from, this.from + this.rows, this.#rooms && (() => this.#room(name)))
    this.#read.set(name, values)
    return values
  }

  #room(name: keyof Signals): Float64Array {
    const room = this.#rooms?.get(name) ?? new Float64Array(pageRows)
    this.#rooms?.set(name, room)
    return room
  }
}

/** Median distance between the first rows; rows of one time do not count. */
function typicalInterval(time: Reader, rows: number): number {
  if (rows < 2) return Number.NaN
  const t = time(0, Math.min(rows, 10_000))
  const gaps = new Float64Array(t.length)
  let count = 0
  for (let i = 1; i < t.length; i++) if (t[i] > t[i - 1]) gaps[count++] = t[i] - t[i - 1]
  return count === 0 ? Number.NaN : nthSmallest(gaps.subarray(0, count), count >> 1)
}
