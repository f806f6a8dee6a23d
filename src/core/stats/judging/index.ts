// What judges samples, limits, rounds and charts, and propagates uncertainty. Apart, so that reducing a record loads no more than it needs.
export { type JudgedPair, type PairDifference, tukeyKramer } from '../allPairs.ts'
export { type ChartConstants, chartConstants } from '../chart/chartConstants.ts'
export { type CusumPoint, type CusumSetting, cusumChart } from '../chart/cusumChart.ts'
export { type EwmaPoint, type EwmaSetting, ewmaChart } from '../chart/ewmaChart.ts'
export {
  type DriftCauses,
  type DriftEffect,
  type DriftExplanation,
  type DriftTest,
  explainDrift,
} from '../chart/explainDrift.ts'
export { type IndividualsChart, individualsChart } from '../chart/individualsChart.ts'
export { type RunLength, runLength, type WatchSetting } from '../chart/runLength.ts'
export {
  type RuleSetName,
  type RunAlarm,
  type RunRuleName,
  ruleSets,
  runAlarms,
  runRuleWords,
} from '../chart/runRules.ts'
export { type Cochran, type CochranSetting, cochran, cochranCritical } from '../cochran.ts'
export { compactLetters } from '../compactLetters.ts'
export { type CurveScatter, curveScatter, type SampleCurves } from '../curveScatter.ts'
export { type EsdStep, type GeneralisedEsd, generalisedEsd } from '../generalisedEsd.ts'
export { type GrubbsPair, grubbsPair, grubbsPairCritical } from '../grubbsPair.ts'
export { bartlett, type Homogeneity, levene } from '../homogeneity.ts'
export { type Assessed, conformanceProbability } from '../limit/conformance.ts'
export { type DecisionRule, usualRule } from '../limit/decisionRule.ts'
export { type GlobalRisk, globalRisk, type RiskSetting } from '../limit/globalRisk.ts'
export { judgeLimit, type LimitJudgement, type LimitVerdict, verdictOfAll } from '../limit/judgeLimit.ts'
export type { Tolerance } from '../limit/tolerance.ts'
export { mandelHCritical, mandelKCritical } from '../mandel.ts'
export { type Contrast, type MaxTDrawing, maxTDraws } from '../maxT.ts'
export { maxTSeparateDraws } from '../maxTSeparate.ts'
export { type MixedContrast, type MixedFit, mixedModel } from '../mixedModel.ts'
export type { MixedProblem, RandomCause } from '../mixedProblem.ts'
export { comparePropagations, type PropagationComparison } from '../propagate/comparePropagations.ts'
export type { Interval } from '../propagate/coverageInterval.ts'
export { type Distribution, type DistributionKind, distributionFault } from '../propagate/distribution.ts'
export { type DrawFault, type DrawInputs, drawInputs } from '../propagate/drawInputs.ts'
export type { InputCorrelation, MeasurementModel } from '../propagate/model.ts'
export { type Contribution, jointCovariance, type LinearResult, propagateLinear } from '../propagate/propagateLinear.ts'
export {
  type MonteCarloResult,
  type MonteCarloSetting,
  propagateMonteCarlo,
} from '../propagate/propagateMonteCarlo.ts'
export { type StandardInput, standardOf } from '../propagate/standardOf.ts'
export { type RobustMean, robustDeviation, robustMean } from '../round/robustRound.ts'
export {
  consistencySignificance,
  type LaboratoryConsistency,
  type OutlierTest,
  type RoundConsistency,
  roundConsistency,
} from '../round/roundConsistency.ts'
export { type Cell, type RoundPrecision, roundPrecision } from '../round/roundPrecision.ts'
export {
  type EquivalenceResult,
  equivalenceTest,
  type MeanDifference,
  pairedDifference,
  pooledDifference,
  type SampleNumbers,
  tTest,
  welchDifference,
} from '../twoMeans.ts'
export { type DeviationInterval, type ScatterIntervals, varianceIntervals } from '../varianceIntervals.ts'
export { type Life, type ProfileInterval, type WeibullFit, weibullFit } from '../weibull.ts'
