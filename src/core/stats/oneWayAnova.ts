import { fisherFUpper } from './fisherF.ts'

/** Table of a one-way analysis of variance. */
export interface OneWayAnova {
  readonly betweenFreedom: number
  readonly withinFreedom: number
  readonly betweenSquares: number
  readonly withinSquares: number
  readonly f: number
  /** Probability of a larger F when all groups have one mean. */
  readonly p: number
  /** √ of the mean square within. */
  readonly residualDeviation: number
}

/** One-way analysis of variance, in two passes about the first value of all, which costs the fewest digits. */
export function oneWayAnova(groups: readonly ArrayLike<number>[]): OneWayAnova {
  const counts = groups.map((group) => group.length)
  const total = counts.reduce((a, b) => a + b, 0)
  const betweenFreedom = groups.length - 1
  const withinFreedom = total - groups.length
  if (!(betweenFreedom >= 1 && withinFreedom >= 1 && counts.every((count) => count >= 1))) {
    throw new RangeError(`anova needs two or more groups, none empty, one with two values; got sizes ${counts}`)
  }
  const first = groups[0][0]
  const means = groups.map((group) => meanAbout(group, first))
  const grand = means.reduce((sum, mean, g) => sum + mean * counts[g], 0) / total
  const betweenSquares = means.reduce((sum, mean, g) => sum + counts[g] * (mean - grand) ** 2, 0)
  const withinSquares = groups.reduce((sum, group, g) => sum + squaresAbout(group, first, means[g]), 0)
  const f = betweenSquares / betweenFreedom / (withinSquares / withinFreedom)
  return {
    betweenFreedom,
    withinFreedom,
    betweenSquares,
    withinSquares,
    f,
    p: fisherFUpper(f, [betweenFreedom, withinFreedom]),
    residualDeviation: Math.sqrt(withinSquares / withinFreedom),
  }
}

function meanAbout(group: ArrayLike<number>, first: number): number {
  let sum = 0
  for (let i = 0; i < group.length; i++) sum += group[i] - first
  return sum / group.length
}

function squaresAbout(group: ArrayLike<number>, first: number, mean: number): number {
  let sum = 0
  for (let i = 0; i < group.length; i++) sum += (group[i] - first - mean) ** 2
  return sum
}
