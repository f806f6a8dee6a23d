import { expect, test } from 'vitest'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import { settledFrom } from '../../../../src/core/reduce/estimate/settled.ts'
import { warmUpCut } from '../../../../src/core/reduce/estimate/warmUpCut.ts'

const quiet = (seed: number, rows: number) => {
  const random = randomFrom(seed)
  return Float64Array.from({ length: rows }, () => random.normal())
}

test('a decay at the head is cut, most of it', () => {
  const series = quiet(1, 200).map((value, i) => value + 30 * Math.exp(-i / 6))
  const cut = warmUpCut(series, () => 1, 1000)
  expect(cut).toBeGreaterThanOrEqual(15)
  expect(cut).toBeLessThan(60)
})

test('stationary noise is left whole, though MSER alone would cut some of it', () => {
  const cuts = Array.from({ length: 200 }, (_, seed) => warmUpCut(quiet(seed, 100), () => 1, 1000))
  expect(cuts.filter((cut) => cut > 0).length).toBeLessThan(20)
  const bare = Array.from({ length: 200 }, (_, seed) => warmUpCut(quiet(seed, 100), () => 1, 1))
  expect(bare.filter((cut) => cut > 0).length).toBeGreaterThan(60)
})

test.for([
  { speed: [0, 5, 9, 9.9, 10, 10, 10, 10], from: 3 },
  { speed: [10, 10, 10], from: 0 },
  { speed: [1, 2, 4, 8, 16, 32], from: 5 },
])('the speed has settled from row $from', ({ speed, from }) => {
  expect(settledFrom(Float64Array.from(speed), speed[speed.length - 1], 0.02)).toBe(from)
})

test('a speed that ends away from its target never settled', () => {
  expect(settledFrom(Float64Array.from([1, 2, 3, 4, 5, 6, 7, 8]), 5, 0.02)).toBeUndefined()
})
