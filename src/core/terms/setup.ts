import type {
  Kelvin,
  KilogramMetreSquared,
  Metre,
  Newton,
  NewtonMetrePerRadian,
  Pascal,
  PascalSecond,
  Radian,
  RadianPerSecond,
  Ratio,
} from './si.ts'

/** How the normal force spreads over a ring or disc: decides its lever arm (2/3 law or mean radius). */
export type PressureLaw = 'uniformPressure' | 'uniformWear'

/** The bodies and their geometry. All lengths in m, angles in rad; `…Uncertainty` are standard uncertainties. */
export type FixtureSpec =
  | {
      readonly kind: 'ballsOnPlate'
      readonly balls: number
      readonly ballDiameter: Metre
      readonly trackRadius: Metre
      readonly trackRadiusUncertainty: Metre
    }
  | {
      readonly kind: 'ballOnPlates'
      readonly plates: number
      readonly ballDiameter: Metre
      readonly ballDiameterUncertainty: Metre
      /** Angle between the axis and the plates' normals. */
      readonly inclination: Radian
      readonly inclinationUncertainty: Radian
    }
  | { readonly kind: 'ballOnBalls'; readonly ballDiameter: Metre; readonly ballDiameterUncertainty: Metre }
  | {
      readonly kind: 'ringOnPlate'
      readonly outerRadius: Metre
      readonly innerRadius: Metre
      /** 1 for a whole ring. */
      readonly segments: number
      readonly pressure: PressureLaw
      readonly radiusUncertainty: Metre
    }
  | {
      readonly kind: 'discOnPlate'
      readonly radius: Metre
      readonly pressure: PressureLaw
      readonly radiusUncertainty: Metre
    }
  | {
      readonly kind: 'pinsOnDisc'
      readonly pins: number
      readonly pinDiameter: Metre
      /** Radius of the domed end; undefined for a flat end. */
      readonly endRadius?: Metre
      readonly trackRadius: Metre
      readonly trackRadiusUncertainty: Metre
    }

/** Which bodies touch. */
export type FixtureKind = FixtureSpec['kind']

/** One channel of the rig. `scaleAccuracy` is the half-width of a rectangular error of scale (JCGM 100, 4.3.7). */
export interface SensorLimits {
  /** Smallest value that the maker or the owner trusts. */
  readonly floor?: number
  readonly ceiling?: number
  readonly scaleAccuracy: Ratio
}

/** What the rheometer can do. Undefined means that nobody said, and the answer that needs it says so. */
export interface RigSpec {
  readonly name: string
  /** N·m */
  readonly torque: SensorLimits
  /** N */
  readonly axialForce: SensorLimits
  /** rad/s */
  readonly angularVelocity: { readonly floor?: RadianPerSecond; readonly ceiling?: RadianPerSecond }
  /** Moment of inertia of everything that turns. */
  readonly inertia?: KilogramMetreSquared
  /** Torsional stiffness of shaft, coupling and fixture together. */
  readonly torsionalStiffness?: NewtonMetrePerRadian
}

/** One of the two bodies at its surface. Lengths in m, modulus in Pa. */
export interface SurfaceSpec {
  readonly name: string
  /** Root-mean-square roughness. */
  readonly roughness?: Metre
  readonly roughnessUncertainty?: Metre
  readonly elasticModulus?: Pascal
  readonly poissonRatio?: Ratio
  /** Thickness of a coating or soft layer. */
  readonly thickness?: Metre
}

/** The two bodies that slide on each other; the upper one turns. */
export interface PairSpec {
  readonly upper: SurfaceSpec
  readonly lower: SurfaceSpec
}

/** What lies between the bodies, at the temperature of the run. */
export interface LiquidSpec {
  readonly name: string
  readonly viscosity?: PascalSecond
  readonly viscosityUncertainty?: PascalSecond
  /** Measured at other temperatures, K. */
  readonly byTemperature?: readonly { readonly viscosity: PascalSecond; readonly at: Kelvin }[]
  /** Flow curve at the temperature of the run; shear rates in 1/s. */
  readonly byRate?: readonly { readonly viscosity: PascalSecond; readonly at: number }[]
}

/** What was commanded. */
export interface RunSpec {
  /** Axial force that the rig was told to hold. Taken from the record when undefined. */
  readonly axialForce?: Newton
  readonly temperature?: Kelvin
  /** Angular velocity, if the record has no speed channel. */
  readonly angularVelocity?: RadianPerSecond
  readonly sample?: string
  readonly operator?: string
  readonly note?: string
  readonly relativeHumidity?: Ratio
  readonly roomTemperature?: Kelvin
}

/** Diameters of one worn flat, read along and across the sliding direction; twice the same where one was read. */
export interface ScarReading {
  readonly along: Metre
  readonly across: Metre
}

/** What was found on the bodies after the test. Lengths in m, areas in m²; `…Uncertainty` are standard uncertainties of one reading. */
export interface WornSpec {
  /** One for each ball or domed pin that was looked at. */
  readonly scars?: readonly ScarReading[]
  readonly scarUncertainty?: Metre
  /** Areas of profiles through the track, one for each place. */
  readonly sections?: readonly number[]
  readonly sectionUncertainty?: number
  readonly trackWidth?: Metre
  readonly trackWidthUncertainty?: Metre
  /** Slid by the same surfaces under the same load before this record. */
  readonly distanceBefore?: Metre
  /** By how much shaft and fixture close the gap when they warm by a kelvin, m/K. */
  readonly growthPerKelvin?: number
  readonly growthUncertainty?: number
}

/** Thresholds of the reduction. Defaults are in `core/reduce/defaults.ts`, each with its reason. */
export interface ReduceOptions {
  readonly segmentation: 'auto' | 'stepColumn' | 'plateaus' | 'ramp'
  readonly rampBinsPerDecade: number
  /** A speed has settled when it stays within this share of its target. */
  readonly settleTolerance: Ratio
  /** Torque that differs from zero by less than `floorFactor` times its uncertainty is under the floor. */
  readonly floorFactor: number
  readonly forceTolerance: Ratio
  readonly temperatureTolerance: Kelvin
  readonly forceRippleLimit: Ratio
  readonly frictionRippleLimit: Ratio
  /** Below this share of the commanded axial force the contact counts as lost. */
  readonly contactShare: Ratio
  /** Largest creep of the gap within one step, beyond what its noise explains. */
  readonly gapCreepLimit: Metre
  /** Share of friction that the bias of a partial turn, a zero or a drag may reach inside the believable window. */
  readonly biasLimit: Ratio
  /** Significance below which a trend or a stick-slip line counts as found. */
  readonly significance: Ratio
  /** Bootstrap draws behind the band of the curve. */
  readonly bandDraws: number
  readonly seed: number
}

/** Everything that has to be known beside the raw record. */
export interface Setup {
  readonly rig: RigSpec
  readonly fixture: FixtureSpec
  readonly pair: PairSpec
  readonly liquid?: LiquidSpec
  readonly run: RunSpec
  readonly worn?: WornSpec
  readonly options: Partial<ReduceOptions>
}
