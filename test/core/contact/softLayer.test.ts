import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bondedAsPublished,
  bondedCorrected,
  bondedOfPoisson,
  hertzApproach,
  hertzRadius,
  layerTable,
  seriesStiffening,
  softLayerContact,
  unbondedAsPublished,
} from '../../../src/core/contact/index.ts'
import { layerCompliance, layerKernel } from '../../../src/core/contact/layerKernel.ts'
import { pressedLayer } from '../../../src/core/contact/pressedLayer.ts'
import { near } from './near.ts'

const rubber = layerTable(0.5, 'bonded')
const plastic = layerTable(0.3, 'bonded')
const sliding = layerTable(0.5, 'sliding')
const kinds = (contact: { readonly doubts: readonly { readonly kind: string }[] }) =>
  contact.doubts.map(({ kind }) => kind)

describe('exact bonded layer (solved independently in another language to 6 digits; no published table)', () => {
  const cases: [table: typeof rubber, chi: number, want: number][] = [
    ...(
      [
        [0.05, 1.0602],
        [0.1, 1.1291],
        [0.2, 1.2979],
        [0.3, 1.5182],
        [0.4, 1.8014],
        [0.5, 2.1562],
        [0.6, 2.5878],
        [0.8, 3.6884],
        [1, 5.1154],
      ] as const
    ).map(([chi, want]) => [rubber, chi, want] as [typeof rubber, number, number]),
    ...(
      [
        [0.1, 1.0972],
        [0.2, 1.2156],
        [0.3, 1.358],
        [0.4, 1.5255],
        [0.5, 1.717],
        [0.6, 1.9298],
        [0.8, 2.4038],
        [1, 2.9197],
      ] as const
    ).map(([chi, want]) => [plastic, chi, want] as [typeof rubber, number, number]),
  ]
  test.for(cases)('%o at χ %d: %d', ([table, chi, want]) => near(table.stiffening(chi), want, 1e-3))
})

describe('known limits of the solver', () => {
  /** Coefficient of χ: ∫K at the middle of a small contact (derived). */
  const first = (poissonRatio: number, hold: 'bonded' | 'sliding') =>
    layerKernel(poissonRatio, hold).strengths.reduce((sum, strength) => sum + strength, 0)

  test('to second order in χ the factor is 1 + c₁χ + (7/6)c₁²χ² (derived)', () => {
    for (const poissonRatio of [0, 0.3, 0.5]) {
      const linear = first(poissonRatio, 'bonded')
      const { chi, stiffening } = pressedLayer(1e-3, layerKernel(poissonRatio, 'bonded'))
      near((stiffening - 1) / chi, linear + (7 / 6) * linear ** 2 * chi, 1e-5)
    }
  })

  test('first coefficient of a sliding layer: 0.743 whatever ν (computed independently)', () => {
    for (const poissonRatio of [0.2, 0.5]) expect(first(poissonRatio, 'sliding').toFixed(3)).toBe('0.743')
  })

  test('the published first coefficient of a bonded layer is a fit: within 1 % from ν 0.3, 6 % off at ν 0', () => {
    for (const poissonRatio of [0.3, 0.4, 0.5])
      near(bondedOfPoisson(poissonRatio)[0], first(poissonRatio, 'bonded'), 0.01)
    expect(bondedOfPoisson(0)[0] / first(0, 'bonded') - 1).toBeCloseTo(0.06, 2)
  })

  test('a thin bonded layer becomes a bed of columns with the modulus of suppressed side strain', () => {
    // F = πRMδ²/h with M = E(1 − ν)/((1 + ν)(1 − 2ν)), so F/F_Hertz = (3π/4)(M/E')χ; the edge adds a share that dies out.
    const poissonRatio = 0.2
    const ratio = ((1 - poissonRatio) * (1 - poissonRatio ** 2)) / ((1 + poissonRatio) * (1 - 2 * poissonRatio))
    const column = (radius: number) => {
      const { chi, stiffening } = pressedLayer(radius, layerKernel(poissonRatio, 'bonded'))
      return stiffening / ((3 * Math.PI * ratio * chi) / 4)
    }
    near(column(8), 1, 0.02)
    expect(Math.abs(column(8) - 1)).toBeLessThan(Math.abs(column(2) - 1))
  })

  test('more places in the contact change nothing', () => {
    for (const radius of [0.1, 1, 4, 8]) {
      const kernel = layerKernel(0.5, 'bonded')
      const seen = pressedLayer(radius, kernel)
      near(seen.stiffening, pressedLayer(radius, kernel, 72).stiffening, 1e-5)
      near(seen.chi, pressedLayer(radius, kernel, 72).chi, 1e-5)
    }
  })

  test('the kernel falls from 1 to nothing without a jump where its forms change', () => {
    for (const hold of ['bonded', 'sliding'] as const) {
      near(layerCompliance(0, 0.3, hold), 1, 1e-12)
      near(layerCompliance(0.99999e-4, 0.3, hold), layerCompliance(1.00001e-4, 0.3, hold), 1e-8)
      expect(layerCompliance(16, 0.3, hold)).toBeLessThan(1e-10)
    }
  })
})

