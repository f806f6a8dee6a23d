import type { Radian, Ratio } from '../terms/index.ts'

/**
 * A plate that leans by `angle`; the fixture climbs it for half a turn and descends for the other half.
 * `tangent`: tan(atan µ + β cos θ), exact for a slope β cos θ in the sliding direction.
 * `cosine`: µ + tan β cos θ, its first order, whose mean over a turn is µ itself.
 * `carriers` contacts, evenly spread, share the load alike: from two on their first orders cancel, so one (the default
 * of whoever mounts crookedly) stands for the contact that carries most.
 */
export interface PlateTilt {
  readonly angle: Radian
  readonly phase: Radian
  readonly form: 'tangent' | 'cosine'
  readonly carriers: number
}

/** Friction as it reads at the fixture's angle. `direction` −1 when it turns backwards, where the slope changes sign. */
export function tiltedFriction(tilt: PlateTilt, at: { friction: Ratio; angle: Radian; direction: 1 | -1 }): Ratio {
  const share = (2 * Math.PI) / tilt.carriers
  let sum = 0
  for (let i = 0; i < tilt.carriers; i++) {
    const slope = at.direction * Math.cos(at.angle + tilt.phase + i * share)
    sum +=
      tilt.form === 'tangent'
        ? Math.tan(Math.atan(at.friction) + tilt.angle * slope)
        : at.friction + Math.tan(tilt.angle) * slope
  }
  return sum / tilt.carriers
}
