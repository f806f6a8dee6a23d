export { type BoundedFit, boundedLeastSquares, exactRules, strongCorrelations } from './boundedLeastSquares.ts'
export { withCentralDifferences } from './centralDifferences.ts'
export { curveFamily } from './curveFamily.ts'
export { type FeatureName, type FeatureValues, featureValues } from './curveFeature.ts'
export type { CurveMember, Evaluation, Reach } from './curveMember.ts'
export type { CurvePoint } from './curvePoint.ts'
export { type CurveFitOptions, fitCurve } from './fitCurve.ts'
export { aicc, akaikeWeights, type Judged } from './informationCriterion.ts'
export {
  collapseSignificance,
  type LiquidShift,
  type MasterCurveFit,
  type MasterLiquid,
  type MasterPoint,
  masterCurve,
} from './master/masterCurve.ts'
export type { StopRules } from './minimiser.ts'
export type { ResidualProblem } from './residualProblem.ts'
export { type FilmAxis, filmAxes, placeOnFilmAxis } from './series/filmAxis.ts'
export { type FrictionMap, frictionMap } from './series/frictionMap.ts'
export { seriesOf } from './series/seriesOf.ts'