test('published series against the exact answer: low and high by what the room says', () => {
  const off = (chi: number, series: typeof bondedAsPublished, table: typeof rubber) =>
    100 * (seriesStiffening(chi, series) / table.stiffening(chi) - 1)
  const published = [0.2, 0.3, 0.4, 0.5, 1].map((chi) => off(chi, bondedAsPublished, rubber))
  for (const [i, want] of [-1.1, -2.7, -5.1, -7.7, -16].entries())
    expect(Math.abs(published[i] - want)).toBeLessThan(0.35)
  for (const chi of [0.1, 0.2, 0.3, 0.4]) expect(Math.abs(off(chi, bondedCorrected, rubber))).toBeLessThan(0.3)
  expect(off(0.5, bondedCorrected, rubber)).toBeCloseTo(0.7, 1)
  expect(off(0.6, bondedCorrected, rubber)).toBeCloseTo(1.8, 1)
  const unbonded = [0.1, 0.3, 0.5, 0.7].map((chi) => off(chi, unbondedAsPublished, sliding))
  for (const [i, want] of [1.4, 4.4, 7.6, 11.9].entries()) expect(unbonded[i]).toBeCloseTo(want, 1)
})

test('the table keeps to the solver between its knots, and carries on sensibly beyond them', () => {
  const kernel = layerKernel(0.5, 'bonded')
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 8, noNaN: true }), (radius) => {
      const { chi, stiffening } = pressedLayer(radius, kernel)
      near(rubber.stiffening(chi), stiffening, 2e-4)
      near(rubber.widening(chi) * chi, radius, 2e-4)
    }),
    { numRuns: 40 },
  )
  near(rubber.stiffening(rubber.solvedTo * 1.0001), rubber.stiffening(rubber.solvedTo), 1e-3)
  // Far beyond, a compressible layer is the bed of columns of above.
  const columns = (0.7 * 0.91) / (1.3 * 0.4)
  near(plastic.stiffening(30), (3 * Math.PI * columns * 30) / 4, 0.05)
  expect(rubber.stiffening(0)).toBe(1)
  expect(() => rubber.stiffening(Number.NaN)).toThrow(RangeError)
})

describe('explained', () => {
  const thick = { ballRadius: 0.00635, thickness: 0.1, elasticModulus: 2e6, table: rubber }
  const thin = { ...thick, thickness: 0.002 }

  test('0.510285 N press a ball of 6.35 mm 0.1 mm deep into 2 mm of 2 MPa (corrected series), as published deeper', () => {
    const contact = softLayerContact(0.510285, thin)
    near(contact.approach, 1e-4, 1e-4)
    expect(contact.law).toContain('corrected')
    const [published, exact] = contact.others
    expect(published.approach).toBeGreaterThan(contact.approach)
    near(exact.approach, contact.approach, 3e-3)
    expect(kinds(contact)).toEqual(['largeStrain', 'lawsDiffer'])
  })

  test('a thick layer answers as Hertz', () => {
    const contact = softLayerContact(0.01, thick)
    near(contact.approach, hertzApproach(0.01, 0.00635, 2e6 / 0.75), 0.01)
    near(contact.contactRadius, hertzRadius(0.01, 0.00635, 2e6 / 0.75), 0.01)
  })

  test('another ν and a layer that slides are answered by the exact solution', () => {
    expect(softLayerContact(0.1, { ...thin, table: plastic })).toMatchObject({ others: [] })
    const loose = softLayerContact(0.1, { ...thin, table: sliding })
    expect(loose.law).toContain('exact')
    expect(loose.others).toHaveLength(1)
    expect(loose.approach).toBeGreaterThan(softLayerContact(0.1, thin).approach)
  })

  test('beyond χ 0.5 the exact solution takes over', () => {
    const contact = softLayerContact(3, thin)
    expect(contact.chi).toBeGreaterThan(0.5)
    expect(contact.law).toContain('exact')
    expect(contact.others.map(({ law }) => law)[0]).toContain('corrected')
  })

  test('forwards and back: the stiffening carries the load, and stiffness is the slope', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 5, noNaN: true }), (load) => {
        const contact = softLayerContact(load, { ...thin, table: plastic })
        const modulus = 2e6 / 0.91
        const carried = (4 / 3) * modulus * Math.sqrt(0.00635) * contact.approach ** 1.5 * contact.stiffening
        near(carried, load, 1e-9)
        const more = softLayerContact(load * 1.001, { ...thin, table: plastic })
        near((load * 0.001) / (more.approach - contact.approach), contact.stiffness, 2e-3)
        expect(more.approach).toBeGreaterThan(contact.approach)
      }),
      { numRuns: 40 },
    )
  })

  test('a ball or base that gives way, and a layer too thin for the table', () => {
    expect(kinds(softLayerContact(0.001, { ...thick, ballModulus: 100e6 }))).toEqual(['softIndenter'])
    expect(kinds(softLayerContact(0.001, { ...thick, baseModulus: 70e9, ballModulus: 210e9 }))).toEqual([])
    expect(kinds(softLayerContact(10, { ...thick, thickness: 1e-5, table: plastic }))).toContain('beyondLaw')
  })

  test.for([
    [() => softLayerContact(0, thin), /load/],
    [() => softLayerContact(Number.NaN, thin), /load/],
    [() => softLayerContact(1, { ...thin, thickness: 0 }), /thickness/],
    [() => softLayerContact(1, { ...thin, ballModulus: -1 }), /modulus/],
    [() => layerTable(0.7, 'bonded'), /Poisson/],
    [() => pressedLayer(9, layerKernel(0.5, 'bonded')), /at most 8/],
  ] as const)('refused: %s', ([call, words]) => {
    expect(call).toThrow(RangeError)
    expect(call).toThrow(words)
  })
})
