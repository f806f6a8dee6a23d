import type { Step, ZeroLine } from '../../terms/index.ts'
import { correlatedFit, correlationLikelihood } from '../estimate/correlatedFit.ts'
import { addProducts, laggedProducts } from '../estimate/laggedProducts.ts'
import { noiseCorrelation } from '../estimate/noiseCorrelation.ts'
import type { SignalSource } from '../signals.ts'
import { noForceZero } from './corrections.ts'

/** A drift counts when it exceeds this many of its standard uncertainties. */
const driftFactor = 2

/**
 * Zero of the axial force from the stretches without contact: a straight line in time where they lie before and after
 * the sliding or where their own drift is clear, else their mean. Where only one side was seen and no drift is clear,
 * the drift that could have been missed still stands in `slopeUncertainty`.
 */
export function forceZero(steps: readonly Step[], source: SignalSource): ZeroLine {
  const blanks = steps.filter((step) => step.kind === 'blank' && step.to - step.from >= 5)
  if (blanks.length === 0 || !source.hasForce) return noForceZero
  const slides = steps.filter((step) => step.kind === 'slide')
  const rows = blanks.reduce((sum, step) => sum + step.to - step.from, 0)
  const at = blanks.reduce((sum, step) => sum + total(source.time(step.from, step.to)), 0) / rows
  const parts = blanks.map((step) => {
    const time = source.time(step.from, step.to)
    const ones = new Float64Array(time.length).fill(1)
    return laggedProducts([ones, time.map((t) => t - at), source.force(step.from, step.to)])
  })
  const products = addProducts(parts)
  const noise = noiseCorrelation([correlationLikelihood(products)])
  const fit = correlatedFit(products, noise.steps[0].correlation)
  if (fit === undefined) return noForceZero
  const slopeUncertainty = Math.sqrt(fit.covariance[3])
  const bothSides =
    slides.length > 0 &&
    blanks[0].from < slides[0].from &&
    blanks[blanks.length - 1].from > slides[slides.length - 1].from
  const drifts = bothSides || Math.abs(fit.coefficients[1]) > driftFactor * slopeUncertainty
  return {
    from: bothSides ? 'blankBeforeAndAfter' : 'blank',
    level: fit.coefficients[0],
    slope: drifts ? fit.coefficients[1] : 0,
    at,
    levelUncertainty: Math.sqrt(fit.covariance[0]),
    slopeUncertainty,
    rows,
  }
}

/** Standard uncertainty of the zero at a time, N. */
export const zeroUncertainty = (line: ZeroLine, time: number): number =>
  Math.hypot(line.levelUncertainty, line.slopeUncertainty * (time - line.at))

function total(values: Float64Array): number {
  let sum = 0
  for (let i = 0; i < values.length; i++) sum += values[i]
  return sum
}
