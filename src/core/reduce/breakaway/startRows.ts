import { type FixtureGeometry, fixtureGeometry } from '../../fixture/index.ts'
import type { Channels, Setup } from '../../terms/index.ts'
import { byStepColumn, type Stretch } from '../segment/byStepColumn.ts'
import { signalSource } from '../signals.ts'

/** One stretch in which torque rises from rest. SI; all columns of one length. */
export interface StartRows {
  readonly step: number
  readonly kind: 'torqueRamp' | 'imposedSpeed'
  readonly dwell: number
  readonly time: Float64Array
  readonly torque: Float64Array
  readonly angle: Float64Array
  readonly speed: Float64Array
  readonly axialForce: Float64Array
  readonly geometry: FixtureGeometry
}

/** Fewest rows of a start. */
const fewestRows = 15

/** Torque under this share of the largest counts as rest. */
const restShare = 0.1

/** A start at an imposed speed has turned by this share of its angle in half of its time, and torque no longer rises then. */
const imposed = { turned: 0.25, stillRising: 0.25 } as const

/** All starts of a record in their order, each with its time at rest. */
export function startRows(channels: Channels, setup: Setup): StartRows[] {
  const geometry = fixtureGeometry(setup.fixture)
  const source = signalSource(channels, setup, geometry)
  const whole = source.signals(0, channels.rows)
  const { time, torque, angle, angularVelocity, axialForce } = whole
  const most = torque.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0)
  const at = { torque, restBelow: restShare * most }
  const stretches = channels.names.includes('step')
    ? byStepColumn((from, to) => channels.read('step', from, to), channels.rows)
    : byRest(at)
  const starts: StartRows[] = []
  let restSince = time[firstLoaded(axialForce)] ?? 0
  for (const { number, from: first, to } of stretches) {
    const from = risesFrom(first, to, at)
    if (to - from < fewestRows) continue
    const cut = (values: Float64Array): Float64Array => values.slice(from, to)
    const rows = { time: cut(time), torque: cut(torque), angle: cut(angle) }
    starts.push({
      step: number,
      kind: kindOf(rows),
      dwell: Math.max(0, time[from] - restSince),
      ...rows,
      speed: cut(angularVelocity),
      axialForce: cut(axialForce),
      geometry,
    })
    restSince = time[to - 1]
  }
  return starts.map(upwards)
}

interface Rest {
  readonly torque: Float64Array
  readonly restBelow: number
}

/** Rows between places where torque falls back to rest. */
function byRest({ torque, restBelow }: Rest): Stretch[] {
  const stretches: Stretch[] = []
  let from = 0
  for (let i = 1; i <= torque.length; i++) {
    const fell = i < torque.length && Math.abs(torque[i]) < restBelow && Math.abs(torque[i - 1]) >= restBelow
    if (!fell && i < torque.length) continue
    stretches.push({ number: stretches.length + 1, from, to: i })
    from = i
  }
  return stretches
}

/** First row of a stretch at which torque begins to rise for good; its end where it never does. */
function risesFrom(from: number, to: number, { torque, restBelow }: Rest): number {
  let peak = from
  for (let i = from; i < to; i++) if (Math.abs(torque[i]) > Math.abs(torque[peak])) peak = i
  if (Math.abs(torque[peak] ?? 0) < 3 * restBelow) return to
  // Back from the peak to where torque was at rest; a ramp that begins with the stretch begins there.
  let row = peak
  while (row > from && Math.abs(torque[row - 1]) >= restBelow / 2) row--
  if (row === from) return from
  // The rest of the way down is too small to be told from noise: as far back as the ramp's own slope says.
  const slope = (torque[peak] - torque[row]) / Math.max(1, peak - row)
  return Math.max(from, row - Math.min(row - from, Math.ceil(Math.abs(torque[row] / (slope || 1)))))
}

function firstLoaded(force: Float64Array): number {
  const load = force.reduce((most, value) => Math.max(most, value), 0)
  const row = force.findIndex((value) => value > load / 2)
  return Math.max(row, 0)
}

function kindOf({ angle, torque }: Pick<StartRows, 'angle' | 'torque'>): StartRows['kind'] {
  const last = angle.length - 1
  const half = last >> 1
  const turned = Math.abs(angle[half] - angle[0]) / Math.abs(angle[last] - angle[0] || 1)
  const rising = Math.abs(mean(torque, last - 4, last + 1)) - Math.abs(mean(torque, half - 2, half + 3))
  const largest = torque.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  return turned > imposed.turned && rising < imposed.stillRising * largest ? 'imposedSpeed' : 'torqueRamp'
}

/** A start that turns backwards, turned round. */
function upwards(start: StartRows): StartRows {
  const { torque } = start
  if (mean(torque, torque.length >> 1, torque.length) >= 0) return start
  const turned = (values: Float64Array): Float64Array => values.map((value) => -value)
  return { ...start, torque: turned(torque), angle: turned(start.angle), speed: turned(start.speed) }
}

function mean(values: Float64Array, from: number, to: number): number {
  let sum = 0
  for (let i = Math.max(0, from); i < Math.min(values.length, to); i++) sum += values[i]
  return sum / Math.max(1, Math.min(values.length, to) - Math.max(0, from))
}
