import type { Metre, Ratio } from '../../terms/index.ts'
import { mustNotBeNegative } from '../refuse.ts'

/**
 * Rq/Ra of ideal profiles, exact: √(π/2) for heights of Gaussian scatter, π/(2√2) for a sine. A lapped or polished face is
 * nearer to the first, a turned one to the second.
 */
export const roughnessRatios: Readonly<Record<'gaussian' | 'sine', Ratio>> = {
  gaussian: Math.sqrt(Math.PI / 2),
  sine: Math.PI / (2 * Math.SQRT2),
}

/** Root-mean-square roughness Rq (m) from the arithmetic mean Ra (m) of a profile of the named kind. */
export function rootMeanSquareRoughness(arithmetic: Metre, profile: keyof typeof roughnessRatios = 'gaussian'): Metre {
  mustNotBeNegative(arithmetic, 'roughness Ra', 'm')
  return arithmetic * roughnessRatios[profile]
}
