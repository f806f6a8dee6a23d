import type { FlowLawName, FlowParameters, Span } from '../material/index.ts'
import type {
  FixtureSpec,
  LiquidSpec,
  Metre,
  MetrePerSecond,
  Newton,
  NewtonMetre,
  PairSpec,
  Pascal,
  Ratio,
  RigSpec,
  RunSpec,
  Second,
} from '../terms/index.ts'

/** What a body bears beside its elastic numbers. What is not given is not judged. */
export interface BodyBears {
  /** In simple tension. */
  readonly yieldStrength?: Pascal
  /** In bending, of what cracks before it yields. */
  readonly flexuralStrength?: Pascal
  /** Worn volume per load and distance, m³/(N·m). */
  readonly wearRate?: number
  /** Of the whole plate below a coating or layer. */
  readonly plateThickness?: Metre
}

/** Friction as somebody expects it before the test; each is right within a factor of its spread. */
export interface ExpectedFriction {
  /** While the surfaces touch, or dry. */
  readonly boundary: Ratio
  readonly boundarySpread: Ratio
  /** Of a full film between hard bodies; soft ones have a law of their own. */
  readonly film: Ratio
  readonly filmSpread: Ratio
}

/** What the rig and its sensors add, beyond the data sheet's limits. */
export interface ExpectedNoise {
  /** Standard deviation of one torque reading. */
  readonly torque: NewtonMetre
  /** Standard deviation of one force reading. */
  readonly axialForce: Newton
  /** Integrated autocorrelation time of the readings: so much of a step is worth one independent reading. */
  readonly correlationTime: Second
  /** Standard uncertainty of the torque that is left after the blank. */
  readonly torqueZero: NewtonMetre
  /** Standard uncertainty of the zero of the axial force. */
  readonly forceZero: Newton
  /** Tilt of the plate that a partial turn would let through, rad. */
  readonly tilt: number
}

/**
 * What kind of answer is wanted. `rank` an order of samples · `limit` friction kept under or over a value · `regimes` where
 * boundary, mixed and film friction begin · `feel` a difference that hand or mouth notices · `last` how far it slides until worn.
 */
export const askKinds = ['rank', 'limit', 'regimes', 'feel', 'last'] as const

/** Name of one such kind. */
export type AskKind = (typeof askKinds)[number]

/** What a person wants to know and is ready to spend. */
export interface Ask {
  /** `rank` where nothing is said. */
  readonly kind?: AskKind
  /** Of the kind `limit`: the friction that must be kept, and on which side of it. */
  readonly frictionLimit?: Ratio
  readonly limitSide?: 'atMost' | 'atLeast'
  readonly slowest: MetrePerSecond
  readonly fastest: MetrePerSecond
  /** Loads that come into question; those that the rig can hold where nothing is said. */
  readonly leastForce: Newton
  readonly mostForce: Newton
  /** The load, where it is already decided. */
  readonly axialForce?: Newton
  /** Relative standard uncertainty that one point may have. */
  readonly uncertainty: Ratio
  readonly perDecade: number
  readonly direction: 'up' | 'down' | 'upAndDown'
  readonly turns: number
  readonly leastDwell: Second
  readonly mostDwell: Second
  /** For all steps of one record. */
  readonly mostTime: Second
  /** That one record may slide. */
  readonly mostDistance: Metre
  readonly conditioningDistance: Metre
  /** Peak pressure that use sets, beside what the bodies bear. */
  readonly mostPressure?: Pascal
  /** Moment that the rig's shaft bears sideways; its manual knows. */
  readonly mostTiltingMoment?: NewtonMetre
  /** Share of a coating or layer into which the contact may sink. */
  readonly indentationShare: Ratio
  /** Width that a worn scar may have over that of the elastic contact. */
  readonly scarShare: Ratio
  readonly staticDwell?: Second
}

/** What is to be decided between samples. */
export interface Deciding {
  readonly samples: readonly string[]
  /** Smallest difference worth knowing, a share of friction. */
  readonly difference: Ratio
  /** Standard deviation between true replicates, a share of friction. */
  readonly repeatability: Ratio
  /** Whether that was measured on this rig and pair or taken over. */
  readonly repeatabilityFrom: 'measured' | 'assumed'
  readonly margin: Ratio
  readonly power: Ratio
  readonly significance: Ratio
  readonly runsPerDay: number
  readonly checkStandard?: string
  readonly seed: number
}

/** How the viscosity of the liquid hangs on its shear rate, at the temperature of the run. */
export interface QuestionFlow {
  readonly law: FlowLawName
  readonly parameters: FlowParameters
  /** Rates that were measured, 1/s. */
  readonly shearRate: Span
  readonly source: string
}

/** What warms up by friction: conductivity (W/(m·K)), density (kg/m³) and specific heat (J/(kg·K)). */
export interface BodyHeat {
  readonly conductivity: number
  readonly density: number
  readonly heatCapacity: number
}

/** A question before the test: what is mounted, what is wanted, what may be spent. SI throughout. */
export interface PlanQuestion {
  readonly title: string
  readonly rig: RigSpec
  readonly fixture: FixtureSpec
  readonly pair: PairSpec
  readonly liquid?: LiquidSpec
  /** 1/Pa; 0 for a liquid that pressure does not thicken. */
  readonly pressureViscosity?: number
  /** For a liquid that thins or thickens with shear; goes before `liquid.viscosity` wherever a film is worked out. */
  readonly flow?: QuestionFlow
  /** Left out where nobody knows; the built-in table is then asked by name. */
  readonly heat?: { readonly upper?: BodyHeat; readonly lower?: BodyHeat }
  readonly run: RunSpec
  readonly bears: { readonly upper: BodyBears; readonly lower: BodyBears }
  readonly expected: ExpectedFriction
  readonly noise: Partial<ExpectedNoise>
  readonly ask: Ask
  readonly deciding: Deciding
}
