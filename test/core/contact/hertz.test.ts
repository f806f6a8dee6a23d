import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  contactStiffness,
  effectiveModulus,
  effectiveRadius,
  hertzApproach,
  hertzContact,
  hertzLoad,
  hertzMeanPressure,
  hertzPeakPressure,
  hertzRadius,
} from '../../../src/core/contact/index.ts'
import { elastomer, glass, near, steel } from './near.ts'

const flat = Number.POSITIVE_INFINITY
const gpa = (elasticModulus: number, poissonRatio: number) => ({ elasticModulus: elasticModulus * 1e9, poissonRatio })

describe('contacts of textbooks', () => {
  test.for([
    {
      name: 'two steel balls',
      source: 'Stachowiak & Batchelor, Engineering Tribology, ch. 7 (printed 5.799e-5, 709.9, 473.3, 5.6e-7)',
      radii: [0.01, 0.015],
      bodies: [steel, steel],
      load: 5,
      want: { a: 5.79889e-5, peak: 709.94e6, mean: 473.293e6, approach: 5.60452e-7 },
    },
    {
      name: 'steel ball on a flat',
      source: 'the same, next example (printed about 6.88e-5, 504–505 MPa)',
      radii: [0.01, flat],
      bodies: [steel, steel],
      load: 5,
      want: { a: 6.87534e-5, peak: 505.036e6, mean: 336.691e6, approach: 4.72704e-7 },
    },
    {
      name: 'steel ball on an aluminium ball',
      source: 'Shigley, Mechanical Engineering Design, ch. 3 (printed 0.0990 mm, 487.2 MPa)',
      radii: [0.0125, 0.02],
      bodies: [gpa(207, 0.292), gpa(71.7, 0.333)],
      load: 10,
      want: { a: 0.0990018e-3, peak: 487.141e6 },
    },
    {
      name: 'large steel ball on a flat',
      source: 'textbook exercise; figures recomputed',
      radii: [0.025, flat],
      bodies: [gpa(200, 0.3), gpa(200, 0.3)],
      load: 500,
      want: { a: 0.440221e-3, peak: 1.231883e9, approach: 7.75179e-6 },
    },
    {
      name: 'the same on an equal ball',
      source: 'textbook exercise; figures recomputed',
      radii: [0.025, 0.025],
      bodies: [gpa(200, 0.3), gpa(200, 0.3)],
      load: 500,
      want: { a: 0.349404e-3, peak: 1.955493e9, approach: 9.76664e-6 },
    },
    {
      name: 'steel ball on glass',
      source: 'computed independently',
      radii: [0.00635, flat],
      bodies: [steel, glass],
      load: 10,
      want: { a: 94.1971e-6, peak: 538.105e6, approach: 1.39734e-6 },
    },
    {
      name: 'steel ball on an elastomer',
      source: 'computed independently',
      radii: [0.00635, flat],
      bodies: [steel, elastomer],
      load: 1,
      want: { a: 1.213269e-3, peak: 0.32436e6, approach: 0.231814e-3 },
    },
  ] as const)('$name ($source)', ({ radii, bodies, load, want }) => {
    const sphere = {
      radius: effectiveRadius(radii[0], radii[1]),
      effectiveModulus: effectiveModulus(bodies[0], bodies[1]),
    }
    const contact = hertzContact(load, sphere)
    near(contact.contactRadius, want.a, 1e-5)
    near(contact.peakPressure, want.peak, 1e-5)
    if ('mean' in want && want.mean !== undefined) near(contact.meanPressure, want.mean, 1e-5)
    if ('approach' in want && want.approach !== undefined) near(contact.approach, want.approach, 1e-5)
  })

  test.for([
    [392, 0.29784, 0.29849],
    [147, 0.21478, 0.21525],
  ])(
    'four balls of 12.7 mm under %d N: scar %d mm (ASTM D2783, Hertz line 0.0873·∛kgf from memory)',
    ([load, want, line]) => {
      const perContact = load / (3 * Math.sqrt(2 / 3))
      const scar = 2000 * hertzRadius(perContact, effectiveRadius(0.00635, 0.00635), effectiveModulus(steel, steel))
      near(scar, want, 1e-4)
      near(scar, line, 3e-3)
      near(0.0873 * Math.cbrt(load / 9.80665), line, 1e-4)
    },
  )

  test('four balls of 12.7 mm under 392 N: 3.4454 GPa', () => {
    const peak = hertzPeakPressure(392 / (3 * Math.sqrt(2 / 3)), 0.003175, effectiveModulus(steel, steel))
    near(peak, 3.4454e9, 1e-4)
  })
})

describe('stiffness of a 12.7 mm ball under 5 N (common moduli of the trade; derived, printed digits)', () => {
  test.for([
    ['steel on steel', steel, steel, '13.6'],
    ['steel on glass of 70 GPa', steel, gpa(70, 0.22), '8.4'],
    ['steel on PMMA of 3 GPa and ν 0.37', steel, gpa(3, 0.37), '1.3'],
    ['glass on an elastomer of 2 MPa', glass, elastomer, '0.011'],
  ] as const)('%s: %s N/µm', ([, upper, lower, want]) => {
    const modulus = effectiveModulus(upper, lower)
    const stiffness = contactStiffness(hertzRadius(5, 0.00635, modulus), modulus) / 1e6
    expect(stiffness.toFixed((want.split('.')[1] ?? '').length)).toBe(want)
  })
})

