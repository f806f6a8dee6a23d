import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { traceOf } from '../../../src/bench/serve/index.ts'
import { envelopeOf, Span } from '../../../src/bench/serve/trace/envelope.ts'
import type { HeldColumns } from '../../../src/bench/serve/trace/heldColumns.ts'

const room = (length: number): Float64Array => new Float64Array(length)
const numbers = fc.array(
  fc.oneof(
    { weight: 9, arbitrary: fc.double({ noNaN: true, min: -1e9, max: 1e9 }) },
    { weight: 1, arbitrary: fc.constant(Number.NaN) },
  ),
  { minLength: 1, maxLength: 3000 },
)

const plain = (values: readonly number[]): [number, number] => {
  const known = values.filter((value) => !Number.isNaN(value))
  return known.length === 0
    ? [Number.NaN, Number.NaN]
    : [known.reduce((a, b) => Math.min(a, b)), known.reduce((a, b) => Math.max(a, b))]
}

test('smallest and largest of any stretch, as looking at every row finds them', () => {
  fc.assert(
    fc.property(numbers, fc.nat(3000), fc.nat(3000), (values, a, b) => {
      const [from, to] = [Math.min(a, b, values.length), Math.min(Math.max(a, b), values.length)]
      const span = new Span()
      span.take(envelopeOf(Float64Array.from(values), room), from, to)
      expect([span.low, span.high]).toEqual(plain(values.slice(from, to)))
    }),
  )
})

/** Rows that are a hundredth of a second apart. */
function held(values: readonly number[]): HeldColumns {
  const time = Float64Array.from(values, (_, i) => i / 100)
  const channels = { torque: envelopeOf(Float64Array.from(values), room) }
  return { record: '', result: '', rows: values.length, time, channels, bytes: 0 }
}

describe('a stretch in so many columns', () => {
  test('each column has the rows of its share of the time, and together they have all', () => {
    fc.assert(
      fc.property(numbers, fc.integer({ min: 1, max: 200 }), (values, pixels) => {
        const trace = traceOf(held(values), { pixels })
        const { min, max } = trace.columns.torque
        expect(min).toHaveLength(pixels)
        const whole = plain(values)
        expect(plain(min.map((value) => value ?? Number.NaN))[0]).toEqual(whole[0])
        expect(plain(max.map((value) => value ?? Number.NaN))[1]).toEqual(whole[1])
        expect(trace.inside).toBe(values.length)
      }),
    )
  })

  test('known places: eight rows in four columns, a gap stays a gap', () => {
    const trace = traceOf(held([1, 2, 3, 4, Number.NaN, Number.NaN, 7, 8]), { pixels: 4 })
    expect(trace.columns.torque).toEqual({ min: [1, 3, null, 7], max: [2, 4, null, 8] })
    expect(trace.exact?.values.torque).toEqual([1, 2, 3, 4, null, null, 7, 8])
    expect(trace.record).toEqual([0, 0.07])
  })

  test('a part, and what lies outside the record', () => {
    const some = held(Array.from({ length: 1000 }, (_, i) => i))
    const part = traceOf(some, { from: 2, to: 2.99, pixels: 10 })
    expect(part.inside).toBe(100)
    expect(part.columns.torque.min[0]).toBe(200)
    expect(part.columns.torque.max[9]).toBe(299)
    const outside = traceOf(some, { from: 50, to: 60, pixels: 5 })
    expect(outside).toMatchObject({ inside: 0, columns: { torque: { min: [null, null, null, null, null] } } })
    expect(traceOf(some, { pixels: 10 }).exact).toBeNull()
    expect(Object.keys(traceOf(some, { pixels: 10, channels: ['gap'] }).columns)).toEqual([])
  })
})
