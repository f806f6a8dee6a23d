import { describe, expect, test } from 'vitest'
import { replicatesAgainstLimit } from '../../../src/core/plan/index.ts'

describe('replicates against a limit', () => {
  // One-sample t test, one side: tables of sample size in Cohen 1988, "Statistical power analysis", 2.4 (from memory);
  // the second row also by 200,000 draws of normal numbers: 10 replicates see it in 0.897 of them, 11 in 0.924.
  test.for([
    { share: 0.5, power: 0.8, want: 27 },
    { share: 1, power: 0.9, want: 11 },
    { share: 0.8, power: 0.8, want: 12 },
  ])('a truth $share scatters inside, power $power: $want', ({ share, power, want }) => {
    const question = { difference: share * 0.06, repeatability: 0.06, power, significance: 0.05 }
    const { exact, replicates, power: met } = replicatesAgainstLimit(question)
    expect(replicates).toBe(want)
    expect(exact).toBeLessThanOrEqual(want)
    expect(met).toBeGreaterThanOrEqual(power)
  })

  test.for([{ difference: 0 }, { repeatability: Number.NaN }, { power: 1 }, { significance: 0.5 }])(
    'refuses %o',
    (wrong) => {
      const question = { difference: 0.1, repeatability: 0.06, power: 0.8, significance: 0.05, ...wrong }
      expect(() => replicatesAgainstLimit(question)).toThrow(RangeError)
    },
  )
})
