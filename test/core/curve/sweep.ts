import { type CurvePoint, fitCurve } from '../../../src/core/curve/index.ts'
import { randomFrom } from '../../../src/core/numeric/index.ts'
import type { Curve, Feature } from '../../../src/core/terms/index.ts'

/** How points are made. */
export interface Sweep {
  readonly points?: number
  readonly own?: number
  readonly scatter?: number
  readonly seed?: number
  readonly from?: number
  readonly to?: number
}

/** Friction at a speed. */
export type Law = (v: number) => number

/** Points on a law with noise as their own uncertainty says, and scatter beyond it. */
export function sweep(
  law: Law,
  { points = 16, own = 0.002, scatter = 0, seed = 1, from = 1e-4, to = 0.1 }: Sweep = {},
): CurvePoint[] {
  const random = randomFrom(seed)
  return Array.from({ length: points }, (_, i) => {
    const slidingSpeed = from * (to / from) ** (i / (points - 1))
    const friction = law(slidingSpeed) * Math.exp(own * random.normal() + scatter * random.normal())
    return { slidingSpeed, friction, ownUncertainty: own * friction, degreesOfFreedom: 50 }
  })
}

/** A curve with boundary level 0.4 (sloped where l is not zero), x0 = 2 mm/s, m = 2 and a film 0.5 v^0.5. */
export const stribeck = (v: number, l = 0): number => {
  const share = 1 / (1 + (v / 2e-3) ** 2)
  return 0.4 * v ** l * share + 0.5 * v ** 0.5 * (1 - share)
}

/** The fit, with few draws. */
export const curveOf = (points: readonly CurvePoint[]): Curve => fitCurve(points, { seed: 1, draws: 100 })

/** One feature of a curve. */
export const featureOf = ({ features }: Curve, name: Feature['name']): Feature => {
  const found = features.find((feature) => feature.name === name)
  if (found === undefined) throw new Error(`no feature ${name}`)
  return found
}

/** Kinds of its remarks. */
export const kinds = ({ remarks }: Curve): string[] => remarks.map(({ kind }) => kind)
