import { expect, test } from 'vitest'
import { randomFrom } from '../../../src/core/numeric/index.ts'
import { huntingAt } from '../../../src/core/rig/hunting.ts'
import { createScatteredSlip } from '../../../src/core/rig/scatteredSlip.ts'
import { wornSpotFactor } from '../../../src/core/rig/wornSpot.ts'

test('a saw-tooth with scatter keeps its mean, its pace and its mean drop', () => {
  const deviation = createScatteredSlip(0.1, randomFrom(1))
  // Rate 4 and drop 1: two seconds a half cycle of ±1, so 0.5 s a cycle at rate 4 … 2·1/4.
  const interval = 1e-3
  const values = Array.from({ length: 400_000 }, () => deviation({ rate: 4, drop: 1 }, interval))
  const mean = values.reduce((a, b) => a + b, 0) / values.length
  const falls = values.filter((value, i) => i > 0 && value < values[i - 1] - 0.5).length
  // 400 s of 0.5 s: 800 falls, whose number scatters by about 0.1·√800.
  expect(Math.abs(falls - 800)).toBeLessThan(15)
  expect(Math.abs(mean)).toBeLessThan(0.02)
})

test('a shaft with inertia slips for (2/ω)(π − atan(drop/push)) and not at once', () => {
  const natural = 20
  const deviation = createScatteredSlip(1e-6, randomFrom(1))
  const values = Array.from({ length: 20_000 }, () => deviation({ rate: 4, drop: 1, natural }, 1e-4))
  const falling = values.filter((value, i) => i > 0 && value < values[i - 1]).length * 1e-4
  const slip = (2 / natural) * (Math.PI - Math.atan2(1, 4 / natural))
  const period = 2 / 4 + slip
  // Share of time in which the spring shortens: the slip less what the drive still loads at both its ends.
  expect(falling / 2).toBeLessThan(slip / period)
  expect(falling / 2).toBeGreaterThan((0.8 * slip) / period)
})

test('refuses a scatter that could turn a drop round', () => {
  expect(() => createScatteredSlip(0.4, randomFrom(1))).toThrow(/under a third, got 0.4/)
})

test('hunting: torque a quarter of a wave behind the speed', () => {
  const hunting = { frequency: 2, speedShare: 0.05, torque: 1e-3 }
  expect(huntingAt(hunting, 0)).toEqual({ speed: 1, torque: 1e-3 })
  expect(huntingAt(hunting, 1 / 8).speed).toBeCloseTo(1.05, 12)
  expect(huntingAt(hunting, 1 / 8).torque).toBeCloseTo(0, 12)
})

test('a worn spot: half of the excess at half its width, over the seam of the turn, and nothing before it begins', () => {
  const spot = { angle: 0.05, width: 0.4, excess: 0.2, from: 1, to: 3 }
  expect(wornSpotFactor(spot, 0.05, 0.9)).toBe(1)
  expect(wornSpotFactor(spot, 0.05, 3)).toBeCloseTo(1.2, 12)
  expect(wornSpotFactor(spot, 0.05, 2)).toBeCloseTo(1.1, 12)
  expect(wornSpotFactor(spot, 0.25, 5)).toBeCloseTo(1.1, 12)
  expect(wornSpotFactor(spot, 2 * Math.PI - 0.15, 5)).toBeCloseTo(1.1, 12)
})
