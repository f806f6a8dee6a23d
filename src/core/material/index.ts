export { type BallGrade, ballGrades } from './bodies/ballGrades.ts'
export { elasticNumbers, heatNumbers, indentationHardness } from './bodies/bodyNumbers.ts'
export { findMaterial } from './bodies/findMaterial.ts'
export {
  type FinishRoughness,
  type Hardness,
  type HardnessScale,
  hardnessScales,
  type Material,
  type MaterialFamily,
  materialFamilies,
  type Strength,
} from './bodies/material.ts'
export { materials } from './bodies/materials.ts'
export { rootMeanSquareRoughness, roughnessRatios } from './bodies/roughnessRatio.ts'
export { type OwnMaterial, ownValue, withOwnMaterials } from './bodies/withOwnMaterials.ts'
export { type FlowEstimate, type FlowFit, fitFlowLaw } from './flow/fitFlowLaw.ts'
export { fitFlowLaws, type RankedFlowFit } from './flow/fitFlowLaws.ts'
export { type FlowParameters, flowFunction, flowLaws, flowParameterFaults, flowViscosity } from './flow/flowLaw.ts'
export type { FlowPoint } from './flow/flowPoint.ts'
export { type FlowLaw, type FlowLawName, type FlowParameter, flowLawNames } from './flow/shape.ts'
export { type KnownValue, type Seen, seenKinds } from './knownValue.ts'
export { findLiquid, type NamedRecipe, namedLiquids, recipeNamed } from './liquids/findLiquid.ts'
export { glycerolWaterDensity, glycerolWaterViscosity } from './liquids/glycerolWater.ts'
export type { Liquid, LiquidConditions, LiquidDensity, LiquidViscosity } from './liquids/liquid.ts'
export { liquidFrom } from './liquids/liquidFrom.ts'
export type { LiquidKind, LiquidRecipe } from './liquids/liquidRecipe.ts'
export type { MeasuredViscosity } from './liquids/measuredLiquid.ts'
export { mineralOilGrades } from './liquids/mineralOil.ts'
export { type LiquidFamily, pressureCoefficients } from './liquids/pressureCoefficients.ts'
export { barusViscosity, type PressureSensitive, roelandsExponent, roelandsViscosity } from './liquids/pressureLaws.ts'
export { recipeFromFit } from './liquids/recipeFromFit.ts'
export { type ViscosityGrade, viscosityGrade, viscosityGrades } from './liquids/viscosityGrades.ts'
export {
  type KinematicPoint,
  type WaltherLine,
  waltherLine,
  waltherTemperature,
  waltherViscosity,
} from './liquids/walther.ts'
export { waterDensity, waterViscosity } from './liquids/waterAtAirPressure.ts'
export { waterDensityUnderPressure } from './liquids/waterDensityUnderPressure.ts'
export { waterViscosityAtDensity } from './liquids/waterViscosityAtDensity.ts'
export { type MaterialProblemKind, materialProblemKinds } from './materialProblem.ts'
export type { Span } from './span.ts'
