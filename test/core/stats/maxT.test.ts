import { expect, test } from 'vitest'
import { randomFrom } from '../../../src/core/numeric/index.ts'
import { normalQuantile, studentizedRangeQuantile, studentTQuantile } from '../../../src/core/stats/index.ts'
import { curveScatter, maxTDraws, maxTSeparateDraws } from '../../../src/core/stats/judging/index.ts'

const at95 = (draws: Float64Array): number => draws[Math.floor(0.95 * draws.length)]
const random = () => randomFrom(20261125)
const normals = (count: number, places: number, draw: () => number): Float64Array[] =>
  Array.from({ length: count }, () => Float64Array.from({ length: places }, draw))

test.for([3, 4, 8])(
  '%i replicates that move together at all speeds: Student t, by pooled and by separate scatter',
  (n) => {
    const source = random()
    const levels = normals(2 * n, 1, () => source.normal())
    const curves = levels.map(([level]) => Float64Array.from({ length: 12 }, (_, i) => level + i))
    const samples = [curves.slice(0, n), curves.slice(n)]
    const draws = maxTDraws(curveScatter(samples), { contrasts: [[-1, 1]], draws: 40_000, random: random() })
    // Standard error of the quantile of so many draws of t is under 1 %.
    expect(Math.abs(at95(draws) / studentTQuantile(0.975, 2 * n - 2) - 1)).toBeLessThan(0.03)
    const [single] = samples
    const one = maxTDraws(curveScatter([single]), { contrasts: [[1]], draws: 40_000, random: random() })
    expect(Math.abs(at95(one) / studentTQuantile(0.975, n - 1) - 1)).toBeLessThan(0.03)
  },
)

test.for([3, 5])('%i samples at one speed: all pairs at once is the studentized range', (k) => {
  const source = random()
  const samples = Array.from({ length: k }, () => normals(4, 1, () => source.normal()))
  const contrasts = samples.flatMap((_, a) =>
    samples.slice(a + 1).map((_, b) => samples.map((_, s) => (s === a ? -1 : s === a + 1 + b ? 1 : 0))),
  )
  const draws = maxTDraws(curveScatter(samples), { contrasts, draws: 40_000, random: random() })
  const tukey = studentizedRangeQuantile(0.95, { groups: k, degreesOfFreedom: 3 * k }) / Math.SQRT2
  expect(Math.abs(at95(draws) / tukey - 1)).toBeLessThan(0.02)
})

// Factors for m independent comparisons of known scatter, 1 − (1 − 0.95^(1/m))/2 of the normal distribution (closed form).
test.for([
  [2, 2.2365],
  [5, 2.5688],
  [10, 2.7996],
  [20, 3.016],
] as const)('%i independent speeds with very many replicates: %f', ([places, want]) => {
  expect(normalQuantile((1 + 0.95 ** (1 / places)) / 2)).toBeCloseTo(want, 4)
  const source = random()
  const samples = [normals(150, places, () => source.normal()), normals(150, places, () => source.normal())]
  const draws = maxTDraws(curveScatter(samples), { contrasts: [[-1, 1]], draws: 8000, random: random() })
  expect(Math.abs(at95(draws) - want)).toBeLessThan(0.06)
})

test('the factor lies between that of one speed and that of independent speeds', () => {
  const source = random()
  const curve = (): Float64Array => {
    const [level, slope] = [source.normal(), source.normal()]
    return Float64Array.from({ length: 20 }, (_, i) => level + (slope * i) / 20)
  }
  const samples = [0, 1].map(() => Array.from({ length: 40 }, curve))
  for (const draws of [
    maxTDraws(curveScatter(samples), { contrasts: [[-1, 1]], draws: 8000, random: random() }),
    maxTSeparateDraws(samples, { draws: 8000, random: random() }),
  ]) {
    expect(at95(draws)).toBeGreaterThan(1.98)
    expect(at95(draws)).toBeLessThan(2.5)
  }
})

test('places where nothing scatters change nothing, and equal seeds give equal draws', () => {
  const source = random()
  const curves = normals(6, 5, () => source.normal())
  const withZero = curves.map((curve) => Float64Array.from([...curve, 3]))
  const drawn = (all: readonly Float64Array[]) =>
    maxTDraws(curveScatter([all.slice(0, 3), all.slice(3)]), { contrasts: [[-1, 1]], draws: 400, random: random() })
  expect(drawn(withZero)).toEqual(drawn(curves))
})

test('refuses what cannot be judged', () => {
  expect(() => curveScatter([[[1, 2]], [[1, 2]]])).toThrow(RangeError)
  expect(() => curveScatter([[[1, 2], [1]]])).toThrow(RangeError)
  const scatter = curveScatter([[[1], [2]]])
  expect(() => maxTDraws(scatter, { contrasts: [[0]], draws: 100, random: random() })).toThrow(RangeError)
  expect(() => maxTDraws(scatter, { contrasts: [[1]], draws: 10, random: random() })).toThrow(RangeError)
  expect(() => maxTSeparateDraws([[[1], [2]]], { draws: 100, random: random() })).toThrow(RangeError)
})
