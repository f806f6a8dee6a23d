import { expect, test } from 'vitest'
import { scatterHistory } from '../../../src/core/decide/index.ts'
import { replicatesNeeded } from '../../../src/core/plan/index.ts'
import { mixedModel, varianceIntervals } from '../../../src/core/stats/judging/index.ts'
import { stepsOf } from './inventedSteps.ts'

const ask = { at: null, difference: 0.1, power: 0.8, significance: 0.05 }

test('voltage standard on ten days, five readings each: days 43 µV, within a day 85 µV, mean 97 ± 18 (JCGM 100:2008, H.5, from memory)', () => {
  const means = [172, 116, 13, 144, 106, 31, 60, 125, 163, 41]
  const deviations = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86]
  // Five readings of the stated mean and standard deviation.
  const readings = means.flatMap((mean, day) =>
    [-2, -1, 0, 1, 2].map((z) => mean + (deviations[day] * z) / Math.sqrt(2.5)),
  )
  const days = readings.map((_, i) => Math.floor(i / 5))
  const problem = { values: readings, design: readings.map(() => [1]), causes: [{ name: 'day', levels: days }] }
  const fit = mixedModel(problem)
  const { parts, total } = varianceIntervals(problem, fit)
  expect(Math.abs(parts[0].deviation - 43)).toBeLessThan(0.5)
  expect(Math.abs(parts[1].deviation - 85)).toBeLessThan(0.5)
  expect(Math.abs(fit.contrast([1]).value - 97)).toBeLessThan(0.5)
  expect(Math.abs(fit.contrast([1]).standardError - 18)).toBeLessThan(0.5)
  // Within a day the exact interval is s·√(40/χ²) with χ² 59.342 and 24.433 (standard table); the profile is near to it.
  expect(Math.abs(parts[1].low / (85 * Math.sqrt(40 / 59.342)) - 1)).toBeLessThan(0.03)
  expect(Math.abs((parts[1].high ?? 0) / (85 * Math.sqrt(40 / 24.433)) - 1)).toBeLessThan(0.03)
  expect(total.deviation).toBeCloseTo(Math.hypot(parts[0].deviation, parts[1].deviation), 9)
  // F 2.25 lies under its 2.5 % point: between days the interval reaches down to zero or near.
  expect(parts[0].low).toBeLessThan(25)
})

test('one sample, no causes: the pooled standard deviation of ln μ, and replicates by the t test', () => {
  const mountings = [0.1, 0.11, 0.121].map((friction) => stepsOf([friction, friction, friction]))
  const told = scatterHistory(mountings, ask)
  if (!told.ok) throw new Error('no scatter')
  const { scatter, designs, untold } = told.value
  expect(scatter.total.deviation).toBeCloseTo(Math.log(1.1), 9)
  expect(scatter.degreesOfFreedom).toBeCloseTo(2, 6)
  // The exact interval of s from three values: 0.5207 to 6.2847 times it (χ² with 2 degrees of freedom: 7.3778 and 0.050636).
  expect(scatter.total.low / scatter.total.deviation).toBeCloseTo(0.5207, 3)
  expect((scatter.total.high ?? 0) / scatter.total.deviation).toBeCloseTo(6.2847, 3)
  const [fresh] = designs
  const wanted = replicatesNeeded({ ...ask, difference: Math.log(1.1), repeatability: Math.log(1.1) })
  expect(fresh.replicates.replicates).toBe(wanted.replicates)
  // Power 0.80 at a difference of one standard deviation takes 17 each (standard tables of the two-sample t test).
  expect(fresh.replicates.replicates).toBe(17)
  expect(fresh.cautiousReplicates.replicates).toBeGreaterThan(17)
  expect(untold.map(({ why }) => why)).toContain('not known for every record')
})

test('days that move both samples alike cancel within blocks', () => {
  const shift = [0, 0.2, -0.2, 0.1]
  const wobble = [0.01, -0.01, 0.01, -0.01]
  const runs = shift.flatMap((day, i) =>
    ['A', 'B'].map((sample, s) =>
      stepsOf(
        [0.1, 0.1, 0.1].map((friction) => friction * Math.exp(day + (s === 0 ? wobble[i] : -wobble[i]))),
        {
          sample,
          blocks: { day: String(i), operator: 'MK', ballSet: null },
        },
      ),
    ),
  )
  const told = scatterHistory(runs, ask)
  if (!told.ok) throw new Error('no scatter')
  const [fresh, blocked] = told.value.designs
  expect(fresh.deviation).toBeGreaterThan(5 * blocked.deviation)
  expect(fresh.replicates.replicates).toBeGreaterThan(blocked.replicates.replicates)
  expect(told.value.untold).toContainEqual({ cause: 'operator', why: 'all records have the same' })
})

test('single records tell no scatter', () => {
  expect(scatterHistory([stepsOf([0.1]), stepsOf([0.1], { sample: 'other' })], ask)).toMatchObject({
    ok: false,
    problems: [{ kind: 'tooFewReplicates' }],
  })
})
