import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  adhesionScale,
  adhesiveContact,
  dmtApproach,
  dmtPullOff,
  dmtRadius,
  effectiveModulus,
  hertzRadius,
  jkrApproach,
  jkrPullOff,
  jkrRadius,
  maugisContact,
  maugisParameter,
  maugisPullOff,
  type StickySphere,
  taborParameter,
} from '../../../src/core/contact/index.ts'
import { integrate } from '../../../src/core/numeric/index.ts'
import { near, steel } from './near.ts'

/** All three units of `adhesionScale` are 1. */
const unit: StickySphere = { radius: 1, effectiveModulus: 0.75, workOfAdhesion: 1 / Math.PI }
const elastomer: StickySphere = { radius: 0.01, effectiveModulus: 2e6 / 0.75, workOfAdhesion: 0.044 }
const kinds = (contact: { readonly doubts: readonly { readonly kind: string }[] }) =>
  contact.doubts.map(({ kind }) => kind)

test('the scaled sphere has unit scales', () => {
  const { load, radius, approach } = adhesionScale(unit)
  near(load, 1, 1e-15)
  near(radius, 1, 1e-15)
  near(approach, 1, 1e-15)
})

describe('scaled JKR contact (Johnson, Kendall & Roberts 1971; from memory, recomputed independently)', () => {
  test.for([
    [-1.5, 1.144714, -0.43679],
    [-1, 1.551134, 0.372212],
    [0, 1.817121, 1.100642],
    [1, 1.989359, 1.654299],
    [10, 2.772287, 4.966612],
    [100, 5.035454, 21.691387],
  ])('load %d: radius %d, approach %d', ([load, radius, approach]) => {
    near(jkrRadius(load, unit), radius, 1e-6)
    near(jkrApproach(jkrRadius(load, unit), unit), approach, 1e-6)
  })
})

test.for([
  [0, 1.259921],
  [1, 1.44225],
  [10, 2.289428],
])('scaled DMT contact, load %d: radius %d (Derjaguin, Muller & Toporov 1975; recomputed)', ([load, radius]) => {
  near(dmtRadius(load, unit), radius, 1e-6)
  near(dmtApproach(radius, unit), radius ** 2, 1e-12)
})

test('pull-off 1.5πwR and 2πwR; the radius falls to 4^(−1/3) of that without load before it parts (exact)', () => {
  near(jkrPullOff(elastomer), 1.5 * Math.PI * 0.044 * 0.01, 1e-9)
  near(dmtPullOff(elastomer), 2 * Math.PI * 0.044 * 0.01, 1e-9)
  near(dmtPullOff(elastomer) / jkrPullOff(elastomer), 4 / 3, 1e-12)
  near(jkrRadius(-jkrPullOff(elastomer), elastomer) / jkrRadius(0, elastomer), 4 ** (-1 / 3), 1e-9)
})

describe('rigid ball of 10 mm on 2 MPa, 44 mJ/m² (computed independently)', () => {
  test('pull-off', () => {
    near(jkrPullOff(elastomer), 2.073451e-3, 1e-5)
    near(dmtPullOff(elastomer), 2.764602e-3, 1e-5)
  })
  test.for([
    [0, 0.285725e-3, 2.7213e-6, 0],
    [0.1, 0.720962e-3, 43.3331e-6, 0.655185e-3],
    [1, 1.455046e-3, undefined, 1.411554e-3],
  ] as const)('load %d N: radius %d m', ([load, radius, approach, hertz]) => {
    near(jkrRadius(load, elastomer), radius, 1e-5)
    near(hertzRadius(load, elastomer.radius, elastomer.effectiveModulus), hertz, 1e-5)
    if (approach !== undefined) near(jkrApproach(jkrRadius(load, elastomer), elastomer), approach, 1e-5)
  })
  test('at pull-off the ball is stretched', () => {
    const radius = jkrRadius(-jkrPullOff(elastomer), elastomer)
    near(radius, 0.179996e-3, 1e-5)
    near(jkrApproach(radius, elastomer), -1.07995e-6, 1e-5)
  })
})

describe('Tabor parameter (Tabor 1977; spacing 0.3 nm)', () => {
  const twoSteelBalls = { radius: 0.006, effectiveModulus: effectiveModulus(steel, steel), workOfAdhesion: 0.05 }
  const tip = { radius: 20e-9, effectiveModulus: 60e9, workOfAdhesion: 0.05 }
  test.for([
    ['elastomer', elastomer, 4654.4, 'jkr'],
    ['two steel balls', twoSteelBalls, 3.4685, 'between'],
    ['sharp tip', tip, 0.080125, 'dmt'],
  ] as const)('%s', ([, sphere, want, regime]) => {
    near(taborParameter(sphere), want, 1e-4)
    expect(adhesiveContact(0, sphere).regime).toBe(regime)
  })

  test('work of adhesion of the rubber spheres of 1971: their regime is JKR, dry and in water', () => {
    for (const workOfAdhesion of [0.071, 0.0068]) {
      expect(adhesiveContact(0, { radius: 0.011, effectiveModulus: 0.55e6, workOfAdhesion }).regime).toBe('jkr')
    }
  })
})

