import { printQuantity } from '../../quantity/index.ts'
import { studentTQuantile, welchSatterthwaite } from '../../stats/index.ts'
import type { Bounded, Channels, Outcome, Reduction, SweepChange, SweepsRunIn } from '../../terms/index.ts'
import { done, failed } from '../../terms/index.ts'
import { type Branch, branchesOf, type LoopPoint, sameSpeed } from './branches.ts'

/** A record whose sweeps are compared, in the order in which they were measured. */
export interface SweptRecord {
  readonly name: string
  readonly channels: Channels
  readonly reduction: Reduction
}

interface NamedSweep extends Branch {
  readonly name: string
}

/**
 * Is it run in, from sweep to sweep: run in where at every speed the interval of the last change lies inside ± the margin (an
 * intersection–union test, Berger 1982, from memory: no correction for many speeds is needed); not where the mean change, or
 * that of a speed among all of them, lies outside; otherwise these sweeps cannot tell.
 */
export function sweepsRunIn(records: readonly SweptRecord[], margin: number): Outcome<SweepsRunIn> {
  if (!(margin > 0)) throw new RangeError(`margin must be above zero, got ${margin}`)
  const sweeps = records.flatMap(({ name, channels, reduction }) =>
    branchesOf(channels, reduction).map(
      (branch, i): NamedSweep => ({
        ...branch,
        name: `${name}, sweep ${i + 1} ${branch.direction === 1 ? 'up' : 'down'}`,
      }),
    ),
  )
  const changes = ([1, -1] as const).flatMap((direction) => {
    const alike = sweeps.filter((sweep) => sweep.direction === direction)
    return alike.slice(1).flatMap((sweep, i) => changeOf(alike[i], sweep, margin) ?? [])
  })
  if (changes.length === 0) return failed(oneSweepOnly)
  const last = ([1, -1] as const).flatMap((direction) => {
    const word = direction === 1 ? ' up' : ' down'
    return changes.findLast(({ to }) => to.endsWith(word)) ?? []
  })
  const verdict = last.every((change) => change.verdict === 'runIn')
    ? 'runIn'
    : last.some((change) => change.verdict === 'notRunIn')
      ? 'notRunIn'
      : 'cannotTell'
  return done({ changes, margin, verdict, sentence: last.map(({ sentence }) => sentence).join(' ') })
}

interface Change {
  readonly speed: number
  readonly value: number
  readonly own: number
  readonly freedom: number
}

function changeOf(first: NamedSweep, second: NamedSweep, margin: number): SweepChange | undefined {
  const changes = second.points.flatMap((now): Change[] => {
    const before = first.points.find(
      ({ point }) => Math.abs(Math.log(point.slidingSpeed / now.point.slidingSpeed)) <= sameSpeed,
    )
    return before === undefined ? [] : [relativeChange(before, now)]
  })
  if (changes.length === 0) return undefined
  const mean = meanOf(changes)
  const intervals = changes.map((change) => ({ slidingSpeed: change.speed, ...around(change, 0.025) }))
  const among = changes.map((change) => around(change, 0.025 / changes.length))
  const largest = intervals.reduce((most, one) => (Math.abs(one.value) > Math.abs(most.value) ? one : most))
  const inside = intervals.every((one) => within(one, margin))
  const outside = [mean, ...among].some((one) => beyond(one, margin))
  const verdict = outside ? 'notRunIn' : inside ? 'runIn' : 'cannotTell'
  const told = { from: first.name, to: second.name, speeds: changes.length, mean, largest, verdict } as const
  return { ...told, sentence: sentenceOf(told, margin) }
}

const within = ({ low, high }: Bounded, margin: number): boolean =>
  (low ?? Number.NEGATIVE_INFINITY) > -margin && (high ?? Number.POSITIVE_INFINITY) < margin
const beyond = ({ low, high }: Bounded, margin: number): boolean =>
  (low ?? Number.NEGATIVE_INFINITY) > margin || (high ?? Number.POSITIVE_INFINITY) < -margin

function relativeChange({ point: before }: LoopPoint, { point: now }: LoopPoint): Change {
  const parts = [before, now].map(({ ownUncertainty, friction, degreesOfFreedom }) => ({
    standardUncertainty: ownUncertainty / friction,
    degreesOfFreedom,
  }))
  return {
    speed: now.slidingSpeed,
    value: Math.log(now.friction / before.friction),
    own: Math.hypot(...parts.map(({ standardUncertainty }) => standardUncertainty)),
    freedom: welchSatterthwaite(parts),
  }
}

function meanOf(changes: readonly Change[]): Bounded {
  const count = changes.length
  const parts = changes.map(({ own, freedom }) => ({ standardUncertainty: own / count, degreesOfFreedom: freedom }))
  const value = changes.reduce((sum, change) => sum + change.value, 0) / count
  const own = Math.hypot(...parts.map(({ standardUncertainty }) => standardUncertainty))
  return around({ speed: 0, value, own, freedom: welchSatterthwaite(parts) }, 0.025)
}

function around({ value, own, freedom }: Change, tail: number): Bounded {
  const reach = studentTQuantile(1 - tail, freedom) * own
  return { value: Math.expm1(value), low: Math.expm1(value - reach), high: Math.expm1(value + reach) }
}

function sentenceOf({ from, to, mean, largest, verdict }: Omit<SweepChange, 'sentence'>, margin: number): string {
  const percent = (value: number | null): string =>
    value === null ? 'open' : printQuantity(value, 'ratio', { digits: 2, unit: '%' })
  const span = ({ value, low, high }: Bounded): string =>
    `${percent(value)} (95 % from ${percent(low)} to ${percent(high)})`
  const seen = `from ${from} to ${to} friction changed by ${span(mean)} on the mean and by ${span(largest)} at ${printQuantity(largest.slidingSpeed, 'velocity', { digits: 3 })}, where it changed most`
  switch (verdict) {
    case 'runIn':
      return `Run in: ${seen}; at every speed the interval lies inside ±${percent(margin)}.`
    case 'notRunIn':
      return `Not run in: ${seen}; that is more than ±${percent(margin)}.`
    case 'cannotTell':
      return `Cannot tell: ${seen}; some interval crosses ±${percent(margin)}.`
  }
}

const oneSweepOnly = {
  kind: 'oneSweepOnly',
  class: 'badInput',
  place: {},
  what: 'There are no two sweeps in the same direction over the same speeds.',
  mend: 'Give records of repeated sweeps in their order, or a record that holds one speed.',
} as const
