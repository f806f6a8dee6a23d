import { printQuantity } from '../../quantity/index.ts'
import { holm, studentTCdf, studentTQuantile, welchSatterthwaite } from '../../stats/index.ts'
import type { Bounded, Channels, Loop, LoopPair, Outcome, Reduction, Remark, Setup } from '../../terms/index.ts'
import { done, failed } from '../../terms/index.ts'
import { type Branch, branchesOf, type LoopPoint, sameSpeed } from './branches.ts'
import { loopCausesOf } from './loopCauses.ts'
import type { PairSeen } from './pairSeen.ts'

/** What may be chosen about a loop. */
export interface LoopOptions {
  /** Largest difference that does not matter, as a share of friction. */
  readonly margin: number
}

/** Common practice, no source: half of the ten per cent that are the usual smallest difference of interest. */
export const loopDefaults: LoopOptions = { margin: 0.05 }

/** Up against down, point by point and as a whole, and why they differ. */
export function loopOf(
  { channels, setup, reduction }: { readonly channels: Channels; readonly setup: Setup; readonly reduction: Reduction },
  options: LoopOptions = loopDefaults,
): Outcome<Loop> {
  if (!(options.margin > 0)) throw new RangeError(`margin must be above zero, got ${options.margin}`)
  const branches = branchesOf(channels, reduction)
  const found = branches.slice(0, -1).map((first, i): [Branch, Branch] => [first, branches[i + 1]])
  const two = found.find(([a, b]) => a.direction !== b.direction)
  if (two === undefined) return failed(oneWayOnly)
  const [up, down] = two[0].direction === 1 ? two : [two[1], two[0]]
  const seen = pairsOf(up, down, reduction)
  if (seen.length === 0) return failed(noPairs)
  return done(told(seen, { reduction, setup, margin: options.margin }))
}

interface Context {
  readonly reduction: Reduction
  readonly setup: Setup
  readonly margin: number
}

function pairsOf(up: Branch, down: Branch, reduction: Reduction): PairSeen[] {
  return up.points
    .flatMap((one): PairSeen[] => {
      const twin = down.points.find(
        (other) => Math.abs(Math.log(other.point.slidingSpeed / one.point.slidingSpeed)) <= sameSpeed,
      )
      return twin === undefined ? [] : [pairOf(one, twin, reduction)]
    })
    .sort((a, b) => a.speed - b.speed)
}

function pairOf(up: LoopPoint, down: LoopPoint, reduction: Reduction): PairSeen {
  const [a, b] = [up.point, down.point]
  const own = Math.hypot(a.ownUncertainty, b.ownUncertainty)
  const difference = a.friction - b.friction
  const mean = (a.friction + b.friction) / 2
  // A scale moves the difference as it moves friction; a zero that drifts between the visits moves one of them.
  const scales = (['torqueScale', 'forceScale', 'lever', 'loadFactor', 'tilt'] as const).map(
    (source) => ((a.shared[source] ?? 0) / a.friction) * difference,
  )
  const drift = (reduction.forceZero.slopeUncertainty * (down.time - up.time) * mean) / a.axialForce
  return {
    up,
    down,
    speed: Math.sqrt(a.slidingSpeed * b.slidingSpeed),
    difference,
    own,
    freedom: welchSatterthwaite([
      { standardUncertainty: a.ownUncertainty, degreesOfFreedom: a.degreesOfFreedom },
      { standardUncertainty: b.ownUncertainty, degreesOfFreedom: b.degreesOfFreedom },
    ]),
    shared: Math.hypot(drift, ...scales),
  }
}

function told(seen: readonly PairSeen[], { reduction, setup, margin }: Context): Loop {
  const chances = holm(
    seen.map(({ difference, own, shared, freedom }) => bothSides(difference / Math.hypot(own, shared), freedom)),
  )
  const pairs = seen.map((pair, i) => tellPair(pair, seen.length, chances[i]))
  const whole = areaOf(seen)
  const mean = seen.reduce((sum, { up, down }) => sum + (up.point.friction + down.point.friction) / 2, 0) / seen.length
  const total = Math.hypot(whole.own, whole.shared)
  const area = around(whole.area, whole.own, whole.freedom)
  const height = around(whole.area / whole.range, whole.own / whole.range, whole.freedom)
  const isReal = bothSides(whole.area / total, whole.freedom) < 0.05 || chances.some((p) => p < 0.05)
  const inside = pairs.every(({ together, frictionUp, frictionDown }) => {
    const most = (margin * (frictionUp + frictionDown)) / 2
    return together.low > -most && together.high < most
  })
  const verdict = isReal ? (inside ? 'small' : 'real') : inside ? 'none' : 'cannotTell'
  const share = divided(height, mean)
  const loop = { pairs, area, height, heightShared: whole.shared / whole.range, share, margin, verdict } as const
  const sentence = sentenceOf(loop)
  return {
    ...loop,
    sentence,
    between: Math.abs(seen[0].down.time - seen[0].up.time),
    causes: isReal ? loopCausesOf(seen, { reduction, setup }) : [],
    remarks: verdict === 'real' ? [loopRemark(share.value, margin, sentence)] : [],
  }
}

