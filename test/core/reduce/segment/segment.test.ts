import { describe, expect, test } from 'vitest'
import { byPlateaus } from '../../../../src/core/reduce/segment/byPlateaus.ts'
import { bySpeedBins } from '../../../../src/core/reduce/segment/bySpeedBins.ts'
import { byStepColumn } from '../../../../src/core/reduce/segment/byStepColumn.ts'

const held = (...speeds: readonly number[]): Float64Array => {
  const out: number[] = []
  let now = 0
  for (const target of speeds) {
    for (let i = 0; i < 60; i++) {
      now += (target - now) * 0.35
      out.push(now)
    }
  }
  return Float64Array.from(out)
}

describe('plateaus of speed', () => {
  test.for([
    { name: 'up', speeds: [1, 1.6, 2.5, 4, 6.3, 10] },
    { name: 'up and down', speeds: [1, 2, 4, 2, 1] },
    { name: 'one', speeds: [3] },
  ])('$name: one stretch each, the transient with the plateau after it', ({ speeds }) => {
    const speed = held(...speeds)
    const { stretches, share } = byPlateaus(speed, 0.02, 10)
    expect(stretches.length).toBe(speeds.length)
    expect(stretches.map((s) => s.number)).toEqual(speeds.map((_, i) => i + 1))
    expect(stretches[0].from).toBe(0)
    expect(stretches.at(-1)?.to).toBe(speed.length)
    stretches.forEach((stretch, i) => {
      // A plateau may be known for settled a row or two after the next command.
      expect(Math.abs(stretch.from - 60 * i)).toBeLessThanOrEqual(2)
    })
    expect(share).toBeGreaterThan(0.5)
  })

  test('a ramp has none', () => {
    const ramp = Float64Array.from({ length: 400 }, (_, i) => 1.02 ** i)
    expect(byPlateaus(ramp, 0.02, 10).stretches).toEqual([])
  })
})

describe('bins of a ramp', () => {
  test('ten a decade over two decades, each a tenth of a decade wide', () => {
    const speed = Float64Array.from({ length: 2000 }, (_, i) => 10 ** (i / 1000))
    const bins = bySpeedBins(speed, 10, 10)
    expect(bins.length).toBe(20)
    for (const bin of bins) expect(bin.to - bin.from).toBe(100)
  })

  test('an up-and-down ramp gives bins for each direction', () => {
    const up = Array.from({ length: 500 }, (_, i) => 10 ** (i / 250))
    const bins = bySpeedBins(Float64Array.from([...up, ...up.toReversed()]), 5, 5)
    expect(bins.length).toBe(19)
    expect(bins.at(-1)?.to).toBe(1000)
  })

  test('rows at rest belong to the bin before them, and no bin is short', () => {
    const bins = bySpeedBins(Float64Array.from([0, 0, 1, 1, 1, 100, 100, 100, 1000]), 5, 3)
    expect(bins.map(({ from, to }) => [from, to])).toEqual([
      [0, 5],
      [5, 9],
    ])
  })
})

describe('step column', () => {
  const read = (values: readonly number[]) => (from: number, to: number) => Float64Array.from(values).subarray(from, to)
  test.for([
    {
      values: [1, 1, 2, 2, 2],
      want: [
        [1, 0, 2],
        [2, 2, 5],
      ],
    },
    {
      values: [7, Number.NaN, 7, 8],
      want: [
        [7, 0, 3],
        [8, 3, 4],
      ],
    },
    {
      values: [1, 2, 1],
      want: [
        [1, 0, 1],
        [2, 1, 2],
        [1, 2, 3],
      ],
    },
    { values: [Number.NaN, Number.NaN], want: [[1, 0, 2]] },
    { values: [], want: [] },
  ])('$values', ({ values, want }) => {
    expect(byStepColumn(read(values), values.length).map((s) => [s.number, s.from, s.to])).toEqual(want)
  })
})
