import { mean, studentTQuantile } from '../stats/index.ts'
import { compactLetters, type JudgedPair, type MixedFit, mixedModel, tukeyKramer } from '../stats/judging/index.ts'
import type { MetrePerSecond, RankedPair, RankedSample, Ranking } from '../terms/index.ts'
import type { CompareOptions } from './decideDefaults.ts'
import { inEffect, inFriction, inScale } from './scale.ts'
import { spokenSpan, spokenSpeed } from './speedWords.ts'
import { usableCauses } from './usableCauses.ts'
import type { JudgedReplicate } from './usedReplicates.ts'

interface Ranked {
  readonly samples: readonly { readonly name: string; readonly used: readonly JudgedReplicate[] }[]
  /** The speeds over which the curves are averaged; one for a ranking at a single speed. */
  readonly speeds: readonly MetrePerSecond[]
}

/**
 * Samples in the order of their friction, averaged evenly over ln v, with 95 % intervals for all pairs at once and letters for what
 * cannot be told apart. Days, operators and ball sets are random where the data can tell them. null where nothing scatters
 * or no replicate is left over for it.
 */
export function rankingOf({ samples, speeds }: Ranked, options: CompareOptions): Ranking | null {
  const { scale } = options
  const all = samples.flatMap(({ used }, s) => used.map((one) => ({ one, s })))
  const values = all.map(({ one }) => mean(inScale(one.curve, speeds, scale)))
  if (
    samples.length < 2 ||
    all.length <= samples.length ||
    !scatters(
      values,
      all.map(({ s }) => s),
    )
  )
    return null
  const causes = usableCauses(all.map(({ one }) => one.replicate))
  const design = all.map(({ s }) => samples.map((_, t) => (t === s ? 1 : 0)))
  const fit = mixedModel({ values, design, causes })
  const order = samples.map((_, s) => s).sort((a, b) => fit.coefficients[a] - fit.coefficients[b])
  const pairs = pairsOf(fit, order)
  const letters = compactLetters(order.length, (a, b) =>
    pairs.some((pair) => pair.a === a && pair.b === b && isTold(pair)),
  )
  const ranked = order.map((s, place): RankedSample => {
    const { value, standardError, degreesOfFreedom } = fit.contrast(samples.map((_, t) => (t === s ? 1 : 0)))
    const half = studentTQuantile(0.975, degreesOfFreedom) * standardError
    return {
      sample: samples[s].name,
      used: samples[s].used.length,
      friction: inFriction(value, scale),
      low: inFriction(value - half, scale),
      high: inFriction(value + half, scale),
      letters: letters[place],
    }
  })
  const scatter = [
    ...causes.map(({ name }, k) => ({ cause: name, deviation: Math.sqrt(fit.variances[k]) })),
    { cause: 'replicate', deviation: Math.sqrt(fit.residualVariance) },
  ]
  return {
    by: byWords(speeds),
    samples: ranked,
    pairs: pairs.map(
      ({ a, b, value, low, high, degreesOfFreedom, p }): RankedPair => ({
        first: ranked[a].sample,
        second: ranked[b].sample,
        value: inEffect(value, scale),
        low: inEffect(low, scale),
        high: inEffect(high, scale),
        ...{ degreesOfFreedom, p },
      }),
    ),
    scatter,
    method: methodWords(
      causes.map(({ name }) => name),
      { counts: samples.map(({ used }) => used.length), fit },
    ),
    sentence: rankingWords(ranked, byWords(speeds)),
  }
}

/** Whether replicates of one sample differ at all. */
const scatters = (values: readonly number[], samples: readonly number[]): boolean =>
  values.some((value, i) => value !== values[samples.indexOf(samples[i])])

type Pair = JudgedPair & { readonly a: number; readonly b: number }

const isTold = ({ low, high }: Pair): boolean => low > 0 || high < 0

/** All pairs by their places in the ranking, the later less the earlier. */
function pairsOf(fit: MixedFit, order: readonly number[]): Pair[] {
  const places = order.flatMap((_, a) => order.slice(a + 1).map((_, after) => ({ a, b: a + 1 + after })))
  const contrasts = places.map(({ a, b }) =>
    fit.contrast(order.map((_, t) => (t === order[b] ? 1 : t === order[a] ? -1 : 0))),
  )
  return tukeyKramer(contrasts, order.length).map((pair, i) => ({ ...pair, ...places[i] }))
}

const byWords = (speeds: readonly MetrePerSecond[]): string =>
  speeds.length === 1
    ? `friction at ${spokenSpeed(speeds[0])}`
    : `mean friction ${spokenSpan(speeds[0], speeds[speeds.length - 1])}, evenly over the logarithm of speed`

function methodWords(
  causes: readonly string[],
  { counts, fit }: { readonly counts: readonly number[]; readonly fit: MixedFit },
): string {
  const equal = counts.every((count) => count === counts[0])
  const all = equal ? 'exact for equal numbers of replicates' : 'on the safe side for unequal numbers of replicates'
  if (causes.length === 0) {
    const freedom = counts.reduce((sum, count) => sum + count - 1, 0)
    return `One-way analysis of variance, ${freedom} degrees of freedom (exact); all pairs at once by Tukey and Kramer, ${all}.`
  }
  const stopped = fit.end === 'converged' ? '' : ' The fit stopped before it converged.'
  return `Mixed model by REML with ${causes.join(', ')} as random; degrees of freedom by Satterthwaite; all pairs at once by Tukey and Kramer (approximate).${stopped}`
}

function rankingWords(ranked: readonly RankedSample[], by: string): string {
  const one = new Set(ranked.flatMap(({ letters }) => [...letters])).size === 1
  if (one) return `By ${by}, no two samples can be told apart.`
  const order = ranked.map(({ sample, letters }) => `${sample} (${letters})`).join(', ')
  return `By ${by}, from the most slippery on: ${order}; samples that share a letter cannot be told apart.`
}
