import { describe, expect, test } from 'vitest'
import {
  axisStress,
  effectiveModulus,
  effectiveRadius,
  hertzPeakPressure,
  largestShear,
} from '../../../src/core/contact/index.ts'
import { near } from './near.ts'

describe('largest shear below a Hertzian contact (Johnson 1985, §3.4; printed 0.31 at 0.48 for ν 0.3)', () => {
  test.for([
    [0, 0.38482, 0.38194, 1.2993],
    [0.2, 0.33365, 0.44781, 1.4986],
    [0.25, 0.32168, 0.46431, 1.5543],
    [0.3, 0.31002, 0.48086, 1.6128],
    [0.33, 0.30317, 0.49082, 1.6492],
    [0.4, 0.28761, 0.51417, 1.7385],
    [0.5, 0.26635, 0.54787, 1.8772],
  ])('ν %d: %d p₀ at %d a, first yield at %d Y', ([poissonRatio, shear, depth, yieldFactor]) => {
    const largest = largestShear(poissonRatio)
    near(largest.shear, shear, 1e-4)
    near(largest.depth, depth, 1e-4)
    near(0.5 / largest.shear, yieldFactor, 1e-4)
  })
})

test('steel ball on aluminium: 151.0 MPa at 0.0475 mm (Shigley, ch. 3, by the rounded 0.31 at 0.48 a)', () => {
  const bodies = [
    { elasticModulus: 207e9, poissonRatio: 0.292 },
    { elasticModulus: 71.7e9, poissonRatio: 0.333 },
  ] as const
  const peak = hertzPeakPressure(10, effectiveRadius(0.0125, 0.02), effectiveModulus(...bodies))
  near(0.31 * peak, 151.014e6, 1e-5)
  near(largestShear(0.3).shear * peak, 151.014e6, 1e-3)
  near(largestShear(0.3).depth * 0.0990018e-3, 0.04752e-3, 2e-3)
})

test('in the middle of the surface: σz = −p₀, σr = −(½ + ν)p₀ (Johnson 1985, eq. 3.42 and 3.43)', () => {
  for (const poissonRatio of [0, 0.3, 0.5]) {
    const { axial, radial } = axisStress(0, poissonRatio)
    near(axial, -1, 1e-15)
    near(radial, -(0.5 + poissonRatio), 1e-15)
  }
})

test('far below, the stress is that of a point load: σz → −1/ζ² (Boussinesq)', () => {
  near(axisStress(1e3, 0.3).axial, -1e-6, 1e-5)
})

test.for([0.51, -0.01, Number.NaN])('largest shear refuses ν %d', (poissonRatio) => {
  expect(() => largestShear(poissonRatio)).toThrow(RangeError)
})

test.for([-1, Number.NaN, Number.POSITIVE_INFINITY])('depth %d is refused', (depth) => {
  expect(() => axisStress(depth, 0.3)).toThrow(RangeError)
})
