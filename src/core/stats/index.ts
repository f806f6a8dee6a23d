export { type JudgedPair, type PairDifference, tukeyKramer } from './allPairs.ts'
export { type AutocorrelationTime, autocorrelations, integratedAutocorrelationTime } from './autocorrelation.ts'
export { correctLagOne, expectedLagOne, type LagOneSetting, meanVarianceFactor } from './autoregressive.ts'
export { type BlockingLevel, blocking, blockingPlateau } from './blocking.ts'
export { type ChartConstants, chartConstants } from './chart/chartConstants.ts'
export { type CusumPoint, type CusumSetting, cusumChart } from './chart/cusumChart.ts'
export { type EwmaPoint, type EwmaSetting, ewmaChart } from './chart/ewmaChart.ts'
export {
  type DriftCauses,
  type DriftEffect,
  type DriftExplanation,
  type DriftTest,
  explainDrift,
} from './chart/explainDrift.ts'
export { type IndividualsChart, individualsChart } from './chart/individualsChart.ts'
export { type RunLength, runLength, type WatchSetting } from './chart/runLength.ts'
export {
  type RuleSetName,
  type RunAlarm,
  type RunRuleName,
  ruleSets,
  runAlarms,
  runRuleWords,
} from './chart/runRules.ts'
export { chiSquaredCdf, chiSquaredQuantile, chiSquaredUpper } from './chiSquared.ts'
export { type Cochran, type CochranSetting, cochran, cochranCritical } from './cochran.ts'
export { compactLetters } from './compactLetters.ts'
export { correlate } from './correlate.ts'
export { type CurveScatter, curveScatter, type SampleCurves } from './curveScatter.ts'
export { erf, erfc } from './errorFunction.ts'
export { type FisherFreedom, fisherFCdf, fisherFQuantile, fisherFUpper } from './fisherF.ts'
export { type EsdStep, type GeneralisedEsd, generalisedEsd } from './generalisedEsd.ts'
export { type Grubbs, grubbs, grubbsCritical } from './grubbs.ts'
export { type GrubbsPair, grubbsPair, grubbsPairCritical } from './grubbsPair.ts'
export { type HampelFlags, hampel } from './hampel.ts'
export { holm } from './holm.ts'
export { bartlett, type Homogeneity, levene } from './homogeneity.ts'
export { incompleteBeta } from './incompleteBeta.ts'
export { incompleteGamma } from './incompleteGamma.ts'
export { type KendallCorrelation, kendall } from './kendall.ts'
export { type Assessed, conformanceProbability } from './limit/conformance.ts'
export { type DecisionRule, usualRule } from './limit/decisionRule.ts'
export { type GlobalRisk, globalRisk, type RiskSetting } from './limit/globalRisk.ts'
export { judgeLimit, type LimitJudgement, type LimitVerdict, verdictOfAll } from './limit/judgeLimit.ts'
export type { Tolerance } from './limit/tolerance.ts'
export { logGamma } from './logGamma.ts'
export { falseAlarm, falseAlarmKnownVariance, lombScargle, type Periodogram } from './lombScargle.ts'
export { mandelHCritical, mandelKCritical } from './mandel.ts'
export { mannKendall, type Trend } from './mannKendall.ts'
export { type Contrast, type MaxTDrawing, maxTDraws } from './maxT.ts'
export { maxTSeparateDraws } from './maxTSeparate.ts'
export { type MixedContrast, type MixedFit, mixedModel } from './mixedModel.ts'
export type { MixedProblem, RandomCause } from './mixedProblem.ts'
export { mser5, type WarmUp } from './mser.ts'
export { type NoncentralT, noncentralTCdf } from './noncentralT.ts'
export { normalCdf, normalDensity, normalQuantile } from './normal.ts'
export { type OneWayAnova, oneWayAnova } from './oneWayAnova.ts'
export { comparePropagations, type PropagationComparison } from './propagate/comparePropagations.ts'
export type { Interval } from './propagate/coverageInterval.ts'
export { type Distribution, type DistributionKind, distributionFault } from './propagate/distribution.ts'
export { type DrawFault, type DrawInputs, drawInputs } from './propagate/drawInputs.ts'
export type { InputCorrelation, MeasurementModel } from './propagate/model.ts'
export { type Contribution, jointCovariance, type LinearResult, propagateLinear } from './propagate/propagateLinear.ts'
export {
  type MonteCarloResult,
  type MonteCarloSetting,
  propagateMonteCarlo,
} from './propagate/propagateMonteCarlo.ts'
export { type StandardInput, standardOf } from './propagate/standardOf.ts'
export { type MeanRatio, ratioOfMeans } from './ratioOfMeans.ts'
export { type RobustMean, robustDeviation, robustMean } from './round/robustRound.ts'
export {
  consistencySignificance,
  type LaboratoryConsistency,
  type OutlierTest,
  type RoundConsistency,
  roundConsistency,
} from './round/roundConsistency.ts'
export { type Cell, type RoundPrecision, roundPrecision } from './round/roundPrecision.ts'
export { type RangeSetting, studentizedRangeCdf, studentizedRangeQuantile } from './studentizedRange.ts'
export { studentTCdf, studentTQuantile } from './studentT.ts'
export { mean, type Summary, summary } from './summary.ts'
export { type TheilSenLine, theilSen } from './theilSen.ts'
export {
  type EquivalenceResult,
  equivalenceTest,
  type MeanDifference,
  pairedDifference,
  pooledDifference,
  type SampleNumbers,
  tTest,
  welchDifference,
} from './twoMeans.ts'
export {
  type CombinedUncertainty,
  combineUncertainty,
  type TypeA,
  typeA,
  type UncertaintyPart,
  welchSatterthwaite,
} from './uncertaintyBudget.ts'
export { type DeviationInterval, type ScatterIntervals, varianceIntervals } from './varianceIntervals.ts'
export { type Life, type ProfileInterval, type WeibullFit, weibullFit } from './weibull.ts'
export {
  derSimonianLaird,
  type HeterogeneousMean,
  mandelPaule,
  type WeightedMean,
  weightedMean,
} from './weightedMean.ts'
