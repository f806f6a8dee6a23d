import { modelWords } from '../terms/index.ts'
import { canHave, type FeatureName } from './curveFeature.ts'
import type { CurveMember, Reach } from './curveMember.ts'
import type { MemberFit } from './fitMember.ts'
import { leastFriction } from './leastFriction.ts'
import type { WeighedMember } from './weighedFits.ts'

/** What the sentence is about. */
export interface FeatureToWord {
  readonly members: readonly WeighedMember[]
  readonly fit: MemberFit
  readonly reach: Reach
  readonly name: FeatureName
  readonly value: number | null
}

/** Weight of the runner-up from which a close choice is said. */
const closeWeight = 0.2

const percent = (share: number): string => `${Math.round(100 * share)} %`

/** What a feature is here, or why there is none, and whether the choice of the member was close. */
export function featureWords(about: FeatureToWord): string {
  const said = about.value === null ? whyNone(about) : whatItIs(about)
  const close = closeChoice(about)
  return close === '' ? said : `${said}; ${close}`
}

function whatItIs({ name, fit: { member, parameters }, reach }: FeatureToWord): string {
  switch (name) {
    case 'boundaryLevel': {
      if (member.share === null) return 'one level at all speeds; the curve alone cannot tell which regime it is'
      const share = member.share(parameters, reach.lnSlowest)
      const there = share < 0.95 ? `, where it has only ${percent(share)} of the share` : ''
      return `boundary branch at the slowest speed${there}`
    }
    case 'minimumSpeed':
    case 'minimumFriction':
      return 'least friction inside the data'
    case 'filmSlope': {
      if (member.share === null) return 'one slope at all speeds'
      const share = member.share(parameters, reach.lnFastest)
      const there = share > 0.05 ? `, where the boundary branch still has ${percent(share)} of the share` : ''
      return `d ln µ / d ln v at the fastest speed${there}`
    }
    case 'mixedBegins':
      return 'the share of the boundary branch has fallen to 95 %'
    case 'filmBegins':
      return 'the share of the boundary branch has fallen to 5 %'
  }
}

function whyNone({ name, fit, reach }: FeatureToWord): string {
  const { member } = fit
  if (!canHave(member, name)) return noSuchBranch(member, name)
  switch (name) {
    case 'minimumSpeed':
    case 'minimumFriction': {
      const { where } = leastFriction(member, fit.parameters, reach)
      const end = where === 'slowest' ? 'slowest' : 'fastest'
      return `no minimum in the range: friction is least at the ${end} speed`
    }
    case 'filmSlope':
      return 'the film regime is not reached: at the fastest speed the boundary branch has more than half of the share'
    default:
      return 'more than a decade outside the data'
  }
}

function noSuchBranch(member: CurveMember, name: FeatureName): string {
  const curve = member.name === 'plateau' ? 'a plateau' : 'a power law'
  switch (name) {
    case 'minimumSpeed':
    case 'minimumFriction':
      return `no minimum in the range: ${curve} has none`
    case 'boundaryLevel':
      return `${curve} has no boundary plateau`
    case 'filmSlope':
      return `${curve} has no film branch`
    default:
      return `${curve} has no regimes`
  }
}

/** Says so where another member has much weight: the interval averages over both, or the other has no such feature. */
function closeChoice({ members, name }: FeatureToWord): string {
  const [best, next] = members
  if (next === undefined || next.weight < closeWeight) return ''
  const both = `“${modelWords[best.fit.member.name]}” has ${percent(best.weight)} of the weight, “${modelWords[next.fit.member.name]}” ${percent(next.weight)}`
  const averaged = canHave(best.fit.member, name) && canHave(next.fit.member, name)
  return averaged ? `the interval averages: ${both}` : `a close choice: ${both}`
}
