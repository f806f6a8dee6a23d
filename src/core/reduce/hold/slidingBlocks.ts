import { type FixtureGeometry, fixtureGeometry } from '../../fixture/index.ts'
import { median } from '../../numeric/index.ts'
import type { Channels, Reduction, Setup, Step } from '../../terms/index.ts'
import { signalSource } from '../signals.ts'
import { correctedTorque } from '../zero/correctedTorque.ts'
import { valueAt } from '../zero/corrections.ts'

/** Friction along a stretch of sliding at one speed, in blocks of equally many rows. SI. */
export interface SlidingBlocks {
  readonly steps: readonly number[]
  readonly rowsPerBlock: number
  /** Row at which the first block begins. */
  readonly from: number
  /** Ratio of mean torque to mean axial force over the block, after zeroes and blank. */
  readonly friction: Float64Array
  readonly time: Float64Array
  /** Distance slid since contact began to slide, at the middle of the block. */
  readonly distance: Float64Array
  readonly axialForce: Float64Array
  readonly gap: Float64Array | null
  readonly temperature: Float64Array | null
  /** Block means of cos and sin of the turn angle times the friction around, for what comes back with the turns; none below two turns. */
  readonly turn: readonly Float64Array[]
  readonly turns: number
  readonly slidingSpeed: number
  readonly lever: number
  readonly interval: number
}

/** Which part of a record is looked at. */
export interface BlockOptions {
  /** At most so many blocks. */
  readonly blocks: number
  /** Speeds of neighbouring steps within this share count as one. */
  readonly tolerance: number
  /** Sliding distance at the head that is left out, m. */
  readonly skip: number
  /** Distances between which blocks are made; the whole stretch if left out. */
  readonly within?: readonly [from: number, to: number]
}

/** Rows at the head of a stretch in which the speed is not within this share of its target are left out. */
const settleTolerance = 0.02

/** Fewest blocks that a law is looked for in. */
export const fewestBlocks = 12

/** The longest run of neighbouring sliding steps at one speed and one way round, in blocks; undefined where none is long enough. */
export function slidingBlocks(
  record: { readonly channels: Channels; readonly setup: Setup; readonly reduction: Reduction },
  options: BlockOptions,
): SlidingBlocks | undefined {
  const { channels, setup, reduction } = record
  const geometry = fixtureGeometry(setup.fixture)
  const steps = longestHold(reduction.steps, options.tolerance)
  if (steps === undefined) return undefined
  const source = signalSource(channels, setup, geometry)
  const to = steps[steps.length - 1].to
  const signals = source.signals(steps[0].from, to)
  const path = slidPath(signals.time, signals.angularVelocity, geometry.lever)
  const torque = correctedTorque(signals, {
    forceZero: reduction.forceZero,
    blank: reduction.torqueBlank,
    inertia: setup.rig.inertia ?? 0,
  })
  const force = signals.axialForce.map((value, i) => value - valueAt(reduction.forceZero, signals.time[i]))
  const settled = settledRow({ speed: signals.angularVelocity, path }, steps[0].target, options.skip)
  const whole = options.skip > 0 ? settled : settled + startingRows(torque, settled)
  const begin = options.within === undefined ? whole : Math.max(whole, rowAt(path, options.within[0]))
  const end = options.within === undefined ? path.length : rowAt(path, options.within[1])
  const rows = end - begin
  const rowsPerBlock = Math.max(1, Math.ceil(rows / options.blocks))
  const count = Math.floor(rows / rowsPerBlock)
  if (count < fewestBlocks) return undefined
  const at = { begin, rowsPerBlock, count }
  const means = (values: ArrayLike<number>): Float64Array => blockMeans(values, at)
  const sense = Math.sign(steps[0].target) || 1
  const meanForce = means(force)
  const friction = means(torque).map((m, i) => (sense * m) / (meanForce[i] * geometry.loadFactor * geometry.lever))
  const turns = Math.abs(path[path.length - 1] - path[begin]) / geometry.pathPerTurn
  const level = smoothed(friction, Math.ceil(count / Math.max(1, turns)) + 1)
  return {
    steps: steps.map(({ number }) => number),
    rowsPerBlock,
    from: steps[0].from + begin,
    friction,
    time: means(signals.time),
    distance: means(path),
    axialForce: meanForce,
    gap: signals.gap === null ? null : means(signals.gap),
    temperature: signals.temperature === null ? null : means(signals.temperature),
    // What comes back with the turns is a share of friction, and grows with it where a coating fails.
    turn: turnColumns(signals.angle, { ...at, turns, geometry }).map((column) => column.map((c, i) => c * level[i])),
    turns,
    slidingSpeed: Math.abs(steps[0].target) * geometry.lever,
    lever: geometry.lever,
    interval: source.sampleInterval * rowsPerBlock,
  }
}

