import fc from 'fast-check'
import { expect, test } from 'vitest'
import { holm } from '../../../src/core/stats/index.ts'

test('0.01 0.04 0.03 0.005 become 0.03 0.06 0.06 0.02 (Holm 1979, by hand)', () => {
  const adjusted = holm([0.01, 0.04, 0.03, 0.005])
  for (const [i, want] of [0.03, 0.06, 0.06, 0.02].entries()) expect(adjusted[i]).toBeCloseTo(want, 14)
})

test('never below the plain probability nor above that of Bonferroni, order kept', () => {
  const probability = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(fc.array(probability, { maxLength: 12 }), (list) => {
      const adjusted = holm(list)
      for (const [i, p] of list.entries()) {
        expect(adjusted[i]).toBeGreaterThanOrEqual(p)
        expect(adjusted[i]).toBeLessThanOrEqual(Math.min(1, list.length * p))
        for (const [j, q] of list.entries()) if (p < q) expect(adjusted[i]).toBeLessThanOrEqual(adjusted[j])
      }
    }),
  )
})

test('refuses what is no probability', () => {
  expect(() => holm([0.1, Number.NaN])).toThrow('probability must lie between 0 and 1, got NaN')
})
