import type { ReduceOptions } from '../terms/index.ts'

/**
 * What the reduction assumes until somebody says otherwise. Unless a source stands beside a value it is common
 * practice, no source; the faces show these as defaults.
 */
export const reduceDefaults: ReduceOptions = {
  segmentation: 'auto',
  rampBinsPerDecade: 10,
  settleTolerance: 0.02,
  // Ten standard uncertainties: the limit of quantification in analytical chemistry (Currie 1968, from memory).
  floorFactor: 10,
  forceTolerance: 0.02,
  temperatureTolerance: 1,
  forceRippleLimit: 0.05,
  frictionRippleLimit: 0.1,
  contactShare: 0.5,
  gapCreepLimit: 1e-6,
  biasLimit: 0.05,
  significance: 0.01,
  bandDraws: 1000,
  seed: 1,
}

/**
 * Tilt of a plate that nobody has measured: 0.1 to 0.3° was inferred for the bottom plate of one rheometer from
 * viscosity against gap (Rodrigues 2025, arXiv 2502.20967); the middle of it stands in where a record holds no whole turn.
 */
export const assumedTilt = (0.2 * Math.PI) / 180
