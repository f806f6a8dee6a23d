import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cholesky, invertSymmetric, randomFrom, solveSymmetric } from '../../../src/core/numeric/index.ts'

test('factor of 4 12 −16; 12 37 −43; −16 −43 98 is 2; 6 1; −8 5 3 (by hand)', () => {
  const matrix = [4, 12, -16, 12, 37, -43, -16, -43, 98]
  expect(cholesky(matrix, 3)).toEqual(Float64Array.of(2, 0, 0, 6, 1, 0, -8, 5, 3))
  const { inverse, logDeterminant } = invertSymmetric(Float64Array.from(matrix), 3) ?? expect.fail('not inverted')
  expect(logDeterminant).toBeCloseTo(Math.log(36), 12)
  const want = [1777 / 36, -122 / 9, 19 / 9, -122 / 9, 34 / 9, -5 / 9, 19 / 9, -5 / 9, 1 / 9]
  for (const [i, value] of want.entries()) expect(inverse[i]).toBeCloseTo(value, 10)
})

test('solutions solve, whatever the scales of the unknowns', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 8 }), fc.nat(), fc.integer({ min: -60, max: 60 }), (size, seed, scale) => {
      const { matrix, right, truth } = randomSystem(size, seed, 10 ** scale)
      const solved = solveSymmetric(matrix, right) ?? expect.fail('not solved')
      for (const [i, value] of truth.entries()) expect(Math.abs(solved[i] / value - 1)).toBeLessThan(1e-8)
    }),
  )
})

/** GGᵀ + 1 with rows and columns scaled by `scale` to the power of their place in 0 … 1. */
function randomSystem(size: number, seed: number, scale: number) {
  const random = randomFrom(seed)
  const g = random.fillNormal(new Float64Array(size * size))
  const by = Array.from({ length: size }, (_, i) => scale ** (i / size))
  const matrix = new Float64Array(size * size)
  for (let a = 0; a < size; a++) {
    for (let b = 0; b < size; b++) {
      let sum = a === b ? 1 : 0
      for (let k = 0; k < size; k++) sum += g[a * size + k] * g[b * size + k]
      matrix[a * size + b] = sum * by[a] * by[b]
    }
  }
  const truth = by.map((factor) => (1 + random.uniform()) / factor)
  const right = truth.map((_, a) => truth.reduce((sum, x, b) => sum + matrix[a * size + b] * x, 0))
  return { matrix, right, truth }
}

test.for([
  ['singular', [1, 1, 1, 1]],
  ['indefinite', [1, 2, 2, 1]],
  ['singular to rounding', [1, 1, 1, 1 + 8 * Number.EPSILON]],
  ['not a number', [Number.NaN, 0, 0, 1]],
  ['zero', [0, 0, 0, 0]],
] as const)('%s: no factor, no solution', ([, matrix]) => {
  expect(cholesky(matrix, 2)).toBeUndefined()
  expect(solveSymmetric(matrix, [1, 2])).toBeUndefined()
  expect(invertSymmetric(Float64Array.from(matrix), 2)).toBeUndefined()
})

test('refuses a matrix of another size', () => {
  expect(() => cholesky([1, 2, 3], 2)).toThrow('matrix of size 2 has 3 values')
})
