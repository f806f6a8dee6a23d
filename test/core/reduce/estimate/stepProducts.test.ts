import { expect, test } from 'vitest'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import { correlatedFit } from '../../../../src/core/reduce/estimate/correlatedFit.ts'
import { frictionRegression, stepProducts } from '../../../../src/core/reduce/estimate/stepProducts.ts'
import type { StepRows } from '../../../../src/core/reduce/estimate/stepRows.ts'

const rows = 400
const angle = Float64Array.from({ length: rows }, (_, i) => 0.1 * i)

function stepOf(tangential: Float64Array, force: Float64Array): StepRows {
  return {
    step: { number: 1, kind: 'slide', from: 0, to: rows, target: 1 },
    time: angle,
    speed: new Float64Array(rows).fill(1),
    tangential,
    force,
    angle,
    gap: new Float64Array(0),
    temperature: new Float64Array(0),
    turnColumns: [angle.map(Math.cos), angle.map(Math.sin)],
    orders: [1],
    block: 1,
    begins: Uint32Array.from({ length: rows }, (_, i) => i),
    outOfContact: 0,
    longestLoss: { rows: 0, at: 0 },
    lowestForce: Number.POSITIVE_INFINITY,
    holes: 0,
    torquePeak: { size: 1, run: 1 },
  }
}

// White noise of known size: the variance of the fit is its sum of squares about the level, over the rows less one.
test.for([1e-4, 1e-7, 1e-10])('noise of %d of the friction force keeps its variance', (size) => {
  const random = randomFrom(3)
  const noise = Float64Array.from({ length: rows }, () => size * random.normal())
  const force = new Float64Array(rows).fill(5)
  const tangential = noise.map((value) => 5 * (0.2 + value))
  const fit = correlatedFit(frictionRegression(stepProducts(stepOf(tangential, force), 0, []), 0.2, []), 0)
  const level = noise.reduce((sum, value) => sum + value, 0) / rows
  const variance = noise.reduce((sum, value) => sum + (value - level) ** 2, 0) / (rows - 1)
  expect(Math.abs((fit?.variance ?? Number.NaN) / variance - 1)).toBeLessThan(1e-15 / size + 1e-12)
  expect(Math.abs((fit?.coefficients[0] ?? Number.NaN) - level)).toBeLessThan(1e-15)
})
