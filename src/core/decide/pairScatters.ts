import { randomFrom } from '../numeric/index.ts'
import {
  type CurveScatter,
  curveScatter,
  maxTDraws,
  maxTSeparateDraws,
  welchDifference,
} from '../stats/judging/index.ts'
import type { MetrePerSecond, SampleDifference } from '../terms/index.ts'
import type { CompareOptions } from './decideDefaults.ts'
import type { ReplicatePair } from './namedEffects.ts'
import type { PairScatter } from './sampleDifference.ts'
import { inScale } from './scale.ts'
import { sharedLeft } from './sharedLeft.ts'
import type { JudgedReplicate } from './usedReplicates.ts'

interface NamedSample {
  readonly name: string
  readonly used: readonly JudgedReplicate[]
}

interface Setting {
  readonly speeds: readonly MetrePerSecond[]
  readonly options: CompareOptions
}

/** A pair of samples ready to be judged. */
export interface JudgedPair {
  readonly sides: ReplicatePair
  readonly scatter: PairScatter
}

/** Every pair, each sample against those named before it. None where no scatter can be had. */
export function pairScatters(samples: readonly NamedSample[], setting: Setting): JudgedPair[] {
  const pairs = samples.flatMap((second, b) => samples.slice(0, b).map((first, a) => ({ first, second, a, b })))
  if (pairs.length === 0) return []
  const { speeds, options } = setting
  const curves = samples.map(({ used }) => used.map(({ curve }) => inScale(curve, speeds, options.scale)))
  if (curves.every((one) => one.length < 2)) return []
  if (options.scatter === 'separate' && curves.some((one) => one.length < 2)) return []
  const scatter = curveScatter(curves)
  const together = options.scatter === 'pooled' ? pooledErrors(scatter, pairs, options) : undefined
  return pairs.map(({ first, second, a, b }): JudgedPair => {
    const sides = [first.used, second.used] as const
    const left = sharedLeft(sides, speeds)
    const [from, to] = [scatter.means[a], scatter.means[b]]
    const size = (i: number): number => (options.scale === 'ratio' ? 1 : (from[i] + to[i]) / 2)
    return {
      sides,
      scatter: {
        ...{ first: first.name, second: second.name, speeds },
        difference: speeds.map((_, i) => to[i] - from[i]),
        ...(together?.(a, b) ?? separateErrors([curves[a], curves[b]], pairs.length, options)),
        shared: { ...left, uncertainty: left.uncertainty.map((u, i) => u * size(i)) },
      },
    }
  })
}

type Errors = Pick<PairScatter, 'standardError' | 'degreesOfFreedom' | 'draws' | 'share'>

/** One scatter for all: one set of draws holds for all pairs at once. */
function pooledErrors(
  scatter: CurveScatter,
  pairs: readonly { readonly a: number; readonly b: number }[],
  { draws, seed }: CompareOptions,
): (a: number, b: number) => Errors {
  const { counts, deviation, degreesOfFreedom } = scatter
  const contrasts = pairs.map(({ a, b }) => counts.map((_, s) => (s === b ? 1 : s === a ? -1 : 0)))
  const largest = maxTDraws(scatter, { contrasts, draws, random: randomFrom(seed) })
  return (a, b) => ({
    standardError: Array.from(deviation, (d) => d * Math.sqrt(1 / counts[a] + 1 / counts[b])),
    degreesOfFreedom: Array.from(deviation, () => degreesOfFreedom),
    draws: largest,
    share: 0.05,
  })
}

/** Each sample its own scatter: draws for each pair, and Bonferroni's allowance for the number of pairs. */
function separateErrors(
  [first, second]: readonly [readonly Float64Array[], readonly Float64Array[]],
  pairs: number,
  { draws, seed }: CompareOptions,
): Errors {
  const [a, b] = [curveScatter([first]), curveScatter([second])]
  const numbers = (scatter: CurveScatter, i: number) => ({
    mean: scatter.means[0][i],
    standardDeviation: scatter.deviation[i],
    count: scatter.counts[0],
  })
  const single = Array.from(a.deviation, (_, i) => welchDifference(numbers(b, i), numbers(a, i)))
  return {
    standardError: single.map(({ standardError }) => standardError),
    degreesOfFreedom: single.map(({ degreesOfFreedom }) => degreesOfFreedom),
    draws: maxTSeparateDraws([first, second], { draws, random: randomFrom(seed) }),
    share: 0.05 / pairs,
  }
}

/** How the bands came about, for people who check them. */
export function methodWords(
  differences: readonly Pick<SampleDifference, 'degreesOfFreedom'>[],
  { speeds, options }: Setting,
): string {
  const { draws, seed, scatter } = options
  const turned = `${draws} turns of the residual curves among the replicates, seed ${seed}`
  if (differences.length === 0) return `Bands at ${speeds.length} speeds at once: largest |t| in ${turned}.`
  const freedom = Math.min(...differences.map(({ degreesOfFreedom }) => degreesOfFreedom))
  const whose = scatter === 'pooled' ? 'one scatter for all samples' : 'each sample its own scatter'
  const digits = Number.isInteger(freedom) ? String(freedom) : freedom.toFixed(1)
  return `Bands at ${speeds.length} speeds and for all pairs at once: largest |t| in ${turned}; ${whose}, ${digits} degrees of freedom.`
}
