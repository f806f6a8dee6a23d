import fc from 'fast-check'
import { expect, test } from 'vitest'
import { runOrder } from '../../../src/core/plan/index.ts'

const asked = {
  samples: ['A', 'B', 'C'],
  replicates: 5,
  runsPerDay: 8,
  runsPerBallSet: 2,
  checkStandard: 'reference oil',
  seed: 7,
}

test('the same seed gives the same order, another seed another', () => {
  expect(runOrder(asked)).toEqual(runOrder(asked))
  expect(runOrder({ ...asked, seed: 8 })).not.toEqual(runOrder(asked))
})

test('every day opens and closes with the check standard and holds no more runs than it may', () => {
  const runs = runOrder(asked)
  for (const day of new Set(runs.map((run) => run.day))) {
    const of = runs.filter((run) => run.day === day)
    expect(of.length).toBeLessThanOrEqual(asked.runsPerDay)
    expect(of[0].kind).toBe('checkStandard')
    expect(of[of.length - 1].kind).toBe('checkStandard')
  }
})

test('blocks are complete, ball sets bear no more than they may, all replicates are there', () => {
  fc.assert(
    fc.property(
      fc.record({
        count: fc.integer({ min: 1, max: 6 }),
        replicates: fc.integer({ min: 1, max: 8 }),
        runsPerDay: fc.integer({ min: 3, max: 12 }),
        runsPerBallSet: fc.integer({ min: 1, max: 4 }),
        seed: fc.integer({ min: 0, max: 1e6 }),
        check: fc.boolean(),
      }),
      ({ count, check, ...rest }) => {
        const samples = ['A', 'B', 'C', 'D', 'E', 'F'].slice(0, count)
        const runs = runOrder({ ...rest, samples, ...(check ? { checkStandard: 'oil' } : {}) })
        const own = runs.filter((run) => run.kind === 'sample')
        expect(own).toHaveLength(count * rest.replicates)
        for (let block = 1; block <= rest.replicates; block++) {
          expect(
            own
              .filter((run) => run.block === block)
              .map((run) => run.sample)
              .sort(),
          ).toEqual(samples)
        }
        for (const set of new Set(own.map((run) => run.ballSet))) {
          expect(own.filter((run) => run.ballSet === set).length).toBeLessThanOrEqual(rest.runsPerBallSet)
        }
        expect(runs.map((run) => run.run)).toEqual(runs.map((_, i) => i + 1))
      },
    ),
  )
})

test('every order comes up about as often as another', () => {
  const first = Array.from({ length: 600 }, (_, seed) => {
    const runs = runOrder({ samples: ['A', 'B', 'C'], replicates: 1, runsPerDay: 9, runsPerBallSet: 1, seed })
    return runs.map((run) => run.sample).join('')
  })
  // Six orders, 100 each; 40 is over four standard deviations off.
  for (const order of ['ABC', 'ACB', 'BAC', 'BCA', 'CAB', 'CBA']) {
    expect(Math.abs(first.filter((one) => one === order).length - 100)).toBeLessThan(40)
  }
})

test.for([{ samples: [] }, { samples: ['A', 'A'] }, { replicates: 0 }, { runsPerDay: 1.5 }])('refuses %o', (wrong) => {
  expect(() => runOrder({ ...asked, ...wrong })).toThrow(RangeError)
})
