export { type AutocorrelationTime, autocorrelations, integratedAutocorrelationTime } from './autocorrelation.ts'
export { correctLagOne, expectedLagOne, type LagOneSetting, meanVarianceFactor } from './autoregressive.ts'
export { type BlockingLevel, blocking, blockingPlateau } from './blocking.ts'
export { chiSquaredCdf, chiSquaredQuantile, chiSquaredUpper } from './chiSquared.ts'
export { correlate } from './correlate.ts'
export { erf, erfc } from './errorFunction.ts'
export { type FisherFreedom, fisherFCdf, fisherFQuantile, fisherFUpper } from './fisherF.ts'
export { type Grubbs, grubbs, grubbsCritical } from './grubbs.ts'
export { type HampelFlags, hampel } from './hampel.ts'
export { holm } from './holm.ts'
export { incompleteBeta } from './incompleteBeta.ts'
export { incompleteGamma } from './incompleteGamma.ts'
export { type KendallCorrelation, kendall } from './kendall.ts'
export { logGamma } from './logGamma.ts'
export { falseAlarm, falseAlarmKnownVariance, lombScargle, type Periodogram } from './lombScargle.ts'
export { mannKendall, type Trend } from './mannKendall.ts'
export { mser5, type WarmUp } from './mser.ts'
export { type NoncentralT, noncentralTCdf } from './noncentralT.ts'
export { normalCdf, normalDensity, normalQuantile } from './normal.ts'
export { type OneWayAnova, oneWayAnova } from './oneWayAnova.ts'
export { type MeanRatio, ratioOfMeans } from './ratioOfMeans.ts'
export { type RangeSetting, studentizedRangeCdf, studentizedRangeQuantile } from './studentizedRange.ts'
export { studentTCdf, studentTQuantile } from './studentT.ts'
export { mean, type Summary, summary } from './summary.ts'
export { type TheilSenLine, theilSen } from './theilSen.ts'
export {
  type CombinedUncertainty,
  combineUncertainty,
  type TypeA,
  typeA,
  type UncertaintyPart,
  welchSatterthwaite,
} from './uncertaintyBudget.ts'
export {
  derSimonianLaird,
  type HeterogeneousMean,
  mandelPaule,
  type WeightedMean,
  weightedMean,
} from './weightedMean.ts'
