import type { FixtureGeometry } from '../../fixture/index.ts'
import { cosineSine } from '../../numeric/index.ts'
import type { Step } from '../../terms/index.ts'
import type { SignalPage, SignalSource } from '../signals.ts'
import { accelerationOf, correctedTorque } from '../zero/correctedTorque.ts'
import { valueAt, type ZeroCorrections } from '../zero/corrections.ts'
import { BlockMeans } from './blockMeans.ts'
import { Peak } from './peak.ts'

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
  /** Empty where the record has no such channel; NaN where a row had none. */
  readonly gap: Float64Array
  readonly temperature: Float64Array
  /** Regressors cos kθ, sin kθ for each of `orders`, averaged like the rows. */
  readonly turnColumns: readonly Float64Array[]
  readonly orders: readonly number[]
  /** Raw rows behind one row here. */
  readonly block: number
  /** Raw row of the step with which each row here begins, and rows left over behind the last. */
  readonly begins: Uint32Array
  readonly outOfContact: number
  /** Longest uninterrupted run out of contact, in raw rows, and where it begins in the record. */
  readonly longestLoss: { readonly rows: number; readonly at: number }
  readonly lowestForce: number
  readonly holes: number
  /** Largest torque as it was read, either way, of all rows, and the most rows in which it stood there without a break. */
  readonly torquePeak: { readonly size: number; readonly run: number }
}

/** Steps with more rows than this are averaged in blocks of equal length, into no more than so many. */
const mostRows = 3_000

/** What turns raw rows into rows of friction. */
export interface RowContext {
  readonly geometry: FixtureGeometry
  readonly corrections: ZeroCorrections
  readonly load: number
  readonly contactShare: number
  readonly orders: readonly number[]
}

/** Rows of a step after all corrections; see `StepRows`. The record is read page by page, however long the step is. */
export function stepRows(step: Step, source: SignalSource, context: RowContext): StepRows {
  const collector = new RowCollector(step, context)
  for (const page of source.pages(step.from, step.to)) {
    collector.take(
      page,
      correctedTorque(page, context.corrections, accelerationWithin(step, page, { source, context })),
    )
  }
  return collector.rows()
}

/** Acceleration of a page's rows, with the rows beside the page looked at as far as they belong to the step. */
function accelerationWithin(
  step: Step,
  { from, rows }: SignalPage,
  { source, context }: { source: SignalSource; context: RowContext },
): Float64Array | undefined {
  if (context.corrections.inertia === 0) return undefined
  const first = Math.max(step.from, from - 1)
  const end = Math.min(step.to, from + rows + 1)
  return accelerationOf(source.time(first, end), source.speed(first, end)).subarray(from - first, from - first + rows)
}

/** Columns of the means; the turn columns follow. */
const columns = { time: 0, speed: 1, tangential: 2, force: 3, angle: 4, gap: 5, temperature: 6 } as const
const turnColumn = Object.keys(columns).length

const none = new Float64Array(0)

class RowCollector {
  readonly #step: Step
  readonly #context: RowContext
  readonly #block: number
  readonly #means: BlockMeans
  #out = 0
  #holes = 0
  #run = 0
  #longest = { rows: 0, at: 0 }
  #lowest = Number.POSITIVE_INFINITY
  #hasGap = false
  #hasTemperature = false
  readonly #peak = new Peak()
  /** Cosine and sine of one row's angle. */
  readonly #turn = new Float64Array(2)

  constructor(step: Step, context: RowContext) {
    const rows = step.to - step.from
    this.#step = step
    this.#context = context
    this.#block = Math.max(1, Math.ceil(rows / mostRows))
    this.#means = new BlockMeans({ columns: turnColumn + 2 * context.orders.length, rows, block: this.#block })
  }

  /** @param torque after blank and inertia */
  take(page: SignalPage, torque: Float64Array): void {
    const { from, rows, time, angularVelocity, axialForce, angle, gap, temperature } = page
    const { geometry, corrections, load, contactShare } = this.#context
    const perFriction = (this.#step.target < 0 ? -1 : 1) / (geometry.loadFactor * geometry.lever)
    const lost = contactShare * load
    const { sums } = this.#means
    this.#peak.watch(page.torque)
    this.#hasGap = gap !== null
    this.#hasTemperature = temperature !== null
    for (let i = 0; i < rows; i++) {
      const force = axialForce[i] - valueAt(corrections.forceZero, time[i])
      // NaN; Number.isNaN takes longer in code that is run only once.
      if (!(force + torque[i] + angularVelocity[i] <= Number.POSITIVE_INFINITY)) {
        this.#holes++
        continue
      }
      if (force < lost) {
        this.#lose(force, from + i)
        continue
      }
      this.#run = 0
      sums[columns.time] += time[i]
      sums[columns.speed] += Math.abs(angularVelocity[i])
      sums[columns.tangential] += torque[i] * perFriction
      sums[columns.force] += force
      sums[columns.angle] += angle[i]
      if (gap !== null) sums[columns.gap] += gap[i]
      if (temperature !== null) sums[columns.temperature] += temperature[i]
      cosineSine(angle[i], this.#turn)
      addTurns(sums, this.#turn, this.#context.orders)
      this.#means.next(from + i - this.#step.from)
    }
  }

  rows(): StepRows {
    const means = this.#means
    const { orders } = this.#context
    return {
      step: this.#step,
      time: means.means(columns.time),
      speed: means.means(columns.speed),
      tangential: means.means(columns.tangential),
      force: means.means(columns.force),
      angle: means.means(columns.angle),
      gap: this.#hasGap ? means.means(columns.gap) : none,
      temperature: this.#hasTemperature ? means.means(columns.temperature) : none,
      turnColumns: Array.from({ length: 2 * orders.length }, (_, k) => means.means(turnColumn + k)),
      orders,
      block: this.#block,
      begins: means.begins(),
      outOfContact: this.#out,
      longestLoss: this.#longest,
      lowestForce: this.#lowest,
      holes: this.#holes,
      torquePeak: this.#peak,
    }
  }

  #lose(force: number, row: number): void {
    this.#out++
    this.#run++
    this.#lowest = Math.min(this.#lowest, force)
    if (this.#run > this.#longest.rows) this.#longest = { rows: this.#run, at: row - this.#run + 1 }
  }
}

/** Adds cos kθ and sin kθ for each order k, in rising order, from cos θ and sin θ in `first` up. */
function addTurns(sums: Float64Array, first: Float64Array, orders: readonly number[]): void {
  const cosine = first[0]
  const sine = first[1]
  let c = 1
  let s = 0
  let power = 0
  for (let k = 0; k < orders.length; k++) {
    for (; power < orders[k]; power++) {
      const before = c
      c = before * cosine - s * sine
      s = s * cosine + before * sine
    }
    sums[turnColumn + 2 * k] += c
    sums[turnColumn + 2 * k + 1] += s
  }
}