function tellPair({ up, down, speed, difference, own, freedom, shared }: PairSeen, count: number, p: number): LoopPair {
  const together = studentTQuantile(1 - 0.025 / count, freedom) * own
  return {
    slidingSpeed: speed,
    up: up.point.step,
    down: down.point.step,
    frictionUp: up.point.friction,
    frictionDown: down.point.friction,
    difference: around(difference, own, freedom),
    together: { low: difference - together, high: difference + together },
    shared,
    p,
  }
}

/** ∫ difference d ln v by trapezoids; a single speed stands for itself. */
function areaOf(seen: readonly PairSeen[]): {
  area: number
  own: number
  shared: number
  range: number
  freedom: number
} {
  const ln = seen.map(({ speed }) => Math.log(speed))
  const last = seen.length - 1
  const weights = seen.map((_, i) => (last === 0 ? 1 : (ln[Math.min(i + 1, last)] - ln[Math.max(i - 1, 0)]) / 2))
  const parts = seen.map(({ own, freedom }, i) => ({
    standardUncertainty: weights[i] * own,
    degreesOfFreedom: freedom,
  }))
  return {
    area: seen.reduce((sum, { difference }, i) => sum + weights[i] * difference, 0),
    own: Math.hypot(...parts.map(({ standardUncertainty }) => standardUncertainty)),
    // What is shared moves all pairs together, so it adds up plainly.
    shared: seen.reduce((sum, { shared }, i) => sum + weights[i] * shared, 0),
    range: last === 0 ? 1 : ln[last] - ln[0],
    freedom: welchSatterthwaite(parts),
  }
}

const bothSides = (t: number, freedom: number): number => 2 * studentTCdf(-Math.abs(t), freedom)

function around(value: number, own: number, freedom: number): Bounded {
  const reach = studentTQuantile(0.975, freedom) * own
  return { value, low: value - reach, high: value + reach }
}

const divided = ({ value, low, high }: Bounded, by: number): Bounded => ({
  value: value / by,
  low: low === null ? null : low / by,
  high: high === null ? null : high / by,
})

function sentenceOf({ verdict, share, margin, pairs }: Pick<Loop, 'verdict' | 'share' | 'margin' | 'pairs'>): string {
  const percent = (value: number | null): string =>
    value === null ? 'open' : printQuantity(value, 'ratio', { digits: 2, unit: '%' })
  const size = `on the mean over ${pairs.length} speeds up lies ${percent(Math.abs(share.value))} ${share.value < 0 ? 'under' : 'over'} down (95 % from ${percent(share.low)} to ${percent(share.high)})`
  switch (verdict) {
    case 'real':
      return `The loop is real: ${size}.`
    case 'small':
      return `The loop is real but small: ${size}, and no speed differs by more than ${percent(margin)}.`
    case 'none':
      return `No loop: ${size}, and no speed can differ by more than ${percent(margin)}.`
    case 'cannotTell':
      return `Whether there is a loop cannot be told: ${size}, and some speeds may differ by more than ${percent(margin)}.`
  }
}

const loopRemark = (seen: number, limit: number, sentence: string): Remark => ({
  kind: 'directionsDiffer',
  seen,
  limit,
  unit: '',
  sentence,
  next: 'Report both directions, not their mean; look at the causes, and repeat the pair of sweeps.',
})

const oneWayOnly = {
  kind: 'oneWayOnly',
  class: 'badInput',
  place: {},
  what: 'The record holds no rising and falling speeds that could be compared.',
  mend: 'Give a record whose speeds go up and then down, or down and then up.',
} as const

const noPairs = {
  kind: 'noPairs',
  class: 'badInput',
  place: {},
  what: 'No speed was measured with a trusted point in both directions.',
  mend: 'Measure the same speeds up and down; "kufe reduce" says why points are not trusted.',
} as const
