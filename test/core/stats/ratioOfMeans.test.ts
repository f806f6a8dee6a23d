import { expect, test } from 'vitest'
import { randomFrom } from '../../../src/core/numeric/index.ts'
import { mean, ratioOfMeans } from '../../../src/core/stats/index.ts'

const torque = [1.02, 0.98, 1.05, 1.01, 0.97, 1.03]
const force = [10.1, 9.9, 10.3, 10, 9.8, 10.2]

test('ratio 0.1004975124, u 0.000494049; the mean of ratios is another number (computed independently)', () => {
  const { ratio, standardUncertainty } = ratioOfMeans(torque, force)
  expect(Math.abs(ratio - 0.1004975124)).toBeLessThan(1e-9)
  expect(Math.abs(standardUncertainty - 0.000494049)).toBeLessThan(1e-9)
  expect(Math.abs(mean(torque.map((value, i) => value / force[i])) - 0.1004802883)).toBeLessThan(1e-9)
})

test('the autocorrelation time multiplies the variance; a common factor passes through', () => {
  const plain = ratioOfMeans(torque, force)
  const slow = ratioOfMeans(torque, force, { autocorrelationTime: 9 })
  expect(slow.ratio).toBe(plain.ratio)
  expect(slow.standardUncertainty).toBeCloseTo(3 * plain.standardUncertainty, 15)
  const scaled = ratioOfMeans(
    torque,
    force.map((value) => -4 * value),
  )
  expect(scaled.ratio).toBeCloseTo(-plain.ratio / 4, 15)
  expect(scaled.standardUncertainty).toBeCloseTo(plain.standardUncertainty / 4, 15)
})

test('simulated: the scatter of 3000 ratios is the one said, within 3.5 standard errors, and unbiased', () => {
  const random = randomFrom(2)
  const count = 50
  let sum = 0
  let squares = 0
  let said = 0
  for (let trial = 0; trial < 3000; trial++) {
    const x = Float64Array.from({ length: count }, () => 5 + 0.5 * random.normal())
    const y = x.map((value) => 0.2 * value + 0.1 * random.normal() + 0.02 * (value - 5))
    const { ratio, standardUncertainty } = ratioOfMeans(y, x)
    sum += ratio - 0.2
    squares += (ratio - 0.2) ** 2
    said += standardUncertainty ** 2
  }
  expect(Math.abs(sum / 3000)).toBeLessThan(3.5 * Math.sqrt(said / 3000 / 3000))
  expect(Math.abs(squares / said - 1)).toBeLessThan(3.5 * Math.sqrt(2 / 3000))
})

test.for([
  ['one sample', () => ratioOfMeans([1], [2]), 'got 1 and 1'],
  ['time 0', () => ratioOfMeans(torque, force, { autocorrelationTime: 0 }), 'got 0 samples'],
] as const)('refuses %s', ([, call, message]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(message)
})
