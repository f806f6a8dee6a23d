import { type Random, randomFrom } from '../../numeric/index.ts'
import { type Interval, shortestInterval, symmetricInterval } from './coverageInterval.ts'
import type { DrawInputs } from './drawInputs.ts'

/** What a Monte Carlo propagation is asked for. */
export interface MonteCarloSetting {
  /** The same seed gives the same bytes. */
  readonly seed: number
  /** 0.95 where left out. */
  readonly coverage?: number
  /** Significant digits of the standard uncertainty that must be settled, 1 or 2; 2 where left out. */
  readonly digits?: number
  /** 1,000,000 where left out. */
  readonly mostTrials?: number
}

/** A result by propagation of distributions. */
export interface MonteCarloResult {
  readonly estimate: number
  readonly standardUncertainty: number
  readonly symmetric: Interval
  readonly shortest: Interval
  readonly trials: number
  /** `settled`: mean, uncertainty and both ends are known to within the tolerance; otherwise the trials ran out. */
  readonly end: 'settled' | 'trialLimit'
  /** δ, half a unit in the last digit asked for. */
  readonly tolerance: number
  /** Twice the standard deviation of the ends and moments over the blocks: how far chance alone may move them. */
  readonly noise: number
  /** Trials in which the formula gave no finite number; they are left out, and must be told. */
  readonly notFinite: number
  /** All finite trials sorted upwards, for pictures. */
  readonly sorted: Float64Array
}

/** With fewer blocks their scatter is too ill known to stop by: two of them agree by luck every so often. */
const fewestBlocks = 10

/**
 * Adaptive Monte Carlo (JCGM 101:2008, 7.9, but never under ten blocks): blocks of at least 10⁴ trials until twice the standard deviation of the averages
 * of mean, standard uncertainty and both ends of the symmetric interval, over the blocks, is within δ for each of them.
 */
export function propagateMonteCarlo(
  evaluate: (values: ArrayLike<number>) => number,
  { draw, count }: { readonly draw: DrawInputs; readonly count: number },
  { seed, coverage = 0.95, digits = 2, mostTrials = 1_000_000 }: MonteCarloSetting,
): MonteCarloResult {
  if (!(digits >= 1 && digits <= 4)) throw new RangeError(`digits must be 1 to 4, got ${digits}`)
  const block = Math.max(10_000, Math.ceil(100 / (1 - coverage)))
  if (!(mostTrials >= fewestBlocks * block)) {
    throw new RangeError(`needs at least ${fewestBlocks * block} trials, got ${mostTrials}`)
  }
  const random = randomFrom(seed)
  const values = new Float64Array(mostTrials)
  const blocks: BlockSummary[] = []
  let kept = 0
  let trials = 0
  let notFinite = 0
  let spread = Number.POSITIVE_INFINITY
  let tolerance = 0
  while (trials + block <= mostTrials) {
    const from = kept
    const lost = runBlock({ evaluate, draw, count, block }, random, values.subarray(kept, kept + block))
    kept += block - lost
    notFinite += lost
    trials += block
    if (kept - from < block / 2) continue
    blocks.push(summaryOf(values.subarray(from, kept), coverage))
    if (blocks.length < fewestBlocks) continue
    tolerance = toleranceOf(deviationOf(values.subarray(0, kept)), digits)
    spread = Math.max(...(['mean', 'deviation', 'low', 'high'] as const).map((part) => scatter(blocks, part)))
    if (2 * spread <= tolerance) break
  }
  const sorted = values.slice(0, kept).sort()
  if (blocks.length < fewestBlocks) return nothing({ trials, notFinite, sorted })
  return {
    ...momentsOf(sorted),
    symmetric: symmetricInterval(sorted, coverage),
    shortest: shortestInterval(sorted, coverage),
    trials,
    end: 2 * spread <= tolerance ? 'settled' : 'trialLimit',
    tolerance,
    noise: 2 * spread,
    notFinite,
    sorted,
  }
}

interface Task {
  readonly evaluate: (values: ArrayLike<number>) => number
  readonly draw: DrawInputs
  readonly count: number
  readonly block: number
}

/** Fills `out` from its head with the finite results of one block; gives how many were not finite. */
function runBlock({ evaluate, draw, count, block }: Task, random: Random, out: Float64Array): number {
  const inputs = new Float64Array(count)
  let kept = 0
  for (let trial = 0; trial < block; trial++) {
    draw(random, inputs)
    const value = evaluate(inputs)
    if (Number.isFinite(value)) out[kept++] = value
  }
  return block - kept
}

interface BlockSummary {
  readonly mean: number
  readonly deviation: number
  readonly low: number
  readonly high: number
}

function summaryOf(block: Float64Array, coverage: number): BlockSummary {
  const sorted = block.slice().sort()
  const { estimate, standardUncertainty } = momentsOf(sorted)
  return { mean: estimate, deviation: standardUncertainty, ...symmetricInterval(sorted, coverage) }
}

/** Standard deviation of the average of one part over the blocks. */
function scatter(blocks: readonly BlockSummary[], part: keyof BlockSummary): number {
  const mean = blocks.reduce((sum, block) => sum + block[part], 0) / blocks.length
  const squares = blocks.reduce((sum, block) => sum + (block[part] - mean) ** 2, 0)
  return Math.sqrt(squares / (blocks.length * (blocks.length - 1)))
}

/** From sorted values, about the middle one, which costs the fewest digits. */
function momentsOf(sorted: Float64Array): { readonly estimate: number; readonly standardUncertainty: number } {
  const about = sorted[sorted.length >> 1]
  let sum = 0
  for (const value of sorted) sum += value - about
  const shift = sum / sorted.length
  let squares = 0
  for (const value of sorted) squares += (value - about - shift) ** 2
  return { estimate: about + shift, standardUncertainty: Math.sqrt(squares / (sorted.length - 1)) }
}

function deviationOf(values: Float64Array): number {
  const about = values[0]
  let sum = 0
  let squares = 0
  for (const value of values) {
    sum += value - about
    squares += (value - about) ** 2
  }
  return Math.sqrt(Math.max(0, squares - sum ** 2 / values.length) / (values.length - 1))
}

/** δ = ½·10^l where u = c·10^l with `digits` digits in c (JCGM 101:2008, 7.9.2). Zero for a result that does not vary. */
export function toleranceOf(standardUncertainty: number, digits: number): number {
  if (!(standardUncertainty > 0)) return 0
  const exponent = Number(standardUncertainty.toExponential(digits - 1).split('e')[1])
  return 0.5 * 10 ** (exponent - digits + 1)
}

const nothing = (found: Pick<MonteCarloResult, 'trials' | 'notFinite' | 'sorted'>): MonteCarloResult => ({
  ...found,
  estimate: Number.NaN,
  standardUncertainty: Number.NaN,
  symmetric: { low: Number.NaN, high: Number.NaN },
  shortest: { low: Number.NaN, high: Number.NaN },
  end: 'trialLimit',
  tolerance: 0,
  noise: Number.POSITIVE_INFINITY,
})
