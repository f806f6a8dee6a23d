import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { type MasterLiquid, masterCurve } from '../../../../src/core/curve/index.ts'
import { masterFriction } from '../../../../src/core/film/index.ts'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import { realRecord } from '../../../figure/realRecords.ts'

// k 1, n 0.55, h 0.4, l 0, B 1e-3, m 2: the synthetic master curve over ηv (form after Bongaerts, Fourtouni & Stokes 2007, from memory; constants invented).
const curve = { filmFactor: 1, filmPower: 0.55, boundaryFactor: 0.4, boundaryPower: 0, crossover: 1e-3, steepness: 2 }

/** A liquid swept from 2 to 500 mm/s; `told` is the viscosity that it is said to have. */
function liquid(
  name: string,
  viscosity: number,
  { told = viscosity, scatter = 0.002, seed = 1, level = 1 } = {},
): MasterLiquid {
  const random = randomFrom(seed, Math.round(viscosity * 1e6))
  const points = Array.from({ length: 12 }, (_, i) => {
    const speed = 2e-3 * 250 ** (i / 11)
    const friction = level * masterFriction(viscosity * speed, curve)
    return {
      hersey: told * speed,
      friction: friction * (1 + scatter * random.normal()),
      ownUncertainty: Math.max(1e-6, scatter) * friction,
      degreesOfFreedom: 40,
    }
  })
  return { name, points, viscosity: told, viscosityUncertainty: 0.02 }
}

const three = (change: (viscosity: number) => Parameters<typeof liquid>[2] = () => ({})): readonly MasterLiquid[] =>
  [1e-3, 1e-2, 1e-1].map((viscosity, i) => liquid(`liquid ${i + 1}`, viscosity, change(viscosity)))

describe('liquids of one curve', () => {
  const found = masterCurve(three(), { seed: 1 })

  test('collapse, with no shift beyond their viscosity', () => {
    expect(found?.collapses).toBe('yes')
    for (const { beyond } of found?.shifts.slice(1) ?? []) {
      expect(beyond.low).toBeLessThan(1)
      expect(beyond.high).toBeGreaterThan(1)
      // Narrow enough to see a viscosity that is a tenth off.
      expect(beyond.high / beyond.low).toBeLessThan(1.1)
    }
  })

  test('lie within their own uncertainty, and far apart on the axis of speed', () => {
    expect(found?.residual.viscosity).toBeLessThan(0.003)
    expect(found?.residual.speed).toBeGreaterThan(0.2)
    expect(found?.explained).toBeGreaterThan(0.99)
  })

  test('do worse with their viscosities in any other order: one of six', () => {
    expect(found?.permutations).toEqual({ orders: 6, asGood: 1, probability: 1 / 6 })
  })

  test('follow the same shift whatever the axis is measured in', () => {
    const scaled = three().map((one) => ({
      ...one,
      points: one.points.map((point) => ({ ...point, hersey: point.hersey / 3.7 })),
    }))
    const again = masterCurve(scaled, { seed: 1 })
    expect(again?.residual.viscosity).toBeCloseTo(found?.residual.viscosity ?? 0, 5)
    again?.shifts.forEach(({ beyond }, i) => {
      expect(beyond.value).toBeCloseTo(found?.shifts[i].beyond.value ?? 0, 3)
    })
  })
})

test.for([0.5, 2, 4])('a viscosity that is told wrong by a factor comes out: %f', (wrong) => {
  const found = masterCurve(
    three((viscosity) => (viscosity === 1e-2 ? { told: viscosity * wrong } : {})),
    { seed: 1 },
  )
  const [, second, third] = found?.shifts ?? []
  expect(second.beyond.value * wrong).toBeCloseTo(1, 1)
  expect(second.beyond.low * wrong).toBeLessThan(1)
  expect(second.beyond.high * wrong).toBeGreaterThan(1)
  expect(third.beyond.value).toBeCloseTo(1, 1)
  expect(found?.collapses).toBe('no')
})

test('one that lies higher says so in its level', () => {
  const found = masterCurve(
    three((viscosity) => (viscosity === 1e-1 ? { level: 1.3 } : {})),
    { seed: 1 },
  )
  expect(found?.shifts[2].level.value).toBeGreaterThan(0.05)
})

test('liquids that do not know viscosity are not called one curve by it', () => {
  // The same curve over plain speed for all of them.
  const same = three().map((one, i) => ({
    ...one,
    points: liquid('any', 1e-2, { seed: i }).points.map((point) => ({
      ...point,
      hersey: (point.hersey / 1e-2) * one.viscosity,
    })),
  }))
  const found = masterCurve(same, { seed: 1 })
  expect(found?.collapses).toBe('no')
  expect(found?.residual.speed).toBeLessThan(0.005)
  // Whole shift 1: the liquid does not move on the axis of speed.
  expect(found?.shifts[2].whole.value).toBeCloseTo(1, 1)
})

test('takes two liquids of three points each', () => {
  expect(masterCurve(three().slice(0, 1), { seed: 1 })).toBeUndefined()
  expect(
    masterCurve([three()[0], { ...three()[1], points: three()[1].points.slice(0, 2) }], { seed: 1 }),
  ).toBeUndefined()
})

test('the warm oat drink and a liquid ten times as thick on its true curve', async () => {
  const { reduction } = await realRecord('oat-drink-warm')
  const { spec } = JSON.parse(readFileSync('test/data/records/oat-drink-warm.truth.json', 'utf8'))
  const { k, n, h, v0, m } = spec.truth
  const [thin, thick] = [1.5e-3, 15e-3]
  const points = reduction.points.flatMap(({ trusted, slidingSpeed, friction, ownUncertainty, degreesOfFreedom }) =>
    trusted && friction !== null && ownUncertainty !== null
      ? [{ hersey: thin * slidingSpeed, friction, ownUncertainty, degreesOfFreedom: degreesOfFreedom ?? 1e9 }]
      : [],
  )
  // The truth of the record over ηv: friction at the speed at which the thin liquid has the same ηv.
  const other = points.map(({ hersey }) => {
    const v = hersey / thin
    const friction = k * v ** n + (h - k * v ** n) / (1 + (v / v0) ** m)
    return { hersey, friction, ownUncertainty: 1e-4 * friction, degreesOfFreedom: 1e9 }
  })
  const found = masterCurve(
    [
      { name: 'oat drink', points, viscosity: thin, viscosityUncertainty: 0 },
      { name: 'thick', points: other, viscosity: thick, viscosityUncertainty: 0 },
    ],
    { seed: 1 },
  )
  const { beyond, whole } = found?.shifts[1] ?? { beyond: null, whole: null }
  expect(beyond?.value).toBeCloseTo(1, 1)
  expect(whole?.value).toBeCloseTo(10, 0)
})