/** The blocks that end before a distance; undefined where they are too few. */
export function blocksUpTo(blocks: SlidingBlocks, distance: number): SlidingBlocks | undefined {
  const past = blocks.distance.findIndex((s) => s >= distance)
  const count = (past < 0 ? blocks.distance.length : past) - 3
  if (count < fewestBlocks) return undefined
  const cut = (values: Float64Array): Float64Array => values.subarray(0, count)
  return {
    ...blocks,
    friction: cut(blocks.friction),
    time: cut(blocks.time),
    distance: cut(blocks.distance),
    axialForce: cut(blocks.axialForce),
    gap: blocks.gap && cut(blocks.gap),
    temperature: blocks.temperature && cut(blocks.temperature),
    turn: blocks.turn.map(cut),
  }
}

function longestHold(steps: readonly Step[], tolerance: number): readonly Step[] | undefined {
  let best: readonly Step[] | undefined
  let run: Step[] = []
  const rowsOf = (many: readonly Step[]): number => many.reduce((sum, { from, to }) => sum + to - from, 0)
  for (const step of steps) {
    const last = run[run.length - 1]
    const joins = last !== undefined && last.to === step.from && Math.abs(step.target / last.target - 1) <= tolerance
    run = step.kind !== 'slide' ? [] : joins ? [...run, step] : [step]
    if (run.length > 0 && (best === undefined || rowsOf(run) > rowsOf(best))) best = run
  }
  return best
}

/** Mean over a turn's worth of blocks on either side, so that the ripple itself is not in it. */
function smoothed(values: Float64Array, half: number): Float64Array {
  return values.map((_, i) => {
    const near = values.subarray(Math.max(0, i - half), i + half + 1)
    return near.reduce((sum, value) => sum + value, 0) / near.length
  })
}

/** First row at which so far was slid; the number of rows where it never was. */
function rowAt(path: Float64Array, distance: number): number {
  const row = path.findIndex((s) => s >= distance)
  return row < 0 ? path.length : row
}

/** Distance slid at every row since the first, by trapezoids. */
function slidPath(time: Float64Array, speed: Float64Array, lever: number): Float64Array {
  const path = new Float64Array(time.length)
  for (let i = 1; i < path.length; i++) {
    path[i] = path[i - 1] + (Math.abs(speed[i] + speed[i - 1]) / 2) * (time[i] - time[i - 1]) * lever
  }
  return path
}

function settledRow(
  { speed, path }: { readonly speed: Float64Array; readonly path: Float64Array },
  target: number,
  skip: number,
): number {
  let row = 0
  while (row < speed.length && !(Math.abs(speed[row] / target - 1) <= settleTolerance)) row++
  if (row === speed.length) row = 0
  while (row < speed.length && path[row] < skip) row++
  return row
}

/** Share of a stretch that starting may take, and share of the level around it that torque has to reach. */
const starting = { most: 0.02, neighbours: 0.04, level: 0.9 } as const

/** Rows at the head in which torque still rises to its level: the shaft winds up and the load comes on. */
function startingRows(torque: Float64Array, settled: number): number {
  const rows = torque.length - settled
  const near = torque.subarray(settled, settled + Math.max(10, Math.ceil(starting.neighbours * rows)))
  const level = starting.level * Math.abs(median([...near]))
  const most = Math.ceil(starting.most * rows)
  let count = 0
  while (count < most && Math.abs(torque[settled + count]) < level) count++
  return count === most ? 0 : count
}

interface Blocks {
  readonly begin: number
  readonly rowsPerBlock: number
  readonly count: number
}

function blockMeans(values: ArrayLike<number>, { begin, rowsPerBlock, count }: Blocks): Float64Array {
  return Float64Array.from({ length: count }, (_, block) => {
    let sum = 0
    for (let i = 0; i < rowsPerBlock; i++) sum += values[begin + block * rowsPerBlock + i]
    return sum / rowsPerBlock
  })
}

/** Orders of the turn that are taken along. */
const turnOrders = [1, 2] as const

function turnColumns(
  angle: Float64Array,
  { turns, geometry, ...at }: Blocks & { turns: number; geometry: FixtureGeometry },
): readonly Float64Array[] {
  if (!(turns >= 2)) return []
  const orders = [...new Set([...turnOrders, geometry.contacts])].filter((order) => order <= 4)
  const columns = orders.flatMap((order) => [
    blockMeans(
      angle.map((a) => Math.cos(order * a)),
      at,
    ),
    blockMeans(
      angle.map((a) => Math.sin(order * a)),
      at,
    ),
  ])
  // Blocks of whole turns average it out: nothing is left to be fitted.
  return columns.filter((column) => Math.sqrt(column.reduce((sum, c) => sum + c * c, 0) / column.length) > 0.05)
}
