import { grubbs, grubbsCritical, mean } from '../stats/index.ts'
import { grubbsPair, grubbsPairCritical, mandelHCritical } from '../stats/judging/index.ts'
import type { MetrePerSecond, ReplicateFlag } from '../terms/index.ts'
import { spokenSpeed } from './speedWords.ts'

/** Curves of the replicates of one sample, in the scale of the comparison, with their names. */
interface Together {
  readonly names: readonly string[]
  readonly curves: readonly Float64Array[]
  readonly h: readonly (readonly number[])[]
  readonly speeds: readonly MetrePerSecond[]
}

/**
 * What stands out from its sample: the level of a whole curve by Grubbs' tests of one and of two values (ISO 5725-2), and a curve at
 * single speeds by Mandel's h (ASTM E691). Nothing is taken out. Of fewer than three replicates none stands out.
 */
export function replicateFlags({ names, curves, h, speeds }: Together): ReplicateFlag[][] {
  const flags: ReplicateFlag[][] = names.map(() => [])
  if (names.length < 3) return flags
  const levels = curves.map((curve) => mean(curve))
  const single = singleFlags(levels, names)
  // The standard looks for two only where one alone does not stand out.
  for (const { at, flag } of single.length > 0 ? single : pairFlags(levels, names)) flags[at].push(flag)
  for (const [at, values] of h.entries()) {
    const flag = speedFlag(values, { name: names[at], count: names.length, speeds })
    if (flag !== undefined) flags[at].push(flag)
  }
  return flags
}

interface Placed {
  readonly at: number
  readonly flag: ReplicateFlag
}

function singleFlags(levels: readonly number[], names: readonly string[]): Placed[] {
  const { high, low, highest, lowest } = grubbs(levels)
  const [limit, hard] = [grubbsCritical(levels.length, 0.05), grubbsCritical(levels.length, 0.01)]
  return [
    { at: highest, seen: high, word: 'above' },
    { at: lowest, seen: low, word: 'below' },
  ].flatMap(({ at, seen, word }) => {
    if (!(seen > limit)) return []
    const outlier = seen > hard
    const sentence = `${names[at]} lies ${word} the others of its sample: Grubbs ${two(seen)}, limit ${two(limit)} at 5 % and ${two(hard)} at 1 %.`
    return [{ at, flag: { test: 'grubbs', seen, limit, outlier, slidingSpeed: null, sentence } as const }]
  })
}

function pairFlags(levels: readonly number[], names: readonly string[]): Placed[] {
  const [limit, hard] = [grubbsPairCritical(levels.length, 0.05), grubbsPairCritical(levels.length, 0.01)]
  if (limit === undefined || hard === undefined) return []
  const { high, low, highest, lowest } = grubbsPair(levels)
  return [
    { pair: highest, seen: high, word: 'above' },
    { pair: lowest, seen: low, word: 'below' },
  ].flatMap(({ pair, seen, word }) => {
    if (!(seen < limit)) return []
    const sentence = `${names[pair[0]]} and ${names[pair[1]]} lie ${word} the others of their sample: Grubbs for two ${four(seen)}, limit ${four(limit)} at 5 % and ${four(hard)} at 1 %.`
    const flag = { test: 'grubbsPair', seen, limit, outlier: seen < hard, slidingSpeed: null, sentence } as const
    return pair.map((at) => ({ at, flag }))
  })
}

interface Judged {
  readonly name: string
  readonly count: number
  readonly speeds: readonly MetrePerSecond[]
}

function speedFlag(h: readonly number[], { name, count, speeds }: Judged): ReplicateFlag | undefined {
  const sizes = h.map(Math.abs)
  const seen = Math.max(...sizes)
  const limit = mandelHCritical(count, 0.005)
  if (!(seen > limit)) return undefined
  const slidingSpeed = speeds[sizes.indexOf(seen)]
  const share = sizes.filter((size) => size > limit).length / sizes.length
  const sentence = `${name} stands out at ${spokenSpeed(slidingSpeed)}: Mandel's h ${two(seen)}, limit ${two(limit)} at 0.5 %, passed at ${(100 * share).toFixed(0)} % of the speeds.`
  return { test: 'mandelH', seen, limit, outlier: false, slidingSpeed, sentence }
}

const two = (value: number): string => value.toFixed(2)
const four = (value: number): string => value.toFixed(4)
