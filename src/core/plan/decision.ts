import { printQuantity } from '../quantity/index.ts'
import type { Ratio } from '../terms/index.ts'
import { replicatesForEquivalence } from './equivalence.ts'
import type { PlanQuestion } from './question.ts'
import { type ReplicateAnswer, replicatesNeeded, smallestDifference } from './replicates.ts'
import { type OrderedRun, runOrder } from './runOrder.ts'
import type { WearBudget } from './wearBudget.ts'

/** How many replicates decide, what fewer would see, and in which order they run. */
export interface Decision {
  /** null where even very many could not tell. */
  readonly replicates: ReplicateAnswer | null
  readonly equivalence: { readonly replicates: number; readonly power: Ratio } | null
  /** Smallest difference seen by three, five and ten replicates. */
  readonly seen: readonly { readonly replicates: number; readonly difference: Ratio }[]
  readonly order: readonly OrderedRun[]
  readonly days: number
  readonly ballSets: number
  readonly sentences: readonly string[]
}

/** Most replicates that are put into an order; beyond, the difference is not to be had by repeating. */
const mostOrdered = 200

/** Fewest replicates that are put into the order: less than three tell no scatter. Common practice, no source. */
const fewestOrdered = 3

const percent = (value: number): string => printQuantity(value, 'ratio', { digits: 2 })

/** The decision part of a plan. */
export function decision({ deciding }: PlanQuestion, budget: WearBudget): Decision {
  const { samples, difference, margin, repeatability, significance, power, runsPerDay, checkStandard, seed } = deciding
  const scatter = { repeatability, significance, power }
  const replicates = attempted(() => replicatesNeeded({ ...scatter, difference }))
  const equivalence = attempted(() => replicatesForEquivalence({ ...scatter, margin }))
  const seen = [3, 5, 10].map((n) => ({ replicates: n, difference: smallestDifference(n, scatter) }))
  const each = Math.max(fewestOrdered, replicates?.replicates ?? mostOrdered)
  // Another replicate must meet other balls, however long one set would last.
  const runsPerBallSet = Math.min(budget.runsPerBallSet, samples.length)
  const order =
    each > mostOrdered ? [] : runOrder({ samples, replicates: each, runsPerDay, runsPerBallSet, checkStandard, seed })
  return {
    replicates,
    equivalence,
    seen,
    order,
    days: Math.max(0, ...order.map(({ day }) => day)),
    ballSets: Math.max(0, ...order.map(({ ballSet }) => ballSet)),
    sentences: sentences(deciding, { replicates, equivalence, seen }),
  }
}

/** A question that no number of replicates answers throws; here that is an answer. */
function attempted<T>(answer: () => T): T | null {
  try {
    return answer()
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}

function sentences(
  { samples, difference, margin, repeatability, repeatabilityFrom, power }: PlanQuestion['deciding'],
  { replicates, equivalence, seen }: Pick<Decision, 'replicates' | 'equivalence' | 'seen'>,
): readonly string[] {
  const source = repeatabilityFrom === 'measured' ? 'as measured' : 'assumed, so measure yours and plan again'
  const told =
    replicates === null
      ? `No sensible number of replicates tells ${percent(difference)} at a scatter of ${percent(repeatability)} (${source}).`
      : `${replicates.replicates} replicates of each sample tell a difference of ${percent(difference)} in ${percent(power)} of all cases, at a scatter of ${percent(repeatability)} between replicates (${source}).`
  const equal =
    equivalence === null
      ? `No sensible number of replicates shows the samples to be the same within ${percent(margin)}.`
      : `${equivalence.replicates} replicates of each show two samples to be the same within ${percent(margin)}, if they are.`
  const fewer = seen.map(({ replicates: n, difference: smallest }) => `${n} see ${percent(smallest)}`).join(', ')
  const single = samples.length < 2 ? ['Only one sample is named: add the one that it is to be compared with.'] : []
  return [
    ...single,
    told,
    equal,
    `The smallest difference seen: ${fewer}.`,
    'A replicate is a new mounting with fresh surfaces; a second sweep on the same surfaces is not.',
  ]
}
