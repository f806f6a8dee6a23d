import { describe, expect, test } from 'vitest'
import { curveFamily } from '../../../src/core/curve/curveFamily.ts'
import { featureValues } from '../../../src/core/curve/curveFeature.ts'
import type { Reach } from '../../../src/core/curve/curveMember.ts'
import { leastFriction } from '../../../src/core/curve/leastFriction.ts'

const reach: Reach = { lnSlowest: Math.log(1e-4), lnFastest: 0, lnLeast: Math.log(0.01), lnMost: 0 }

describe('features from the formula of a curve', () => {
  test('Stribeck: level, regimes where the boundary share is 95 and 5 %, least friction', () => {
    const [k, n, h, x0, m] = [0.3, 0.5, 0.4, 4e-3, 1.7]
    const member = curveFamily.stribeck(reach)
    const parameters = Float64Array.of(Math.log(k), n, Math.log(h), Math.log(x0), m)
    const seen = featureValues(member, parameters, reach)
    expect(seen.boundaryLevel).toBeCloseTo(h, 12)
    const share = (x: number | null): number => 1 / (1 + ((x ?? Number.NaN) / x0) ** m)
    expect(share(seen.mixedBegins)).toBeCloseTo(0.95, 12)
    expect(share(seen.filmBegins)).toBeCloseTo(0.05, 12)
    // A search by brute force on the plain formula.
    const friction = (x: number): number => h * share(x) + k * x ** n * (1 - share(x))
    const speeds = Array.from({ length: 100_001 }, (_, i) => 1e-4 * 10 ** (4 * (i / 100_000)))
    const best = speeds.reduce((least, x) => (friction(x) < friction(least) ? x : least))
    expect(Math.abs((seen.minimumSpeed ?? Number.NaN) / best - 1)).toBeLessThan(1e-4)
    expect(Math.abs((seen.minimumFriction ?? Number.NaN) / friction(best) - 1)).toBeLessThan(1e-8)
    const slope = Math.log(friction(1.001) / friction(0.999)) / Math.log(1.001 / 0.999)
    expect(seen.filmSlope).toBeCloseTo(slope, 6)
  })

  test('exponential: the share e^(−v/x0) is 95 and 5 %', () => {
    const member = curveFamily.stribeckExponential(reach)
    const seen = featureValues(member, Float64Array.of(-2, -1, -3, Math.log(0.02)), reach)
    expect(Math.exp(-(seen.mixedBegins ?? Number.NaN) / 0.02)).toBeCloseTo(0.95, 12)
    expect(Math.exp(-(seen.filmBegins ?? Number.NaN) / 0.02)).toBeCloseTo(0.05, 12)
    expect(seen.boundaryLevel).toBeCloseTo(Math.exp(-1), 12)
  })

  test('a sloped boundary is told at the slowest speed', () => {
    const parameters = Float64Array.of(-2, 0.5, Math.log(0.3), Math.log(0.01), 2, 0.1)
    expect(featureValues(curveFamily.stribeckSloped(reach), parameters, reach).boundaryLevel).toBeCloseTo(0.3, 12)
  })

  test('a plateau has a level only, a power law a slope only', () => {
    const nothing = { minimumSpeed: null, minimumFriction: null, mixedBegins: null, filmBegins: null }
    expect(featureValues(curveFamily.plateau(reach), Float64Array.of(Math.log(0.2)), reach)).toEqual({
      ...nothing,
      boundaryLevel: expect.closeTo(0.2, 12),
      filmSlope: null,
    })
    expect(featureValues(curveFamily.powerLaw(reach), Float64Array.of(-1, -0.3), reach)).toEqual({
      ...nothing,
      boundaryLevel: null,
      filmSlope: expect.closeTo(-0.3, 9),
    })
  })
})

test.for([
  { name: 'falls throughout', n: -0.4, where: 'fastest' },
  { name: 'rises throughout', n: 0.4, where: 'slowest' },
] as const)('a curve that $name is least at the $where speed', ({ n, where }) => {
  expect(leastFriction(curveFamily.powerLaw(reach), Float64Array.of(-1, n), reach).where).toBe(where)
})
