import { expect, test } from 'vitest'
import { compareSamples, type Replicate } from '../../../src/core/decide/index.ts'
import type { Ranking } from '../../../src/core/terms/index.ts'
import { replicate, replicates } from './replicates.ts'

function ranked(all: readonly Replicate[], rankAt?: number): Ranking {
  const outcome = compareSamples(all, { options: { draws: 400 }, rankAt })
  if (!outcome.ok || outcome.value.ranking === null) throw new Error('no ranking')
  return outcome.value.ranking
}

const four = [
  ...replicates('C', [1.3, 1.32, 1.28]),
  ...replicates('A', [1, 1.02, 0.98]),
  ...replicates('D', [1.29, 1.33, 1.31]),
  ...replicates('B', [0.97, 1.01, 0.99]),
]

test('samples in the order of their friction, with letters for those that cannot be told apart', () => {
  const { samples, sentence, method, by } = ranked(four)
  expect(samples.map(({ sample, letters }) => `${sample} ${letters}`)).toEqual(['B a', 'A a', 'C b', 'D b'])
  expect(sentence).toMatch(/from the most slippery on: B \(a\), A \(a\), C \(b\), D \(b\)/)
  expect(method).toMatch(/8 degrees of freedom \(exact\).*exact for equal numbers/)
  expect(by).toBe('mean friction from 0.5 to 200 mm/s, evenly over the logarithm of speed')
  expect(samples[0].low).toBeLessThan(samples[0].friction)
})

test('at one speed by name', () => {
  const rises = (speed: number): number => 0.1 + speed
  const all = [...replicates('A', [1, 1.01, 0.99], { law: rises }), ...replicates('B', [1.2, 1.21, 1.19])]
  const { by, samples } = ranked(all, 0.2)
  expect(by).toBe('friction at 200 mm/s')
  // At 200 mm/s A rubs 0.3, over the whole range less than B's 0.24.
  expect(samples.map(({ sample }) => sample)).toEqual(['B', 'A'])
  expect(ranked(all).samples.map(({ sample }) => sample)).toEqual(['A', 'B'])
})

test('days that move all samples together are taken out as random, and what was hidden shows', () => {
  const days = [0.9, 1, 1.12, 1.05]
  const wobble = { A: [1, 1.004, 0.996, 1.001], B: [1.03, 1.027, 1.032, 1.029] }
  const all = Object.entries(wobble).flatMap(([sample, levels]) =>
    levels.map((level, i) =>
      replicate(sample, i, {
        level: level * days[i],
        blocks: { day: `2026-11-0${i + 1}`, operator: null, ballSet: null },
      }),
    ),
  )
  const blocked = ranked(all)
  expect(blocked.method).toMatch(/^Mixed model by REML with day as random; degrees of freedom by Satterthwaite/)
  expect(blocked.samples.map(({ letters }) => letters)).toEqual(['a', 'b'])
  // A full table: its mean square between days has three degrees of freedom, the rest of the two samples three (closed form).
  expect(blocked.pairs[0].degreesOfFreedom).toBeCloseTo(3, 4)
  expect(blocked.scatter.map(({ cause }) => cause)).toEqual(['day', 'replicate'])
  expect(blocked.scatter[0].deviation).toBeGreaterThan(0.05)
  expect(blocked.scatter[1].deviation).toBeLessThan(0.01)
  const blind = ranked(all.map((one) => ({ ...one, blocks: { day: null, operator: null, ballSet: null } })))
  expect(blind.samples.map(({ letters }) => letters)).toEqual(['a', 'a'])
})

test('causes that the data cannot tell from samples or replicates are left out', () => {
  const block = (one: Replicate, blocks: Partial<Replicate['blocks']>): Replicate => ({
    ...one,
    blocks: { day: null, operator: null, ballSet: null, ...blocks },
  })
  const operatorOfSample = four.map((one) => block(one, { operator: one.sample }))
  const dayOfRecord = four.map((one) => block(one, { day: one.record }))
  const unknownOnce = four.map((one, i) => block(one, { ballSet: i === 4 ? null : String(i % 3) }))
  for (const all of [operatorOfSample, dayOfRecord, unknownOnce]) expect(ranked(all).scatter).toHaveLength(1)
  const together = four.map((one, i) => block(one, { day: `d${i % 3}`, operator: `o${i % 3}` }))
  expect(ranked(together).scatter.map(({ cause }) => cause)).toEqual(['day and operator together', 'replicate'])
})
