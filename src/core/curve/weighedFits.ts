import { median } from '../numeric/index.ts'
import { curveFamily } from './curveFamily.ts'
import type { CurveMember, Reach } from './curveMember.ts'
import type { Observations } from './curvePoint.ts'
import { fitMember, type MemberFit, withScatter } from './fitMember.ts'
import { aicc, akaikeWeights, shares } from './informationCriterion.ts'
import { spreadOf, weightedSquares } from './studentLoss.ts'

/** A member with a scatter between steps, and the share of belief that the two get together. */
export interface WeighedFit {
  readonly fit: MemberFit
  readonly weight: number
}

/** A member over all scatters. */
export interface WeighedMember {
  /** Fitted with the scatter that brings its weighted squares down to what is expected. */
  readonly fit: MemberFit
  /** Akaike weight, averaged over the scatter. */
  readonly weight: number
  /** The same member at the scatters that count, heaviest first; weights as shares of the whole family. */
  readonly scatters: readonly WeighedFit[]
}

/** Belief, before the data, that own uncertainties explain all scatter: two to one. */
const nothingExtra = 2 / 3
/** Scatters looked at: zero, then from this share of the typical own uncertainty, each so many times the one before. */
const leastScatter = 0.3
const scatterRatio = 1.6
/** Up to so many times own uncertainty the belief in extra scatter counts as one whole; beyond that it goes on. */
const usualScatter = 30
/** The correction of AICc counts no fewer points than this. */
const fewestCounted = 15
/** Combinations with less weight are left out. */
const leastWeight = 0.005

/**
 * All members that the points suffice for, heaviest first, with their weights. Members are weighed by AICc at each scatter
 * between steps. How likely a scatter is under a member follows from the weighted squares, which are χ² with n − p degrees of
 * freedom at the right one. The two conditional beliefs, scatter given member and member given scatter, are brought together
 * as the stationary state of going from one to the other (as a Gibbs sampler would).
 */
export function weighedFits(observations: Observations, reach: Reach): readonly WeighedMember[] {
  const bases = membersFor(observations, reach).map((member) => fitMember(member, observations))
  const scatters = scattersFor(observations, bases)
  const table = bases.map((base) => alongScatters(base, scatters))
  const scatterGivenMember = table.map((row) => shares(row.map((fit, j) => scatters[j].lnBelief + lnPlausible(fit))))
  const memberGivenScatter = scatters.map((_, j) => akaikeWeights(table.map((row) => criterionOf(row[j]))))
  const weights = jointWeights(scatterGivenMember, memberGivenScatter)
  return bases
    .map((fit, k) => ({
      fit,
      weight: weights[k].reduce((sum, weight) => sum + weight, 0),
      scatters: table[k]
        .map((at, j) => ({ fit: at, weight: weights[k][j] }))
        .filter(({ weight }) => weight >= leastWeight)
        .sort((a, b) => b.weight - a.weight),
    }))
    .sort((a, b) => b.weight - a.weight)
}

/** Members with fewer parameters than points, and no more than there are different speeds. */
function membersFor({ lnSpeeds }: Observations, reach: Reach): CurveMember[] {
  const different = new Set(lnSpeeds).size
  return Object.values(curveFamily)
    .map((make) => make(reach))
    .filter(({ names }) => names.length < lnSpeeds.length && names.length <= different)
}

interface PossibleScatter {
  readonly scatter: number
  /** Logarithm of its share of belief before the data. */
  readonly lnBelief: number
}

/** Zero, and a ladder with a belief that falls as 1/(own + scatter): even in the logarithm where scatter rules. */
function scattersFor({ own }: Observations, bases: readonly MemberFit[]): PossibleScatter[] {
  const typical = median(own)
  const most = Math.max(8 * typical, 4 * Math.max(...bases.map((fit) => fit.scatter)))
  const extra = ((1 - nothingExtra) * Math.log(scatterRatio)) / Math.log1p(usualScatter)
  const scatters: PossibleScatter[] = [{ scatter: 0, lnBelief: Math.log(nothingExtra) }]
  for (let scatter = leastScatter * typical; scatter <= most; scatter *= scatterRatio) {
    scatters.push({ scatter, lnBelief: Math.log((extra * scatter) / (scatter + typical)) })
  }
  return scatters
}

/** One member at each scatter, each fit starting from its neighbour. */
function alongScatters(base: MemberFit, scatters: readonly PossibleScatter[]): MemberFit[] {
  let fit = base
  return scatters.map(({ scatter }) => {
    fit = withScatter(fit, scatter)
    return fit
  })
}

/**
 * Logarithm of how plausible the weighted squares Q of a fit are: that of Q^(m/2) e^(−Q/2) with m = n − p, for points with
 * few own degrees of freedom ν to the power 1/κ, as Q then has the variance 2mκ with κ = mean of ν/(ν+3).
 */
function lnPlausible({ spread, residuals, freedom, observations }: MemberFit): number {
  // A fit without residuals makes all scatters alike, not impossible.
  const ratio = Math.max(1e-9, weightedSquares(spread, residuals) / freedom)
  const narrowing = observations.freedom.reduce((sum, nu) => sum + nu / (nu + 3), 0) / residuals.length
  return (freedom / 2 / narrowing) * (Math.log(ratio) - ratio + 1)
}

/**
 * AICc at a given scatter: all variances are known, so −2 ln L is the loss. The correction for few points pays for a variance
 * estimated from the residuals and would not be owed here; it stays because 2k alone takes the member with six parameters for
 * up to a sixth of the curves that have five. Below `fewestCounted` points it would forbid members that own uncertainties plainly
 * ask for, so it is taken as of that many.
 */
const criterionOf = ({ loss, member, residuals }: MemberFit): number =>
  aicc({
    minusTwoLnL: loss,
    parameters: member.names.length,
    points: Math.max(fewestCounted, residuals.length),
  })

/** Weights of members (outer) with scatters (inner), from the two conditional beliefs. */
function jointWeights(
  scatterGivenMember: readonly (readonly number[])[],
  memberGivenScatter: readonly (readonly number[])[],
): number[][] {
  let members = scatterGivenMember.map(() => 1 / scatterGivenMember.length)
  let scatters: number[] = []
  for (let round = 0; round < 100; round++) {
    scatters = memberGivenScatter.map((_, j) => members.reduce((sum, w, k) => sum + w * scatterGivenMember[k][j], 0))
    const next = members.map((_, k) => scatters.reduce((sum, w, j) => sum + w * memberGivenScatter[j][k], 0))
    const change = next.reduce((most, w, k) => Math.max(most, Math.abs(w - members[k])), 0)
    members = next
    if (change < 1e-6) break
  }
  return members.map((_, k) => scatters.map((w, j) => w * memberGivenScatter[j][k]))
}

/** Weighted squares by own uncertainty alone, about `freedom` where that explains the scatter of a fit. */
export const squaresByOwn = ({ observations, residuals }: MemberFit): number =>
  weightedSquares(spreadOf(observations, 0), residuals)
