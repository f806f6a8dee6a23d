import type { Bounded, HoldLaw, HoldQuantity } from '../../terms/index.ts'
import { type FittedLaw, ownWeights } from './holdLaws.ts'
import { allowedSpan } from './lifeOf.ts'
import type { SlidingBlocks } from './slidingBlocks.ts'

type Name = HoldQuantity['name']

/** What the coefficients and the held parameters of each law are called, in their order. */
const names: Readonly<Record<HoldLaw, { readonly linear: readonly Name[]; readonly held: readonly Name[] }>> = {
  level: { linear: ['steady'], held: [] },
  drift: { linear: ['before', 'slope'], held: [] },
  runIn: { linear: ['steady', 'excess'], held: ['length'] },
  twoStage: { linear: ['steady', 'excess', 'slowExcess'], held: ['length', 'slowLength'] },
  failure: { linear: ['before'], held: ['onset', 'width'] },
}

const units: Readonly<Partial<Record<Name, string>>> = {
  length: 'm',
  slowLength: 'm',
  onset: 'm',
  width: 'm',
  slope: '1/m',
}

/** Parameters of the law with their 95 % intervals. */
export function holdQuantities(fitted: FittedLaw): HoldQuantity[] {
  const { law, fit } = fitted
  const told = (name: Name, bounds: Bounded): HoldQuantity => ({ name, unit: units[name] ?? '', ...bounds })
  const linear = names[law].linear.map((name, i) =>
    told(
      name,
      fit.profile.combination(() => ownWeights(fitted, unitVector(i, fitted.own))),
    ),
  )
  const after =
    law === 'failure'
      ? [
          told(
            'after',
            fit.profile.combination(() => ownWeights(fitted, [1, 1])),
          ),
        ]
      : []
  const held = names[law].held.map((name, i) => told(name, fit.profile.held(i)))
  return [...linear, ...after, ...held]
}

const unitVector = (which: number, size: number): number[] =>
  Array.from({ length: size }, (_, i) => (i === which ? 1 : 0))

/**
 * Distance from which on friction stays within a share of its steady value. Null for laws that never become steady; where
 * the record always was, the distance is that of its first block.
 */
export function steadyFrom(fitted: FittedLaw, { distance }: SlidingBlocks, share: number): Bounded | null {
  const { law, fit } = fitted
  const begin = distance[0]
  if (law === 'level') return { value: begin, low: begin, high: begin }
  if (law !== 'runIn' && law !== 'twoStage') return null
  const slowest = law === 'runIn' ? 1 : 2
  const sense = Math.sign(fit.profile.best.coefficients[slowest]) || 1
  /** Excess less what is allowed, as weights of the coefficients. */
  const over = (place: number) => (at: readonly number[]) =>
    ownWeights(fitted, [-share, ...at.map((length) => sense * Math.exp(-(place - begin) / length))])
  const longest = 3 * (distance[distance.length - 1] - begin)
  const value = lastRoot(
    (place) => dot(over(place)(fit.profile.best.at), fit.profile.best.coefficients),
    begin,
    longest,
  )
  return {
    value,
    ...allowedSpan((place) => fit.profile.allows(over(place)), { value, low: begin, high: begin + longest }),
  }
}

/** Farthest place at which a function turns from above zero to below; the start where it never is above. */
function lastRoot(f: (place: number) => number, begin: number, longest: number): number {
  const looks = 2000
  for (let i = looks; i >= 1; i--) {
    const [a, b] = [begin + (longest * (i - 1)) / looks, begin + (longest * i) / looks]
    if (!(f(a) > 0 && f(b) <= 0)) continue
    return a + ((b - a) * f(a)) / (f(a) - f(b))
  }
  return f(begin + longest) > 0 ? begin + longest : begin
}

const dot = (a: ArrayLike<number>, b: Float64Array): number => b.reduce((sum, value, i) => sum + value * a[i], 0)
