import { describe, expect, test } from 'vitest'
import { partialTurnBias, sweepSpeeds, sweepTime, turnTime } from '../../../src/core/plan/index.ts'

const oneTurn = { turns: 1, least: 0, most: Number.POSITIVE_INFINITY }

describe('turn budget on a track of 15 mm (2πr/v, worked out by hand)', () => {
  test.for([
    [1e-3, 94],
    [1e-4, 942],
    [1e-5, 9425],
  ] as const)('one turn at %s m/s takes %s s', ([speed, seconds]) => {
    expect(Math.round(turnTime(speed, 0.015))).toBe(seconds)
  })

  test.for([
    { slowest: 1e-3, minutes: 7.6 },
    { slowest: 1e-4, minutes: 1.3 * 60 },
    { slowest: 1e-5, minutes: 12.7 * 60 },
  ])('ten points a decade, one whole turn each, from $slowest m/s to 1 m/s', ({ slowest, minutes }) => {
    const seconds = sweepTime({ slowest, fastest: 1, perDecade: 10 }, 0.015, oneTurn)
    // The printed figures have two digits, the last has three.
    expect(Math.abs(seconds / 60 / minutes - 1)).toBeLessThan(0.025)
  })

  test('the sum is geometric', () => {
    const seconds = sweepTime({ slowest: 1e-3, fastest: 1, perDecade: 10 }, 0.015, oneTurn)
    const closed = (turnTime(1e-3, 0.015) * (1 - 10 ** -3.1)) / (1 - 10 ** -0.1)
    expect(seconds / closed).toBeCloseTo(1, 12)
  })
})

// |sin πN|/(πN), closed form to three digits.
test.for([
  [0.05, 0.996],
  [0.1, 0.984],
  [0.25, 0.9],
  [0.5, 0.637],
  [0.75, 0.3],
  [0.9, 0.109],
  [1, 0],
  [1.25, 0.18],
  [2.5, 0.127],
] as const)('%s of a turn leaves %s of the ripple', ([turns, share]) => {
  expect(partialTurnBias(turns)).toBeCloseTo(share, 3)
})

test('a sweep begins and ends where it was told', () => {
  const speeds = sweepSpeeds({ slowest: 2e-4, fastest: 0.3, perDecade: 5 })
  expect(speeds[0]).toBe(2e-4)
  expect(speeds[speeds.length - 1]).toBe(0.3)
  expect(sweepSpeeds({ slowest: 0.1, fastest: 0.1, perDecade: 5 })).toEqual([0.1])
  expect(() => sweepSpeeds({ slowest: -1, fastest: 1, perDecade: 5 })).toThrow(RangeError)
})
