import { describe, expect, test } from 'vitest'
import type { Curve } from '../../../src/core/terms/index.ts'
import { curveOf, featureOf, kinds, stribeck, sweep } from './sweep.ts'

describe('remarks', () => {
  test.for([
    { points: 0, model: null },
    { points: 2, model: null },
    { points: 3, model: 'plateau' },
  ])('$points points: not enough', ({ points, model }) => {
    const curve = curveOf(sweep(() => 0.3).slice(0, points))
    expect(curve.model).toBe(model)
    expect(kinds(curve)).toEqual(['notEnoughPoints'])
    expect(curve.remarks[0]).toMatchObject({ seen: points, limit: model === null ? 3 : 7 })
    expect(curve.points).toBe(points)
    if (model === null) expect(curve).toMatchObject({ end: null, features: [], band: [], choices: [] })
  })

  test('scatter between steps is found, sized and said', () => {
    const curve = curveOf(sweep(stribeck, { points: 24, own: 0.001, scatter: 0.01 }))
    expect(kinds(curve)).toContain('scatterBeyondOwn')
    expect(curve.extraScatter).toBeGreaterThan(0.006)
    expect(curve.extraScatter).toBeLessThan(0.014)
    expect(curve.chiSquared).toBeGreaterThan(10 * curve.degreesOfFreedom)
  })

  test('intervals grow with it', () => {
    const width = (curve: Curve): number => {
      const { low, high } = featureOf(curve, 'boundaryLevel')
      return Math.log((high ?? Number.NaN) / (low ?? Number.NaN))
    }
    const quiet = curveOf(sweep(stribeck, { points: 24, own: 0.001 }))
    const rough = curveOf(sweep(stribeck, { points: 24, own: 0.001, scatter: 0.01 }))
    expect(width(rough) / width(quiet)).toBeGreaterThan(4)
  })

  test('a parameter that the data do not hold lies at its bound and is named', () => {
    // A step between two speeds: any steepness beyond the bound fits as well.
    const curve = curveOf(sweep((v) => (v < 3e-3 ? 0.4 : 0.1), { points: 16, own: 0.005 }))
    expect(kinds(curve)).toContain('parameterAtBound')
    expect(curve.end).toMatchObject({ why: 'atBound', parameter: 'm', bound: 8 })
    const m = curve.parameters.find(({ name }) => name === 'm')
    expect(m).toMatchObject({ value: 8, high: null })
  })
})
