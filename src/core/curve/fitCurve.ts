import { randomFrom } from '../numeric/index.ts'
import type { Curve } from '../terms/index.ts'
import { band, bandMethod } from './band.ts'
import { curveFeatures } from './curveFeatures.ts'
import { type CurvePoint, observationsOf, reachOf } from './curvePoint.ts'
import { curveRemarks, fewPoints, leastPoints } from './curveRemarks.ts'
import { endInWords } from './innerNames.ts'
import { shownCorrelations, shownEstimates } from './shownEstimates.ts'
import { squaresByOwn, type WeighedMember, weighedFits } from './weighedFits.ts'

/** What may be chosen about a fit. */
export interface CurveFitOptions {
  /** Of the draws behind the band. */
  readonly seed: number
  readonly draws?: number
  /** Speeds of the band, evenly spread in ln v. */
  readonly bandSpeeds?: number
  /** Unit of the axis, where it is not sliding speed. */
  readonly speedUnit?: string
}

/**
 * Fits the curve family to the points of one record: weighted least squares in ln μ, the member chosen by its weight,
 * parameters and features with 95 % intervals, a band. Own uncertainty only. Where no fit is possible the model is null and
 * the remarks say why.
 */
export function fitCurve(points: readonly CurvePoint[], options: CurveFitOptions): Curve {
  const { seed, draws = 1000, bandSpeeds = 100, speedUnit = 'm/s' } = options
  if (!(Number.isInteger(draws) && draws >= 40)) throw new RangeError(`draws must be 40 or more, got ${draws}`)
  if (!(Number.isInteger(bandSpeeds) && bandSpeeds >= 2))
    throw new RangeError(`bandSpeeds must be 2 or more, got ${bandSpeeds}`)
  const observations = observationsOf(points)
  if (points.length < leastPoints) return noCurve(points.length)
  const reach = reachOf(observations)
  const members = weighedFits(observations, reach)
  const [best] = members
  const { fit } = best
  const speeds = reach.lnFastest > reach.lnSlowest ? bandSpeeds : 1
  const fits = members.flatMap(({ scatters }) => scatters)
  return {
    model: fit.member.name,
    parameters: shownEstimates(fit, best.scatters, reach),
    features: curveFeatures({ members, fit, reach, speedUnit }),
    band: band({ fit, fits, reach, draws, speeds, random: randomFrom(seed) }),
    bandMethod: bandMethod(draws),
    end: endInWords(fit.end),
    choices: members.map((member) => choiceOf(member, best)),
    correlations: shownCorrelations(fit),
    chiSquared: squaresByOwn(fit),
    degreesOfFreedom: fit.freedom,
    extraScatter: fit.scatter,
    points: points.length,
    remarks: curveRemarks(fit),
  }
}

function choiceOf({ fit, weight }: WeighedMember, best: WeighedMember): Curve['choices'][number] {
  return {
    model: fit.member.name,
    delta: 2 * Math.log(best.weight / Math.max(weight, Number.MIN_VALUE)),
    weight,
    parameters: fit.member.names.length,
  }
}

function noCurve(points: number): Curve {
  return {
    model: null,
    parameters: [],
    features: [],
    band: [],
    bandMethod: 'No band: no curve was fitted.',
    end: null,
    choices: [],
    correlations: [],
    chiSquared: null,
    degreesOfFreedom: 0,
    extraScatter: 0,
    points,
    remarks: fewPoints(points),
  }
}
