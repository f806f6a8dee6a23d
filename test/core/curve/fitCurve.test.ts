import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type CurvePoint, fitCurve } from '../../../src/core/curve/index.ts'
import { curveOf, featureOf, stribeck, sweep } from './sweep.ts'

describe('the member is found', () => {
  test.for([
    { model: 'plateau', law: () => 0.3 },
    { model: 'powerLaw', law: (v: number) => 0.2 * v ** -0.1 },
    { model: 'stribeck', law: (v: number) => stribeck(v) },
    { model: 'stribeckSloped', law: (v: number) => stribeck(v, 0.1) },
    { model: 'stribeckExponential', law: (v: number) => 0.1 + 0.3 * Math.exp(-v / 5e-3) + 0.5 * v },
  ] as const)('$model', ({ model, law }) => {
    const curve = curveOf(sweep(law, { points: 24 }))
    expect(curve.model).toBe(model)
    expect(curve.end?.why).toBe('converged')
    expect(curve.remarks).toEqual([])
    expect(curve.choices[0].model).toBe(model)
    expect(curve.choices[0].delta).toBe(0)
    expect(curve.choices.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9)
  })

  test('exact points give the parameters back', () => {
    const { parameters, end } = curveOf(
      sweep(stribeck, { own: 0 }).map((point) => ({ ...point, ownUncertainty: 1e-4 })),
    )
    expect(end?.why).toBe('converged')
    const found = Object.fromEntries(parameters.map(({ name, value }) => [name, value]))
    for (const [name, want] of Object.entries({ k: 0.5, n: 0.5, h: 0.4, x0: 2e-3, m: 2 })) {
      expect(Math.abs(found[name] / want - 1)).toBeLessThan(1e-6)
    }
  })

  test('correlations over 0.9 are listed', () => {
    const { correlations } = curveOf(sweep(stribeck))
    expect(correlations).toContainEqual({ first: 'k', second: 'n', value: expect.closeTo(1, 1) })
    for (const { value } of correlations) expect(Math.abs(value)).toBeGreaterThan(0.9)
  })
})

describe('features', () => {
  test('of a whole Stribeck curve all have intervals that hold the truth', () => {
    const curve = curveOf(sweep(stribeck, { points: 20 }))
    const truth = { boundaryLevel: 0.4, mixedBegins: 2e-3 / Math.sqrt(19), filmBegins: 2e-3 * Math.sqrt(19) }
    for (const [name, want] of Object.entries(truth)) {
      const { low, high } = featureOf(curve, name as keyof typeof truth) // a key of truth
      expect(low).toBeLessThan(want)
      expect(high).toBeGreaterThan(want)
    }
  })

  test.for([
    { what: 'certainly beyond the data', to: 4e-3, own: 0.002, from: 4e-3 },
    { what: 'perhaps inside', to: 7e-3, own: 0.03, from: 1e-3 },
  ])('a falling curve has no minimum in the range, but $what', ({ to, own, from }) => {
    const curve = curveOf(sweep(stribeck, { points: 20, to, own, seed: 3 }))
    const { value, low, high, why } = featureOf(curve, 'minimumSpeed')
    expect(value).toBeNull()
    expect(why).toContain('no minimum in the range')
    expect(low).toBeGreaterThan(0.999 * from)
    expect(low).toBeLessThan(1.001 * to)
    expect(high).toBeNull()
    expect(featureOf(curve, 'minimumFriction').value).toBeNull()
  })

  test('a film that is not reached is not told', () => {
    const curve = curveOf(sweep((v) => 0.1 + 0.3 * Math.exp(-v / 0.05), { points: 20, to: 0.02 }))
    expect(featureOf(curve, 'filmSlope')).toMatchObject({ value: null, low: null, high: null })
    expect(featureOf(curve, 'filmSlope').why).toContain('not reached')
  })

  test('a plateau has a level and nothing else', () => {
    const curve = curveOf(sweep(() => 0.3))
    expect(curve.features.filter(({ value }) => value !== null).map(({ name }) => name)).toEqual(['boundaryLevel'])
    expect(featureOf(curve, 'mixedBegins').why).toContain('a plateau has no regimes')
    expect(featureOf(curve, 'minimumSpeed').why).toContain('no minimum in the range')
  })

  test('another axis carries its own unit', () => {
    const curve = fitCurve(sweep(stribeck), { seed: 1, draws: 100, speedUnit: '1/m' })
    expect(featureOf(curve, 'filmBegins').unit).toBe('1/m')
  })
})

