import type { RigSpec } from '../terms/index.ts'
import type { Ask, Deciding, ExpectedFriction, ExpectedNoise } from './question.ts'

// What a plan assumes until somebody says otherwise; the faces show these as defaults. Common practice, no source,
// unless one stands beside a value.

/** Boundary friction of what nobody has measured yet: between a good soap and dry metal. A factor of two to either side. */
export const expectedDefaults: ExpectedFriction = { boundary: 0.2, boundarySpread: 2, film: 0.05, filmSpread: 2 }

/** Limits of time, distance and wear. `slowest`, `fastest` and the loads follow from the rig where they are not given. */
export const askDefaults: Omit<Ask, 'slowest' | 'fastest' | 'leastForce' | 'mostForce'> = {
  uncertainty: 0.05,
  perDecade: 10,
  direction: 'upAndDown',
  turns: 1,
  leastDwell: 5,
  mostDwell: 120,
  mostTime: 3600,
  mostDistance: 100,
  conditioningDistance: 2,
  // Bückle's rule.
  indentationShare: 0.1,
  scarShare: 1,
}

/** Margin of practical difference 10 %; scatter of sweeps with fresh surfaces 3 to 10 %, of elastomers more. */
export const decidingDefaults: Omit<Deciding, 'samples'> = {
  difference: 0.1,
  repeatability: 0.08,
  repeatabilityFrom: 'assumed',
  margin: 0.1,
  power: 0.8,
  significance: 0.05,
  runsPerDay: 8,
  seed: 1,
}

/** Ten standard uncertainties make the smallest torque or force that is trusted (limit of quantification; Currie 1968, from memory). */
const trusted = 10

/** A tilt that nobody has measured: 0.1 to 0.3° was inferred for a plate of one rheometer (Rodrigues 2025, arXiv 2502.20967). */
export const assumedTilt = (0.2 * Math.PI) / 180

/** Noise as given, the rest out of the rig's limits: a tenth of the smallest trusted value; 0 where no such limit was given. */
export function noiseOf(rig: RigSpec, given: Partial<ExpectedNoise>): ExpectedNoise {
  const torque = (rig.torque.floor ?? 0) / trusted
  const force = (rig.axialForce.floor ?? 0) / trusted
  return {
    torque: given.torque ?? torque,
    axialForce: given.axialForce ?? force,
    correlationTime: given.correlationTime ?? 1,
    torqueZero: given.torqueZero ?? torque,
    forceZero: given.forceZero ?? force,
    tilt: given.tilt ?? assumedTilt,
  }
}