describe('what always holds', () => {
  const load = fc.double({ min: 1e-4, max: 1e3, noNaN: true })
  const radius = fc.double({ min: 1e-4, max: 1, noNaN: true })
  const modulus = fc.double({ min: 1e4, max: 1e12, noNaN: true })

  test('eight times the load: radius and pressure twice, approach four times', () => {
    fc.assert(
      fc.property(load, radius, modulus, (f, r, e) => {
        near(hertzRadius(8 * f, r, e) / hertzRadius(f, r, e), 2, 1e-12)
        near(hertzPeakPressure(8 * f, r, e) / hertzPeakPressure(f, r, e), 2, 1e-12)
        near(hertzApproach(8 * f, r, e) / hertzApproach(f, r, e), 4, 1e-12)
      }),
    )
  })

  test('the pressures carry the load, and the approach gives it back', () => {
    fc.assert(
      fc.property(load, radius, modulus, (f, r, e) => {
        near(hertzMeanPressure(f, r, e) * Math.PI * hertzRadius(f, r, e) ** 2, f, 1e-12)
        near(hertzLoad(hertzApproach(f, r, e), r, e), f, 1e-12)
      }),
    )
  })

  test('stiffness is the slope of load over approach', () => {
    fc.assert(
      fc.property(load, radius, modulus, (f, r, e) => {
        const approach = hertzApproach(f, r, e)
        const step = approach * 1e-5
        const slope = (hertzLoad(approach + step, r, e) - hertzLoad(approach - step, r, e)) / (2 * step)
        near(contactStiffness(hertzRadius(f, r, e), e), slope, 1e-8)
      }),
    )
  })

  test('no load, no contact', () => {
    expect(hertzContact(0, { radius: 1, effectiveModulus: 1 })).toMatchObject({
      contactRadius: 0,
      peakPressure: 0,
      approach: 0,
      stiffness: 0,
      doubts: [],
    })
  })
})

describe('doubts', () => {
  const soft = { radius: 0.00635, effectiveModulus: effectiveModulus(steel, elastomer) }
  const hard = { radius: 0.00635, effectiveModulus: effectiveModulus(steel, glass) }
  const kinds = (contact: { readonly doubts: readonly { readonly kind: string }[] }) =>
    contact.doubts.map(({ kind }) => kind)

  test('a ball 0.19 of its radius wide in an elastomer is no small strain', () => {
    const [doubt] = hertzContact(1, soft).doubts
    expect(doubt).toMatchObject({ kind: 'largeStrain', limit: 0.1 })
    near(doubt.seen, 0.191, 2e-3)
    expect(doubt.sentence).toContain('0.19 of the radius')
    expect(kinds(hertzContact(0.1, soft))).toEqual([])
    expect(kinds(hertzContact(200, soft))).toEqual(['beyondLaw'])
  })

  test('a plate under ten contact radii feels its base', () => {
    expect(kinds(hertzContact(10, hard, { thickness: 1e-3 }))).toEqual([])
    expect(kinds(hertzContact(10, hard, { thickness: 0.9e-3 }))).toEqual(['baseFelt'])
  })

  test('roughness over a twentieth of the approach', () => {
    expect(kinds(hertzContact(10, hard, { roughness: 0.06e-6 }))).toEqual([])
    expect(kinds(hertzContact(10, hard, { roughness: 0.08e-6 }))).toEqual(['roughContact'])
  })

  test('yield, and adhesion where it widens the contact', () => {
    expect(kinds(hertzContact(10, hard, { yieldPressure: 600e6 }))).toEqual([])
    expect(kinds(hertzContact(10, hard, { yieldPressure: 500e6 }))).toEqual(['yields'])
    expect(kinds(hertzContact(0.1, soft, { workOfAdhesion: 0.044 }))).toEqual(['adhesionLeftOut'])
    expect(kinds(hertzContact(10, hard, { workOfAdhesion: 0.05 }))).toEqual([])
  })

  test('every result says law, source and validity', () => {
    const { law, source, valid } = hertzContact(1, hard)
    for (const words of [law, source, valid]) expect(words).not.toBe('')
  })
})

test.for([
  [() => hertzRadius(-1, 1, 1), /load must be zero or more and finite, got -1 N/],
  [() => hertzRadius(Number.NaN, 1, 1), /load/],
  [() => hertzRadius(1, 0, 1), /radius must be more than zero and finite, got 0 m/],
  [() => hertzPeakPressure(1, 1, Number.POSITIVE_INFINITY), /effective modulus/],
  [() => hertzLoad(-1e-6, 1, 1), /approach/],
  [() => contactStiffness(-1, 1), /contact radius/],
  [() => hertzContact(1, { radius: 1, effectiveModulus: 1 }, { thickness: 0 }), /thickness/],
  [() => hertzContact(1, { radius: 1, effectiveModulus: 1 }, { roughness: Number.NaN }), /roughness/],
  [() => hertzContact(1, { radius: 1, effectiveModulus: 1 }, { yieldPressure: -1 }), /yield pressure/],
] as const)('refused: %s', ([call, words]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(words)
})
