import type { Explained, Kelvin, Outcome, Pascal, PascalSecond } from '../../terms/index.ts'
import type { KnownValue, Seen } from '../knownValue.ts'
import type { Span } from '../span.ts'

/** How a liquid is sheared and pressed. */
export interface LiquidConditions {
  /** 1/s; may be left out where viscosity does not depend on it. */
  readonly shearRate?: number
  /** Pa above that of the air; 0 when left out. */
  readonly pressure?: Pascal
}

/** Viscosity at one temperature, rate and pressure. */
export interface LiquidViscosity extends Explained {
  readonly viscosity: PascalSecond
  /** Standard uncertainty; null where neither source nor user states one. */
  readonly viscosityUncertainty: PascalSecond | null
}

/** Density at the pressure of the air. */
export interface LiquidDensity extends Explained {
  /** kg/m³ */
  readonly density: number
}

/** A liquid that knows its limits: outside its table it refuses and says the range. */
export interface Liquid {
  readonly name: string
  readonly seen: Seen
  /** K */
  readonly temperature: Span
  /** Pa above that of the air. */
  readonly pressure: Span
  /** 1/s; null where viscosity does not depend on the rate. */
  readonly shearRate: Span | null
  /** d ln η/dp at the pressure of the air, 1/Pa, as film formulas want it; null where nothing is known. */
  readonly pressureCoefficient: KnownValue | null
  viscosity(temperature: Kelvin, conditions?: LiquidConditions): Outcome<LiquidViscosity>
  density(temperature: Kelvin): Outcome<LiquidDensity>
}
