import { linearLeastSquares } from '../../numeric/index.ts'
import { printQuantity } from '../../quantity/index.ts'
import type { BelievableWindow, Point, WindowLimitName } from '../../terms/index.ts'
import { partialTurnShare } from '../remarks/underOneTurn.ts'
import { nameWords } from './nameWords.ts'
import type { LimitContext } from './pointLimits.ts'

/** Slope d ln µ/d ln v under which the slow end counts as level: 12 % over a decade. Common practice, no source. */
const levelSlope = 0.05

/** The slow end: points within this factor of the slowest, at least three. */
const slowEnd = 5
const fewestPoints = 3

/** A point and the limits that it breaks. */
export interface JudgedPoint {
  readonly point: Point
  readonly broken: readonly WindowLimitName[]
}

/**
 * Is the low-speed plateau real? Level within half a decade and every limit kept there: real. Level, but a limit
 * broken: doubtful, with the limit. A slope: no plateau was reached. Too few points or no turn seen: cannot tell.
 *
 * @param judged in order of speed
 */
export function plateauVerdict(judged: readonly JudgedPoint[], context: LimitContext): BelievableWindow['plateau'] {
  const usable = judged.filter(({ point }) => (point.friction ?? 0) > 0)
  const [first] = usable
  if (first === undefined || usable.length < fewestPoints) {
    return {
      verdict: 'cannotTell',
      sentence: `Whether there is a plateau cannot be told from ${usable.length} points.`,
    }
  }
  const within = usable.filter(({ point }) => point.slidingSpeed <= slowEnd * first.point.slidingSpeed)
  const slow = within.length >= fewestPoints ? within : usable.slice(0, fewestPoints)
  const from = words(slow[0].point.slidingSpeed)
  const to = words(slow[slow.length - 1].point.slidingSpeed)
  const { slope, uncertainty } = slopeOf(slow)
  const told = `from ${from} to ${to} friction changes as v^${slope.toFixed(3)}`
  const broken = [...new Set(slow.flatMap((one) => one.broken))]
  if (broken.length > 0) {
    return {
      verdict: 'doubtful',
      sentence: `The slow end is doubtful: ${told}, but ${broken.map(nameWords).join(' and ')} reaches into it.`,
    }
  }
  if (Math.abs(slope) > levelSlope + 2 * uncertainty) {
    return { verdict: 'notReached', sentence: `No plateau is reached at the slow end: ${told}.` }
  }
  if (uncertainty > levelSlope) {
    return {
      verdict: 'cannotTell',
      sentence: `Whether the slow end is level cannot be told: ${told} ± ${(2 * uncertainty).toFixed(3)}.`,
    }
  }
  const partial = slow.filter(({ point }) => point.turns < 1)
  if (partial.length > 0 && !context.rippleSeen) {
    return {
      verdict: 'cannotTell',
      sentence: `The slow end is level (${told}), but no step of the record holds a whole turn, so a tilt could make or hide it.`,
    }
  }
  const bias = Math.max(0, ...partial.map(({ point }) => biasAt(point, context)))
  const left =
    bias > 0
      ? `; uncorrected, the ripple could have shifted it by up to ${printQuantity(bias, 'ratio', { digits: 2 })}`
      : ''
  return { verdict: 'real', sentence: `The low-speed plateau is real: ${told}${left}, and every limit is kept there.` }
}

const words = (speed: number): string => printQuantity(speed, 'velocity', { digits: 3 })

const biasAt = (point: Point, context: LimitContext): number =>
  partialTurnShare(point.turns) * (context.ripple.find((value) => Number.isFinite(value)) ?? 0)

/** Weighted slope of ln µ on ln v, with the larger of what own uncertainties and scatter say. */
function slopeOf(slow: readonly JudgedPoint[]): { slope: number; uncertainty: number } {
  const weight = slow.map(
    ({ point }) => (point.friction ?? 1) / Math.max(point.ownUncertainty ?? 0, 1e-4 * (point.friction ?? 1)),
  )
  const scaled = (value: (point: Point) => number) =>
    Float64Array.from(slow, ({ point }, i) => weight[i] * value(point))
  const fit = linearLeastSquares(
    [scaled(() => 1), scaled((point) => Math.log(point.slidingSpeed))],
    scaled((point) => Math.log(point.friction ?? 1)),
  )
  const scatter = fit.degreesOfFreedom > 0 ? fit.residualSumOfSquares / fit.degreesOfFreedom : 1
  return { slope: fit.coefficients[1], uncertainty: Math.sqrt(fit.inverseGram[3] * Math.max(1, scatter)) }
}
