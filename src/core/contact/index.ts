export { type AdhesionScale, adhesionScale, type StickySphere } from './adhesionScale.ts'
export {
  type AdhesionAnswer,
  type AdhesionRegime,
  type AdhesiveContact,
  adhesiveContact,
  type StickyCircumstances,
  taborBounds,
} from './adhesiveContact.ts'
export { type ArchardForm, rateOfCoefficient, specificWearRate, wornVolume } from './archard.ts'
export { type AxisStress, axisStress, type LargestShear, largestShear } from './axisStress.ts'
export { capDepth, capDepthOfVolume, capVolume, capVolumeApproximate, scarDiameterOfDepth } from './ballScar.ts'
export { buckleLimit, type CoatedPlate, type CoatingContact, coatingContact } from './coatingContact.ts'
export { dmtApproach, dmtPullOff, dmtRadius } from './dmt.ts'
export { type BrittleBody, type EdgeTension, edgeTension, edgeTensionOf } from './edgeTension.ts'
export { type ElasticBody, effectiveModulus, effectiveRadius, rigidBody } from './elasticBody.ts'
export { type FirstYield, firstYield, firstYieldLoad, firstYieldPressure, type YieldingBody } from './firstYield.ts'
export {
  diffusivity,
  type HeatBody,
  type HeatMeasure,
  type HeatSpread,
  heatFactor,
  pecletNumber,
} from './flashHeat.ts'
export { type FlashTemperature, flashTemperature, type SharedHeat, type SlidingHeat } from './flashTemperature.ts'
export { type FlatContact, type FlatFace, flatContact, liftOffTilt, nominalPressure } from './flatContact.ts'
export {
  contactStiffness,
  hertzApproach,
  hertzLoad,
  hertzMeanPressure,
  hertzPeakPressure,
  hertzRadius,
} from './hertz.ts'
export { type HertzContact, hertzContact, type SphereCircumstances } from './hertzContact.ts'
export { jkrApproach, jkrPullOff, jkrRadius } from './jkr.ts'
export type { LayerHold } from './layerKernel.ts'
export {
  bondedAsPublished,
  bondedCorrected,
  bondedOfPoisson,
  type LayerSeries,
  seriesStiffening,
  unbondedAsPublished,
} from './layerSeries.ts'
export { type LayerTable, layerTable } from './layerTable.ts'
export { maugisContact, maugisParameter, maugisPullOff, type ScaledContact } from './maugis.ts'
export {
  type PlannedSliding,
  type PlannedWear,
  plannedBallWear,
  plannedFlatWear,
} from './plannedWear.ts'
export { mustBePoissonRatio, mustBePositive, mustNotBeNegative } from './refuse.ts'
export { type LayerAnswer, type SoftLayer, type SoftLayerContact, softLayerContact } from './softLayer.ts'
export type { SphereOnFlat } from './sphereOnFlat.ts'
export { taborParameter, usualSpacing } from './tabor.ts'
export { type TrackScar, trackVolume, trackVolumeApproximate, trackVolumeOfSection } from './trackScar.ts'
export { type WearCoefficient, wearCoefficients } from './wearCoefficients.ts'
export { type WornContact, wornContact, wornFlatPressure } from './wornContact.ts'
