import type { Metre } from '../terms/index.ts'
import { mustBePositive, mustNotBeNegative } from './refuse.ts'

/** Depth of the cap that a flat scar has taken off a ball, h = R − √(R² − d²/4), without the difference. */
export function capDepth(scarDiameter: Metre, radius: Metre): Metre {
  checkScar(scarDiameter, radius)
  const square = scarDiameter ** 2 / 4
  return square / (radius + Math.sqrt(Math.max(0, radius ** 2 - square)))
}

/** Volume of that cap in m³, V = (πh/6)(3d²/4 + h²). ASTM G99, §9 (exact form; from memory). */
export function capVolume(scarDiameter: Metre, radius: Metre): number {
  const depth = capDepth(scarDiameter, radius)
  return ((Math.PI * depth) / 6) * (0.75 * scarDiameter ** 2 + depth ** 2)
}

/** The same by V = πd⁴/(64R), good to 1 % up to d = 0.3 R. ASTM G99, §9 (approximate form; from memory). */
export function capVolumeApproximate(scarDiameter: Metre, radius: Metre): number {
  checkScar(scarDiameter, radius)
  return (Math.PI * scarDiameter ** 4) / (64 * radius)
}

/** Depth of a cap of a volume: V = πh²(R − h/3) solved for h. Up to half a ball. */
export function capDepthOfVolume(volume: number, radius: Metre): Metre {
  mustBePositive(radius, 'radius', 'm')
  mustNotBeNegative(volume, 'volume', 'm³')
  const scaled = volume / (Math.PI * radius ** 3)
  if (!(scaled <= 2 / 3)) {
    throw new RangeError(`volume must be at most half a ball of radius ${radius} m, got ${volume} m³`)
  }
  if (scaled === 0) return 0
  // Convex and rising up to the middle; the start lies below the root, so Newton falls to it from above after one step.
  let depth = Math.sqrt(scaled)
  for (let round = 0; round < 30; round++) {
    const step = (depth ** 2 * (1 - depth / 3) - scaled) / (depth * (2 - depth))
    depth = Math.min(1, depth - step)
    if (Math.abs(step) <= 1e-15 * depth) break
  }
  return depth * radius
}

/** Diameter of the flat that a cap of a depth leaves, d = 2√(h(2R − h)). */
export function scarDiameterOfDepth(depth: Metre, radius: Metre): Metre {
  mustBePositive(radius, 'radius', 'm')
  if (!(depth >= 0 && depth <= radius)) {
    throw new RangeError(`depth must be from 0 to the radius ${radius} m, got ${depth} m`)
  }
  return 2 * Math.sqrt(depth * (2 * radius - depth))
}

function checkScar(scarDiameter: Metre, radius: Metre): void {
  mustBePositive(radius, 'radius', 'm')
  if (!(scarDiameter >= 0 && scarDiameter <= 2 * radius)) {
    throw new RangeError(`scar must be no wider than the ball of radius ${radius} m, got ${scarDiameter} m`)
  }
}
