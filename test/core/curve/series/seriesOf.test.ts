import { describe, expect, test } from 'vitest'
import { frictionMap, placeOnFilmAxis, seriesOf } from '../../../../src/core/curve/index.ts'
import { straightLine } from '../../../../src/core/curve/series/straightLine.ts'
import type { SeriesMember } from '../../../../src/core/terms/index.ts'

const speeds = [1e-3, 1e-2, 1e-1]

/** A record whose friction at each speed is that of a law. */
const member = (
  conditions: Partial<SeriesMember> & { axialForce: number },
  law: (speed: number) => number,
): SeriesMember => ({
  name: `${conditions.axialForce} N`,
  load: conditions.axialForce / 3,
  temperature: null,
  viscosity: null,
  forceZero: 0,
  ...conditions,
  points: speeds.map((slidingSpeed) => ({ slidingSpeed, friction: law(slidingSpeed), ownUncertainty: 1e-4 })),
})

describe('load', () => {
  const forces = [1, 2, 5, 10]
  // A scatter of records that has no slope along ln F would be luck; these shares are small and fixed.
  const shares = [0.002, -0.003, 0.001, -0.001]
  const third = (exponent: number) =>
    seriesOf(
      'load',
      forces.map((axialForce, i) =>
        member({ axialForce }, (v) => 0.3 * axialForce ** -exponent * v ** -0.1 * (1 + shares[i])),
      ),
    )

  test('a smooth elastic sphere with constant shear stress: µ ∝ F^(−1/3), so a = 1/3 (PHYSICS, section 6)', () => {
    const { overall, atSpeeds, sentences, sameAtAllSpeeds } = third(1 / 3)
    expect(overall?.value).toBeCloseTo(1 / 3, 2)
    expect(overall?.low).toBeLessThan(1 / 3)
    expect(overall?.high).toBeGreaterThan(1 / 3)
    expect(atSpeeds).toHaveLength(3)
    expect(sentences.join(' ')).toContain(
      'a = 0.3333, a smooth elastic sphere with constant interfacial shear stress, agrees',
    )
    expect(sentences.join(' ')).toContain('Amontons), does not agree')
    // What a record does to all its speeds alike says nothing about a change with speed.
    expect(sameAtAllSpeeds ?? 1).toBeGreaterThan(0.05)
  })

  test('friction that does not depend on load has a = 0', () => {
    expect(third(0).overall?.value).toBeCloseTo(0, 2)
  })

  test('an adhesion of 50 mN stands in the intercept', () => {
    const sticky = seriesOf(
      'load',
      forces.map((axialForce) => member({ axialForce }, (v) => 0.2 * v ** -0.05 * (1 + 0.25 / axialForce))),
    )
    const [first] = sticky.intercepts
    expect(first.slope.value).toBeCloseTo(0.2 * 1e-3 ** -0.05, 6)
    expect(first.intercept.value).toBeCloseTo(0.2 * 1e-3 ** -0.05 * 0.25, 6)
  })

  test('a zero of the force that all share moves the exponent, and stands apart', () => {
    const wrong = seriesOf(
      'load',
      forces.map((axialForce) => member({ axialForce, forceZero: 0.02 }, () => 0.2)),
    )
    // µ·F/(F+δ) against F+δ: friction at 1 N falls by 2 %, at 10 N by 0.2 %, so the exponent moves by about 0.01.
    expect(wrong.overall?.shared).toBeGreaterThan(3e-3)
    expect(wrong.overall?.shared).toBeLessThan(2e-2)
  })

  test('an exponent that differs from speed to speed is said', () => {
    const { sameAtAllSpeeds, sentences } = seriesOf(
      'load',
      forces.map((axialForce, i) =>
        member({ axialForce }, (v) => 0.3 * axialForce ** (-0.1 * (4 + Math.log10(v))) * (1 + shares[i] * (1 + v))),
      ),
    )
    expect(sameAtAllSpeeds).toBeLessThan(0.05)
    expect(sentences.join(' ')).toContain('changes with the speed')
  })

  test('two records make a line without an interval, and say so', () => {
    const two = seriesOf(
      'load',
      [1, 8].map((axialForce) => member({ axialForce }, () => 0.2 * axialForce ** -0.5)),
    )
    expect(two.overall?.value).toBeCloseTo(0.5, 9)
    expect(two.overall?.low).toBeNull()
    expect(two.remarks.map(({ kind }) => kind)).toEqual(['notEnoughPoints'])
  })
})

test('temperature: ln µ over 1/RT has the slope E (Arrhenius), R = 8.314 462 618 J/(mol·K)', () => {
  const energy = 25_000
  const { overall, sentences } = seriesOf(
    'temperature',
    [293.15, 303.15, 313.15, 333.15].map((temperature, i) =>
      member(
        { axialForce: 5, temperature },
        (v) => 1e-5 * v ** 0.2 * Math.exp(energy / (8.314462618 * temperature)) * (1 + [1e-3, -2e-3, 1e-3, 0][i]),
      ),
    ),
  )
  expect(Math.abs((overall?.value ?? 0) / energy - 1)).toBeLessThan(0.02)
  expect(sentences[0]).toContain('falls with temperature')
})

test('a straight line has the intervals of any textbook', () => {
  // y = 1 + 2x with residuals ±1: Sxx = 10, s² = 4/3 on 3 degrees of freedom, t = 3.182446.
  const line = straightLine(
    [1, 2, 3, 4, 5],
    [4, 4, 7, 10, 10].map((y) => y),
  )
  expect(line?.slope.value).toBeCloseTo(1.8, 12)
  const s2 = (line?.residualSquares ?? 0) / 3
  expect((line?.slope.high ?? 0) - 1.8).toBeCloseTo(3.182446305 * Math.sqrt(s2 / 10), 6)
})

describe('friction map', () => {
  const two = [1, 4].map((axialForce) => member({ axialForce }, (v) => 0.1 * axialForce ** -0.5 * v ** -0.2))

  test('is straight in logarithms between the data: a product of powers comes out exactly', () => {
    const { speeds: across, loads, friction } = frictionMap(two, { columns: 7, rows: 5 })
    for (const [row, load] of loads.entries()) {
      for (const [column, speed] of across.entries()) {
        expect(friction[row * 7 + column]).toBeCloseTo(0.1 * load ** -0.5 * speed ** -0.2, 9)
      }
    }
  })

  test('says nothing outside the speeds of a record, and refuses one load', () => {
    const short = { ...two[1], points: two[1].points.slice(0, 2) }
    const { friction } = frictionMap([two[0], short], { columns: 5, rows: 4 })
    expect(Number.isNaN(friction[friction.length - 1])).toBe(true)
    expect(Number.isFinite(friction[0])).toBe(true)
    expect(() => frictionMap(two.slice(0, 1))).toThrow(RangeError)
  })
})

test('axes of a film law: v, ηv and ηv/W with the load on one contact', () => {
  const oil = member({ axialForce: 6, load: 2, viscosity: 0.1 }, () => 0.1)
  expect(placeOnFilmAxis('speed', oil, 0.02)).toBe(0.02)
  expect(placeOnFilmAxis('film', oil, 0.02)).toBeCloseTo(0.002, 12)
  expect(placeOnFilmAxis('filmPerLoad', oil, 0.02)).toBeCloseTo(0.001, 12)
  expect(placeOnFilmAxis('film', { ...oil, viscosity: null }, 0.02)).toBeNull()
})
