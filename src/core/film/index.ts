export {
  entrainmentInPureSliding,
  type FilmConditions,
  type FilmNumbers,
  type FilmPair,
  filmNumbers,
  slidingOfEntrainment,
} from './conditions.ts'
export { explainFilm, type Film, type OtherFilm } from './explainFilm.ts'
export { ellipticity, hardFilm, type ScaledFilm, softCentralFilmOf2005, softFilm } from './filmForms.ts'
export { type FilmLaw, filmLaw, lnMinimumFilm, speedOfFilm } from './filmLaw.ts'
export {
  centralRegimeFilms,
  type FilmRegime,
  filmRegimes,
  largestRegime,
  type RegimeFilms,
  type RegimeNumbers,
  regimeFilms,
} from './filmRegimes.ts'
export { centralFilm, filmRegime, minimumFilm, thickestFilm } from './filmThickness.ts'
export { type HerseyDefinition, type HerseyTerms, herseyDefinitions, herseyNumber } from './hersey.ts'
export { combinedRoughness, lambdaRatio } from './lambda.ts'
export {
  type FilmUncertainties,
  type LambdaInterval,
  type LambdaQuestion,
  type LambdaRange,
  type LambdaSource,
  lambdaInterval,
  type Roughness,
} from './lambdaInterval.ts'
export {
  type LubricationBounds,
  type LubricationRegime,
  lubricationRegime,
  softFullFilmSeen,
  usualBounds,
} from './lubricationRegime.ts'
export { type MasterCurve, masterFriction } from './masterFriction.ts'
export { type RegimeQuestion, type RegimeSpeeds, regimeSpeeds } from './regimeSpeeds.ts'
export {
  pureSlidingRatio,
  type SoftFilmFriction,
  softFilmFriction,
  softRollingFriction,
  softShearFriction,
  softShearTerms,
} from './softFriction.ts'
export { type FlowCurve, filmWithThinning, type InletRate, type ThinningFilm } from './thinningFilm.ts'
export { type InletState, inletState, type ThinningLaw, thinningLaw, thinningSpeedOfFilm } from './thinningLaw.ts'