describe('Maugis’ transition', () => {
  test('λ = 1.157 µ (Johnson & Greenwood 1997)', () => {
    near(maugisParameter(2), 2.314, 1e-12)
  })

  test('goes over into JKR', () => {
    near(maugisPullOff(300), 1.5, 1e-4)
    for (const load of [-1, 0, 1, 10]) {
      const contact = maugisContact(load, 300)
      near(contact.contactRadius, jkrRadius(load, unit), 1e-4)
      near(contact.approach, jkrApproach(jkrRadius(load, unit), unit), 2e-3)
    }
  })

  test('goes over into DMT', () => {
    for (const parameter of [0.01, 0.001]) {
      near(maugisPullOff(parameter), 2, 2 * parameter)
      for (const load of [-1, 0, 1, 10]) {
        near(maugisContact(load, parameter).contactRadius, dmtRadius(load, unit), 2 * parameter)
      }
    }
  })

  // The pressure of the model is put in by itself: Hertz inside, the constant pull outside, and the crack term between
  // (Maugis 1992); the surface that it makes must follow the sphere inside and gape by w/σ₀ at the reach.
  test.for([
    [0.3, 0],
    [0.3, -1.5],
    [1, -1],
    [3, 2],
  ])('λ %d, load %d: load, shape and gap follow from the pressure', ([parameter, load]) => {
    const { contactRadius: a, approach, reach: c } = maugisContact(load, parameter)
    const pull = parameter / 2
    const pressure = (r: number): number => {
      if (r >= a) return -pull
      const share = (2 * a ** 2 - c ** 2 - r ** 2) / (c ** 2 - r ** 2)
      return ((2 * 0.75) / Math.PI) * Math.sqrt(a ** 2 - r ** 2) - (pull / Math.PI) * Math.acos(Math.max(-1, share))
    }
    const over = (f: (x: number) => number, ...ends: number[]): number =>
      ends.slice(1).reduce((sum, end, i) => sum + integrate(f, [ends[i], end], { relative: 1e-8 }).value, 0)
    near(1 + 2 * Math.PI * over((r) => r * pressure(r), 0, a, c), 1 + load, 1e-8)
    /** Abel transform of the pressure, r² = t² + x². */
    const spread = (t: number): number => {
      const edges = [a, c].filter((edge) => edge > t).map((edge) => Math.sqrt(edge ** 2 - t ** 2))
      return over((x) => pressure(Math.hypot(t, x)), 0, ...edges)
    }
    const pressed = (r: number): number => {
      const edges = [a, c].filter((edge) => edge < r).map((edge) => Math.asin(edge / r))
      return (4 / (Math.PI * 0.75)) * over((angle) => spread(r * Math.sin(angle)), 0, ...edges, Math.PI / 2)
    }
    near(1 + pressed(a / 2), 1 + approach - a ** 2 / 8, 1e-6)
    near(pressed(c) - approach + c ** 2 / 2, 2 / (Math.PI * parameter), 1e-6)
  })

  test('lies between both laws, and pull-off falls with λ', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 1.5, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (log, load) => {
          const parameter = 10 ** log
          const { contactRadius } = maugisContact(load, parameter)
          expect(contactRadius).toBeGreaterThanOrEqual(dmtRadius(load, unit) - 1e-9)
          expect(contactRadius).toBeLessThanOrEqual(jkrRadius(load, unit) + 1e-9)
          expect(maugisPullOff(parameter * 1.1)).toBeLessThanOrEqual(maugisPullOff(parameter) + 1e-9)
        },
      ),
      { numRuns: 60 },
    )
  })

  test.for([0, -1, Number.NaN])('λ %d is refused', (parameter) => {
    expect(() => maugisPullOff(parameter)).toThrow(RangeError)
  })
  test('more pull than it bears is refused', () => {
    expect(() => maugisContact(-1.9, 1)).toThrow(RangeError)
    expect(() => maugisContact(Number.NaN, 1)).toThrow(RangeError)
  })
})

describe('explained', () => {
  test('an elastomer is answered by JKR, with DMT beside', () => {
    const contact = adhesiveContact(0.1, elastomer)
    expect(contact.law).toContain('JKR')
    near(contact.contactRadius ?? Number.NaN, 0.720962e-3, 1e-5)
    near(contact.dmt.pullOff, 2.764602e-3, 1e-5)
    expect(kinds(contact)).toEqual([])
    expect(kinds(adhesiveContact(1, elastomer))).toEqual(['largeStrain'])
  })
  test('a pull that parts the bodies has no contact', () => {
    expect(adhesiveContact(-2.5e-3, elastomer)).toMatchObject({
      contactRadius: null,
      approach: null,
      meanPressure: null,
    })
  })
  test('between the laws all are shown', () => {
    const sphere = { radius: 0.006, effectiveModulus: effectiveModulus(steel, steel), workOfAdhesion: 0.05 }
    const contact = adhesiveContact(1e-3, sphere)
    expect(kinds(contact)).toEqual(['betweenLaws'])
    const [radius, jkr, dmt] = [contact, contact.jkr, contact.dmt].map((answer) => answer.contactRadius ?? Number.NaN)
    expect(radius).toBeLessThan(jkr)
    expect(radius).toBeGreaterThan(dmt)
  })
  test('roughness and thin layers are doubted', () => {
    expect(kinds(adhesiveContact(0.01, elastomer, { roughness: 1e-6, thickness: 1e-3 }))).toEqual([
      'baseFelt',
      'roughContact',
    ])
  })
  test.for([
    [() => adhesiveContact(Number.NaN, elastomer), /load/],
    [() => adhesiveContact(0, { ...elastomer, workOfAdhesion: 0 }), /work of adhesion/],
    [() => jkrRadius(-1, elastomer), /load must be at least/],
    [() => dmtRadius(-1, elastomer), /load must be at least/],
    [() => taborParameter(elastomer, 0), /spacing/],
    [() => adhesiveContact(0, elastomer, { roughness: -1 }), /roughness/],
  ] as const)('refused: %s', ([call, words]) => {
    expect(call).toThrow(RangeError)
    expect(call).toThrow(words)
  })
})
