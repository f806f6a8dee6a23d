import { fixtureGeometry, torqueFromFriction } from '../fixture/index.ts'
import { randomFrom } from '../numeric/index.ts'
import { type Channels, channelsInMemory, type FixtureSpec } from '../terms/index.ts'
import { createSensor, type SensorNoise } from './sensorNoise.ts'

/** Static friction that grows with the time at rest: µ_s = level + slope·ln(1 + t/time), and what friction falls to. */
export interface StaticLaw {
  readonly level: number
  readonly slope: number
  /** s. */
  readonly time: number
  readonly kinetic: number
  /** Standard deviation from start to start. */
  readonly scatter: number
}

/** Torque ramps from rest after set dwells, each until the contact has slid a little. SI. */
export interface BreakawayRun {
  readonly fixture: FixtureSpec
  readonly axialForce: number
  readonly temperature: number
  readonly samplingRate: number
  /** Times at rest before the ramps, in their order. */
  readonly dwells: readonly number[]
  /** N·m/s. */
  readonly torqueRate: number
  /** A ramp that has reached it ends, moved or not. */
  readonly mostTorque: number
  /** Angle slid after which the rig stops, and the fastest that it turns. */
  readonly stopAngle: number
  readonly fastest: number
  readonly inertia: number
  readonly torsionalStiffness: number
  /** rad/(N·m·s): creep under torque before motion. */
  readonly creep: number
  readonly friction: StaticLaw
  readonly noise: { readonly torque?: SensorNoise; readonly axialForce?: SensorNoise; readonly angle?: SensorNoise }
}

/** What one ramp truly is. */
export interface TrueStart {
  readonly step: number
  readonly dwell: number
  /** Static friction of this start, its scatter included. */
  readonly staticFriction: number
  readonly moved: boolean
  /** Time of the record at which it broke away; null where the ramp ended before. */
  readonly at: number | null
}

/** A record of ramps with its truth. */
export interface SimulatedBreakaway {
  readonly channels: Channels
  readonly truth: {
    readonly seed: number
    readonly rows: number
    readonly starts: readonly TrueStart[]
    readonly run: BreakawayRun
  }
}

const streams = { torque: 2, axialForce: 3, angle: 6, scatter: 7 } as const

/**
 * The record: a step of rest, then a step in which torque rises until the contact has slid `stopAngle`, for every dwell.
 * Before motion the shaft twists by M/k and creeps; from M = µ_s·c·r·F on the rest of the torque speeds it up, up to `fastest`.
 */
export function simulateBreakaway(run: BreakawayRun, seed: number): SimulatedBreakaway {
  if (!(run.samplingRate > 0 && run.torqueRate > 0 && run.mostTorque > 0)) {
    throw new RangeError(
      `rates and torques must be positive, got ${run.samplingRate} 1/s, ${run.torqueRate} N·m/s, ${run.mostTorque} N·m`,
    )
  }
  const geometry = fixtureGeometry(run.fixture)
  const sense = {
    torque: createSensor(run.noise.torque, randomFrom(seed, streams.torque)),
    axialForce: createSensor(run.noise.axialForce, randomFrom(seed, streams.axialForce)),
    angle: createSensor(run.noise.angle, randomFrom(seed, streams.angle)),
  }
  const scatter = randomFrom(seed, streams.scatter)
  const rows: { step: number; time: number; torque: number; force: number; angle: number }[] = []
  const starts: TrueStart[] = []
  let time = 0
  let angle = 0
  const interval = 1 / run.samplingRate
  const write = (step: number, torque: number, turned: number): void => {
    time += interval
    const read = { torque: sense.torque(torque), force: sense.axialForce(run.axialForce), angle: sense.angle(turned) }
    rows.push({ step, time, ...read })
  }
  for (const [index, dwell] of run.dwells.entries()) {
    const rest = 2 * index + 1
    for (let i = 0; i < Math.round(dwell * run.samplingRate); i++) write(rest, 0, angle)
    const { level, slope, time: scale, kinetic, scatter: spread } = run.friction
    const staticFriction = level + slope * Math.log1p(dwell / scale) + spread * scatter.normal()
    const held = torqueFromFriction(geometry, staticFriction, run.axialForce)
    const sliding = torqueFromFriction(geometry, kinetic, run.axialForce)
    const breaks = held / run.torqueRate
    const begin = time
    for (let elapsed = interval; ; elapsed += interval) {
      const torque = run.torqueRate * elapsed
      const slid = slidAfter(elapsed - breaks, { run, surplus: Math.max(0, held - sliding) })
      const twisted = torque / run.torsionalStiffness + (run.creep * run.torqueRate * elapsed * elapsed) / 2
      if (torque > run.mostTorque || slid > run.stopAngle) break
      write(rest + 1, torque, angle + twisted + slid)
    }
    const moved = breaks * run.torqueRate <= run.mostTorque
    starts.push({ step: rest + 1, dwell, staticFriction, moved, at: moved ? begin + breaks : null })
    if (moved) angle += run.stopAngle
  }
  return { channels: channelsOf(rows), truth: { seed, rows: rows.length, starts, run } }
}

/** Angle slid a time after breaking away: M − M_k over the inertia, integrated twice, until the rig turns as fast as it may. */
function slidAfter(time: number, { run, surplus }: { run: BreakawayRun; surplus: number }): number {
  if (!(time > 0)) return 0
  const speedAt = (t: number): number => (surplus * t + (run.torqueRate * t * t) / 2) / run.inertia
  if (speedAt(time) <= run.fastest) return ((surplus * time ** 2) / 2 + (run.torqueRate * time ** 3) / 6) / run.inertia
  const wanted = run.fastest * run.inertia
  const capped = (Math.sqrt(surplus ** 2 + 2 * run.torqueRate * wanted) - surplus) / run.torqueRate
  const until = ((surplus * capped ** 2) / 2 + (run.torqueRate * capped ** 3) / 6) / run.inertia
  return until + run.fastest * (time - capped)
}

function channelsOf(
  rows: readonly { step: number; time: number; torque: number; force: number; angle: number }[],
): Channels {
  const column = (pick: (row: (typeof rows)[number]) => number): Float64Array => Float64Array.from(rows, pick)
  const angle = column((row) => row.angle)
  const time = column((row) => row.time)
  return channelsInMemory({
    step: column((row) => row.step),
    time,
    angularVelocity: angle.map((a, i) => (i === 0 ? 0 : (a - angle[i - 1]) / (time[i] - time[i - 1]))),
    torque: column((row) => row.torque),
    axialForce: column((row) => row.force),
    angle,
  })
}
