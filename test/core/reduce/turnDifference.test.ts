import { describe, expect, test } from 'vitest'
import { randomFrom } from '../../../src/core/numeric/index.ts'
import { recordTurnDifference, reduceRecord, turnDifference } from '../../../src/core/reduce/index.ts'
import { type SampledTurnSpot, sampleTurnSpot, simulateRecord } from '../../../src/core/rig/index.ts'

const full = 2 * Math.PI

/** Value by angle over whole turns, `perTurn` samples each, off the seams of the places. */
function rows(turns: number, perTurn: number, value: (angle: number, turn: number) => number) {
  const angle = Float64Array.from({ length: turns * perTurn }, (_, i) => ((i + 0.37) / perTurn) * full)
  return {
    pieces: () => [{ angle, value: angle.map((at) => value(at % full, at / full)) }],
    span: { from: 0, to: turns },
  }
}

describe('exact values', () => {
  test('a place that steps up after half of the turns: its change, its place and the turn', () => {
    const inSpot = (angle: number): boolean => angle > full / 4 && angle < full / 2
    const { pieces, span } = rows(
      60,
      144,
      (angle, turn) => 0.2 + 0.01 * Math.cos(angle) + (inSpot(angle) ? 4e-4 * Math.max(0, turn - 30) : 0),
    )
    const found = turnDifference(pieces, span, { columns: 36 })
    const spot = found?.spot
    expect(spot?.from).toBeCloseTo(full / 4, 6)
    expect(spot?.to).toBeCloseTo(full / 2, 6)
    // Late turns 40 to 59: the mean of 4e-4 (turn − 30) is 8e-3, about; the running mean over the turn rises by a quarter of it everywhere.
    expect(spot?.change).toBeGreaterThan(7.4e-3)
    expect(spot?.change).toBeLessThan(8.4e-3)
    expect(spot?.onset?.low).toBeLessThan(31)
    expect(spot?.onset?.high).toBeGreaterThan(29)
  })

  test.for(['shift', 'scale'] as const)('what changes everywhere is no spot (%s)', (levelling) => {
    const random = randomFrom(3)
    const { pieces, span } = rows(
      60,
      144,
      (angle, turn) => (0.2 + 0.01 * Math.cos(angle)) * (1 + 0.1 * Math.exp(-turn / 20)) + 1e-3 * random.normal(),
    )
    const found = turnDifference(pieces, span, { levelling })
    if (levelling === 'scale') expect(found?.spot).toBeNull()
    expect(found?.level).toBeLessThan(0)
  })

  test('a ripple that the samples meet at other places of a cell later on is no spot', () => {
    // 100.3 samples a turn walk slowly through the places.
    const angle = Float64Array.from({ length: 6000 }, (_, i) => ((i + 0.2) / 100.3) * full)
    const random = randomFrom(4)
    const value = angle.map((at) => 0.2 + 0.02 * Math.cos(at) + 2e-4 * random.normal())
    expect(turnDifference(() => [{ angle, value }], { from: 0, to: 59 }, {})?.spot).toBeNull()
  })

  test('fewer than three turns on a side are not compared, and bad options are refused', () => {
    const { pieces, span } = rows(6, 144, () => 0.2)
    expect(turnDifference(pieces, span, {})).toBeUndefined()
    expect(() => turnDifference(pieces, span, { columns: 4 })).toThrow(/8 to 360, got 4/)
    expect(() => turnDifference(pieces, span, { share: 0.7 })).toThrow(/at most 0.5, got 0.7/)
  })
})

describe('virtual records with a spot that wears through', () => {
  const drawn = Array.from({ length: 40 }, (_, i) => sampleTurnSpot(20261125, i))

  const differenceOf = (sample: SampledTurnSpot) => {
    const { channels } = simulateRecord(sample.run, sample.seed)
    const reduction = reduceRecord(channels, sample.setup)
    if (!reduction.ok) throw new Error('no reduction')
    return recordTurnDifference({ channels, setup: sample.setup, reduction: reduction.value }, 'friction')
  }

  test('large ones are found where they are', () => {
    const large = drawn.filter(({ run }) => (run.disturbances.wornSpot?.excess ?? 0) > 0.1)
    expect(large.length).toBeGreaterThan(3)
    for (const sample of large) {
      const { difference, remarks } = differenceOf(sample)
      const { spot } = difference ?? { spot: null }
      const apart =
        Math.abs(((spot?.at ?? 99) - (sample.run.disturbances.wornSpot?.angle ?? 0) + 3 * Math.PI) % full) - Math.PI
      expect(Math.abs(apart)).toBeLessThan((15 * Math.PI) / 180)
      expect(remarks.map(({ kind }) => kind)).toEqual(['wornSpot'])
    }
  })

  test('where nothing grows, hardly one is found', () => {
    const none = drawn.filter(({ spot }) => !spot)
    const alarms = none.filter((sample) => differenceOf(sample).remarks.length > 0).length
    // 5 % of about 13; three or more have a chance of 2 %.
    expect(alarms).toBeLessThan(3)
  })
})
