import fc from 'fast-check'
import { expect, test } from 'vitest'
import { channelsInMemory } from '../../../src/core/terms/index.ts'
import {
  minMaxPyramid,
  parquetToPyramid,
  pyramidBase,
  pyramidFactor,
  pyramidToParquet,
} from '../../../src/io/columns/index.ts'

/** Straight from the meaning: extremes of a block without those that are no numbers. */
function extremes(values: Float64Array, from: number, to: number): [number, number] {
  const numbers = [...values.subarray(from, to)].filter((value) => !Number.isNaN(value))
  return numbers.length === 0 ? [Number.NaN, Number.NaN] : [Math.min(...numbers), Math.max(...numbers)]
}

test('each block of each level holds the extremes of its rows', () => {
  const value = fc.oneof(fc.double({ noNaN: true }), fc.constant(Number.NaN))
  const stretch = fc.record({ value, rows: fc.integer({ min: 1, max: 900 }) })
  fc.assert(
    fc.property(fc.array(stretch, { minLength: 1, maxLength: 12 }), (stretches) => {
      const torque = Float64Array.from(stretches.flatMap(({ value, rows }) => Array<number>(rows).fill(value)))
      const { levels, rows } = minMaxPyramid(channelsInMemory({ torque }))
      expect(rows).toBe(torque.length)
      for (const { blockRows, blocks, min, max } of levels) {
        expect(blocks).toBe(Math.ceil(rows / blockRows))
        for (let block = 0; block < blocks; block++) {
          const [low, high] = extremes(torque, block * blockRows, Math.min((block + 1) * blockRows, rows))
          // Adding 0 makes 0 and −0 one: which of two equal values is the smaller has no answer.
          expect([(min.torque?.[block] ?? 1) + 0, (max.torque?.[block] ?? 1) + 0]).toEqual([low + 0, high + 0])
        }
      }
    }),
    { numRuns: 40 },
  )
})

test.for([
  { rows: 0, blocks: [] },
  { rows: 1, blocks: [1] },
  { rows: 256, blocks: [1] },
  { rows: 257, blocks: [2] },
  { rows: 1025, blocks: [5, 2] },
  { rows: 70_000, blocks: [274, 69, 18, 5, 2] },
])('$rows rows make levels of $blocks blocks', ({ rows, blocks }) => {
  const { levels } = minMaxPyramid(channelsInMemory({ time: new Float64Array(rows) }))
  expect(levels.map((level) => level.blocks)).toEqual(blocks)
  expect(levels.map((level) => level.blockRows)).toEqual(blocks.map((_, i) => pyramidBase * pyramidFactor ** i))
})

test('a pyramid comes back from its file', async () => {
  const time = Float64Array.from({ length: 5000 }, (_, i) => i)
  const gap = Float64Array.from({ length: 5000 }, (_, i) => (i < 600 ? Number.NaN : Math.cos(i)))
  const pyramid = minMaxPyramid(channelsInMemory({ time, gap }))
  expect(await parquetToPyramid(pyramidToParquet(pyramid))).toEqual(pyramid)
  const none = minMaxPyramid(channelsInMemory({ time: new Float64Array(0) }))
  expect(await parquetToPyramid(pyramidToParquet(none))).toEqual(none)
})
