import { deviationsOf } from './deviations.ts'

/** One level of blocking: each block is the mean of two of the level before. */
export interface BlockingLevel {
  readonly blocks: number
  /** c₀/(n′ − 1): the variance of the overall mean, were the blocks independent; it rises to the true one. */
  readonly varianceOfMean: number
  /** Standard error of √varianceOfMean as a share of it: 1/√(2(n′ − 1)). */
  readonly relativeError: number
}

/** Blocking of Flyvbjerg & Petersen 1989 (J. Chem. Phys. 91:461), down to two blocks; an odd last block is left out. */
export function blocking(values: ArrayLike<number>): BlockingLevel[] {
  if (!(values.length >= 2)) throw new RangeError(`blocking needs at least two values, got ${values.length}`)
  const levels: BlockingLevel[] = []
  let blocks = Float64Array.from(values)
  while (blocks.length >= 2) {
    const { deviations } = deviationsOf(blocks)
    const squares = deviations.reduce((sum, d) => sum + d * d, 0)
    const free = blocks.length - 1
    levels.push({
      blocks: blocks.length,
      varianceOfMean: squares / blocks.length / free,
      relativeError: 1 / Math.sqrt(2 * free),
    })
    blocks = pairMeans(blocks)
  }
  return levels
}

/**
 * The first level whose standard error no later level exceeds by more than that level's own error: where the
 * estimate has stopped rising. Common practice, no source. The last level where it never stops.
 */
export function blockingPlateau(levels: readonly BlockingLevel[]): BlockingLevel {
  const last = levels.at(-1)
  if (last === undefined) throw new RangeError('blocking has no levels')
  return levels.find((level, i) => levels.slice(i + 1).every((later) => !exceeds(later, level))) ?? last
}

const exceeds = (later: BlockingLevel, level: BlockingLevel): boolean =>
  Math.sqrt(later.varianceOfMean) * (1 - later.relativeError) > Math.sqrt(level.varianceOfMean)

function pairMeans(values: Float64Array): Float64Array<ArrayBuffer> {
  const pairs = new Float64Array(values.length >> 1)
  for (let i = 0; i < pairs.length; i++) pairs[i] = (values[2 * i] + values[2 * i + 1]) / 2
  return pairs
}
