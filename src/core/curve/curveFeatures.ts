import type { Feature } from '../terms/index.ts'
import { averagedInterval, type Interval } from './averagedInterval.ts'
import { canHave, type FeatureName, featureValues } from './curveFeature.ts'
import type { Reach } from './curveMember.ts'
import { pointsForAll } from './curveRemarks.ts'
import { featureProfile, featureReach, isLogarithmic } from './featureProfile.ts'
import { featureWords } from './featureWords.ts'
import type { MemberFit } from './fitMember.ts'
import type { WeighedMember } from './weighedFits.ts'

const units: Readonly<Record<FeatureName, 'friction' | 'speed' | 'slope'>> = {
  boundaryLevel: 'friction',
  minimumSpeed: 'speed',
  minimumFriction: 'friction',
  filmSlope: 'slope',
  mixedBegins: 'speed',
  filmBegins: 'speed',
}

/** In the order in which they are reported. */
const names = Object.keys(units) as readonly FeatureName[] // keys of a record over FeatureName

/** A film slope is none while the boundary branch still has more than this share at the fastest speed. */
const mostBoundary = 0.5

/** Where the features of a family are looked for. */
export interface FeatureRequest {
  /** Heaviest first. */
  readonly members: readonly WeighedMember[]
  /** The fit that the values are taken from. */
  readonly fit: MemberFit
  readonly reach: Reach
  readonly speedUnit: string
}

/**
 * Features of the heaviest member, with 95 % intervals averaged over all members that have the feature and over the scatters
 * between steps. Where the heaviest has none the value is null and `why` says what is instead; an interval may still say
 * where it could lie.
 */
export function curveFeatures(request: FeatureRequest): readonly Feature[] {
  const { fit, reach, speedUnit } = request
  const values = featureValues(fit.member, fit.parameters, reach)
  return names.map((name) => {
    const unit = units[name] === 'speed' ? speedUnit : ''
    const value = valueIn(request, name, values[name])
    const why = featureWords({ ...request, name, value })
    if (!canHave(fit.member, name) || (value === null && !mayLieOutside(name))) {
      return { name, value: null, low: null, high: null, unit, why }
    }
    const show = isLogarithmic(name) ? Math.exp : (g: number): number => g
    const { low, high } = intervalOf(request, name)
    const shownLow = low === null ? null : Math.min(show(low), value ?? Number.POSITIVE_INFINITY)
    const shownHigh = high === null ? null : Math.max(show(high), value ?? 0)
    return { name, value, low: shownLow, high: shownHigh, unit, why }
  })
}

/**
 * Features that hang on the form of the transition. With fewer points than the whole family needs, their intervals would
 * rest on the one form that could be fitted: the truth lay in 81 to 93 % of them in simulations with 4 to 7 points.
 */
const hangOnForm: readonly FeatureName[] = ['filmSlope', 'mixedBegins', 'filmBegins']

/** Speeds may lie beyond what is looked at, and the interval then still says beyond what. */
const mayLieOutside = (name: FeatureName): boolean => units[name] === 'speed'

/** The value, null where it lies outside its reach or where it would not mean what it says. */
function valueIn({ fit, reach }: FeatureRequest, name: FeatureName, value: number | null): number | null {
  if (value === null) return null
  if (name === 'filmSlope') return boundaryShare(fit, reach) > mostBoundary ? null : value
  const { low, high } = featureReach(name, reach)
  return Math.log(value) >= low && Math.log(value) <= high ? value : null
}

/** Share of the boundary branch at the fastest speed; 0 for a curve without regimes. */
function boundaryShare({ member, parameters }: MemberFit, reach: Reach): number {
  return member.share === null ? 0 : member.share(parameters, reach.lnFastest)
}

function intervalOf({ members, fit, reach }: FeatureRequest, name: FeatureName): Interval {
  if (fit.residuals.length < pointsForAll && hangOnForm.includes(name)) return { low: null, high: null }
  const profiles = members
    .filter(({ fit }) => canHave(fit.member, name))
    .flatMap(({ scatters }) => scatters)
    .map(({ fit, weight }) => ({ weight, profile: featureProfile(fit, name, reach) }))
  return averagedInterval(profiles, featureReach(name, reach))
}
