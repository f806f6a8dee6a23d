import fc from 'fast-check'
import { expect, test } from 'vitest'
import { linearTicks, logTicks, tickLabel } from '../../src/figure/ticks.ts'

test.for([
  { low: 1, high: 1000, closest: 0.3, want: [1, 10, 100, 1000] },
  { low: 0.9, high: 110, closest: 0.1, want: [1, 2, 5, 10, 20, 50, 100] },
  { low: 0.26, high: 0.29, closest: 0.2, want: [0.26, 0.265, 0.27, 0.275, 0.28, 0.285, 0.29] },
  { low: 1e-9, high: 1e9, closest: 0.2, want: [1e-9, 1e-5, 0.1, 1000, 1e7] },
])('ticks from $low to $high are round', ({ low, high, closest, want }) => {
  const ticks = logTicks(low, high, closest)
  if (high / low < 2) expect(want).toEqual(expect.arrayContaining([...ticks]))
  else expect(ticks).toEqual(want)
})

test('ticks lie inside, ascend, keep their distance, and there are some', () => {
  const range = fc.tuple(fc.double({ min: -8, max: 4, noNaN: true }), fc.double({ min: 0.05, max: 8, noNaN: true }))
  fc.assert(
    fc.property(range, fc.double({ min: 0.03, max: 0.25, noNaN: true }), ([start, decades], closest) => {
      const low = 10 ** start
      const high = low * 10 ** decades
      const ticks = logTicks(low, high, closest)
      expect(ticks.length).toBeGreaterThan(0)
      for (const [index, tick] of ticks.entries()) {
        expect(tick).toBeGreaterThanOrEqual(low * (1 - 1e-6))
        expect(tick).toBeLessThanOrEqual(high * (1 + 1e-6))
        if (index > 0) expect(tick).toBeGreaterThan(ticks[index - 1] ?? 0)
      }
      expect(linearTicks(low, high, closest).length).toBeLessThanOrEqual(Math.max(2, 1 / closest))
    }),
  )
})

test.for([
  [0, '0'],
  [0.0003, '0.0003'],
  [1500, '1500'],
  [-0.25, '−0.25'],
  [1e-5, '10⁻⁵'],
  [2.5e-7, '2.5·10⁻⁷'],
  [3e12, '3·10¹²'],
] as const)('%d is labelled %s', ([value, text]) => {
  expect(tickLabel(value)).toBe(text)
})
