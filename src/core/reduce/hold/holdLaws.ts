import type { HoldLaw } from '../../terms/index.ts'
import { type CorrelatedProfile, correlatedProfile } from '../profile/correlatedProfile.ts'
import { rampMean } from './rampMean.ts'
import type { SlidingBlocks } from './slidingBlocks.ts'

/** A law fitted to the blocks. */
export interface FittedLaw {
  readonly law: HoldLaw
  readonly fit: CorrelatedProfile
  /** Columns of the law itself; those of the turn come after them. */
  readonly own: number
  readonly aicc: number
}

/** What is tried of a law: its columns, and where its non-linear parameters may lie. */
interface Form {
  readonly columns: (at: readonly number[], blocks: SlidingBlocks) => readonly Float64Array[]
  readonly places: (blocks: SlidingBlocks) => readonly (readonly number[])[]
  readonly finer?: (best: readonly number[], blocks: SlidingBlocks, zoom: number) => readonly (readonly number[])[]
}

const ones = ({ distance }: SlidingBlocks): Float64Array => new Float64Array(distance.length).fill(1)
/** Mean of e^(−s/length) over the rows of each block: its middle times sinh(Nx)/(N·sinh x) with x = half a row over the length. */
function fading(blocks: SlidingBlocks, length: number): Float64Array {
  const { distance, rowsPerBlock } = blocks
  const x = rowSpacing(blocks) / (2 * length)
  const factor = x > 1e-9 ? Math.sinh(rowsPerBlock * x) / (rowsPerBlock * Math.sinh(x)) : 1
  return distance.map((s) => factor * Math.exp(-(s - distance[0]) / length))
}

const rowSpacing = (blocks: SlidingBlocks): number => spanOf(blocks).block / blocks.rowsPerBlock

/** Distance of a block, and of the whole stretch. */
const spanOf = ({ distance }: SlidingBlocks): { block: number; whole: number } => {
  const whole = distance[distance.length - 1] - distance[0]
  return { block: whole / (distance.length - 1), whole }
}

const inLog = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)))

/** Lengths over which friction may fade: from one block to three times the stretch. */
const lengths = (blocks: SlidingBlocks, count: number): number[] => {
  const { block, whole } = spanOf(blocks)
  return inLog(0.7 * block, 3 * whole, count)
}

const around = (length: number, factor: number, count: number): number[] =>
  inLog(length / factor, length * factor, count)

const forms: Readonly<Record<HoldLaw, Form>> = {
  level: { columns: (_, blocks) => [ones(blocks)], places: () => [[]] },
  drift: {
    columns: (_, blocks) => [ones(blocks), blocks.distance.map((s) => s - blocks.distance[0])],
    places: () => [[]],
  },
  runIn: {
    columns: ([length], blocks) => [ones(blocks), fading(blocks, length)],
    places: (blocks) => lengths(blocks, 60).map((length) => [length]),
    finer: ([length], _, zoom) => around(length, 1.5 ** zoom, 61).map((near) => [near]),
  },
  twoStage: {
    columns: ([short, long], blocks) => [ones(blocks), fading(blocks, short), fading(blocks, long)],
    places: (blocks) => pairs(lengths(blocks, 16), lengths(blocks, 16), spanOf(blocks).whole),
    finer: ([short, long], blocks, zoom) =>
      pairs(around(short, 1.6 ** zoom, 13), around(long, 1.6 ** zoom, 13), spanOf(blocks).whole),
  },
  failure: {
    columns: ([onset, width], blocks) => [
      ones(blocks),
      blocks.distance.map((s) =>
        rampMean(s, { rows: blocks.rowsPerBlock, spacing: rowSpacing(blocks) }, { onset, width }),
      ),
    ],
    places: (blocks) => {
      const { block, whole } = spanOf(blocks)
      const count = Math.min(120, blocks.distance.length - 4)
      const onsets = Array.from(
        { length: count },
        (_, i) => blocks.distance[0] + block + ((whole - 2 * block) * i) / count,
      )
      return pairsOf(onsets, inLog(0.5 * block, whole / 2, 7))
    },
    finer: ([onset, width], blocks, zoom) => {
      const { block, whole } = spanOf(blocks)
      const reach = zoom * Math.max(3 * block, whole / 60)
      return pairsOf(
        Array.from({ length: 25 }, (_, i) => onset + reach * (i / 12 - 1)),
        around(width, 3 ** zoom, 13),
      )
    },
  },
}

const pairsOf = (first: readonly number[], second: readonly number[]): number[][] =>
  first.flatMap((a) => second.map((b) => [a, b]))

/** Two lengths that can be told apart, the shorter one first; the longer one has to end within the stretch. */
const pairs = (short: readonly number[], long: readonly number[], whole: number): number[][] =>
  pairsOf(short, long).filter(([a, b]) => b >= 2 * a && b <= whole / 2)

/** Fits one law; undefined where there are too few blocks for it. */
export function fitHoldLaw(law: HoldLaw, blocks: SlidingBlocks): FittedLaw | undefined {
  const form = forms[law]
  const own = (at: readonly number[]): readonly Float64Array[] => form.columns(at, blocks)
  const places = form.places(blocks)
  const fit = correlatedProfile({
    response: blocks.friction,
    columns: (at) => [...own(at), ...blocks.turn],
    places,
    finer: form.finer && ((best, zoom) => form.finer?.(best, blocks, zoom) ?? []),
  })
  // A coating that fails grips: a fall is none.
  if (fit === undefined || (law === 'failure' && !(fit.profile.best.coefficients[1] > 0))) return undefined
  const n = blocks.friction.length
  // Correlation and variance are parameters too; a place where the law bends costs three (Ninomiya 2005, from memory).
  const k = fit.parameters + 2 + (law === 'failure' ? 4 : 0)
  const aicc = fit.deviance + 2 * k + (2 * k * (k + 1)) / Math.max(1, n - k - 1)
  return { law, fit, own: own(fit.profile.best.at).length, aicc }
}

/** The simplest law that the data do not clearly refuse: AICc within 2 of the best (Burnham & Anderson 2002). */
export function simplestAmong(fitted: readonly FittedLaw[]): FittedLaw {
  const least = Math.min(...fitted.map(({ aicc }) => aicc))
  const order = (one: FittedLaw): number => one.fit.parameters
  return fitted.filter(({ aicc }) => aicc <= least + 2).reduce((best, one) => (order(one) < order(best) ? one : best))
}

/** Weights of the law's own columns in a combination, zero for those of the turn. */
export const ownWeights = ({ fit }: FittedLaw, weights: readonly number[]): Float64Array => {
  const all = new Float64Array(fit.profile.best.coefficients.length)
  all.set(weights)
  return all
}

/** The law at the blocks, without what comes back with the turns. */
export function lawAtBlocks({ fit, own }: FittedLaw): Float64Array {
  const { coefficients } = fit.profile.best
  return fit.columns[0].map((_, i) => {
    let sum = 0
    for (let k = 0; k < own; k++) sum += coefficients[k] * fit.columns[k][i]
    return sum
  })
}
