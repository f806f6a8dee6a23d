export { type BoundedFit, boundedLeastSquares, exactRules, strongCorrelations } from './boundedLeastSquares.ts'
export { withCentralDifferences } from './centralDifferences.ts'
export type { StopRules } from './minimiser.ts'
export type { ResidualProblem } from './residualProblem.ts'