describe('one speed, equal speeds, no uncertainty', () => {
  test('at one speed only a plateau is fitted', () => {
    const points = sweep(() => 0.3, { points: 8 }).map((point) => ({ ...point, slidingSpeed: 0.01 }))
    const curve = curveOf(points)
    expect(curve.model).toBe('plateau')
    expect(curve.band).toHaveLength(1)
  })

  test('own uncertainty zero: the scatter of the steps is all there is', () => {
    const points = sweep(stribeck, { points: 20, own: 0.01 }).map((point) => ({ ...point, ownUncertainty: 0 }))
    const curve = curveOf(points)
    expect(curve.model).toBe('stribeck')
    expect(curve.extraScatter).toBeGreaterThan(0.006)
    expect(curve.extraScatter).toBeLessThan(0.014)
  })
})

describe('what must always hold', () => {
  const noise = fc.record({
    points: fc.integer({ min: 8, max: 20 }),
    own: fc.double({ min: 0.001, max: 0.03, noNaN: true }),
    seed: fc.integer({ min: 0, max: 1e6 }),
  })
  const few = { numRuns: 12 }

  test('ends lie around their values, the band around the curve', () => {
    fc.assert(
      fc.property(noise, (how) => {
        const curve = curveOf(sweep(stribeck, how))
        for (const { value, low, high } of [...curve.features, ...curve.parameters]) {
          if (value === null) continue
          expect(low ?? value).toBeLessThanOrEqual(value)
          expect(high ?? value).toBeGreaterThanOrEqual(value)
        }
        for (const { friction, low, high } of curve.band) {
          expect(low).toBeLessThanOrEqual(friction)
          expect(high).toBeGreaterThanOrEqual(friction)
        }
      }),
      few,
    )
  })

  test('the order of points does not matter', () => {
    fc.assert(
      fc.property(noise, (how) => {
        const points = sweep(stribeck, how)
        expect(curveOf([...points].reverse())).toEqual(curveOf(points))
      }),
      few,
    )
  })

  test('c times the friction: c times the levels; c times the speeds: c times the speeds of features', () => {
    const near = (got: number | null, want: number | null): void => {
      if (got === null || want === null) expect(got).toBe(want)
      else expect(Math.abs(got / want - 1)).toBeLessThan(2e-3)
    }
    fc.assert(
      fc.property(noise, (how) => {
        const points = sweep(stribeck, how)
        const plain = curveOf(points)
        const rough = curveOf(
          points.map((p) => ({ ...p, friction: 3 * p.friction, ownUncertainty: 3 * p.ownUncertainty })),
        )
        const fast = curveOf(points.map((p) => ({ ...p, slidingSpeed: 1000 * p.slidingSpeed })))
        expect([rough.model, fast.model]).toEqual([plain.model, plain.model])
        for (const name of ['boundaryLevel', 'minimumFriction'] as const) {
          near(featureOf(rough, name).value, 3 * (featureOf(plain, name).value ?? Number.NaN))
          near(featureOf(fast, name).value, featureOf(plain, name).value)
        }
        for (const name of ['mixedBegins', 'filmBegins'] as const) {
          near(featureOf(rough, name).high, featureOf(plain, name).high)
          near(featureOf(fast, name).value, 1000 * (featureOf(plain, name).value ?? Number.NaN))
        }
      }),
      few,
    )
  })
})

const point: CurvePoint = { slidingSpeed: 1, friction: 0.1, ownUncertainty: 0.01, degreesOfFreedom: 9 }
test.for([
  { says: 'slidingSpeed of point 3', bad: { slidingSpeed: 0 } },
  { says: 'friction of point 3', bad: { friction: Number.NaN } },
  { says: 'friction of point 3', bad: { friction: -0.1 } },
  { says: 'ownUncertainty of point 3', bad: { ownUncertainty: Number.NaN } },
  { says: 'degreesOfFreedom of point 3', bad: { degreesOfFreedom: 0 } },
])('refuses $bad', ({ says, bad }) => {
  expect(() => curveOf([point, point, point, { ...point, ...bad }])).toThrow(says)
})

test.for([
  { draws: 10, says: 'draws' },
  { bandSpeeds: 1, says: 'bandSpeeds' },
])('refuses $says', ({ says, ...options }) => {
  expect(() => fitCurve([], { seed: 1, ...options })).toThrow(says)
})
