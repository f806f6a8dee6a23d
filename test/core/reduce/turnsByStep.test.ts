import fc from 'fast-check'
import { expect, test } from 'vitest'
import { turnsByStep } from '../../../src/core/reduce/turnsByStep.ts'

test.for([
  {
    name: 'a row a turn where there is room',
    steps: [{ number: 1, turn: 0, samples: 1e4 }],
    span: { from: 0, to: 3 },
    rows: 200,
    want: [0, 1, 2, 3],
  },
  {
    name: 'slow steps within one turn share a row, a fast step does not crowd them out',
    steps: [
      { number: 1, turn: 0, samples: 1e4 },
      { number: 2, turn: 0.4, samples: 1e4 },
      { number: 3, turn: 1.5, samples: 1e4 },
      { number: 4, turn: 3.2, samples: 1e4 },
    ],
    span: { from: 0, to: 1003 },
    rows: 6,
    want: [0, 1, 2, 3, 336, 669, 1003],
  },
  {
    name: 'no more rows than samples fill: 288 of them are two rows of 72 cells with two each',
    steps: [{ number: 1, turn: 0, samples: 288 }],
    span: { from: 0, to: 10 },
    rows: 200,
    want: [0, 5, 10],
  },
  {
    name: 'more steps than rows: equally many turns',
    steps: [0, 1, 2, 3, 4, 5].map((turn) => ({ number: turn, turn, samples: 1e4 })),
    span: { from: 0, to: 6 },
    rows: 3,
    want: [0, 2, 4, 6],
  },
])('by hand: $name', ({ steps, span, rows, want }) => {
  expect(turnsByStep(steps, span, { columns: 72, rows })).toEqual(want)
})

test('rows rise from the first turn to the last and are never too many', () => {
  const step = fc.record({
    number: fc.nat(),
    turn: fc.double({ min: -100, max: 1000, noNaN: true }),
    samples: fc.integer({ min: 1, max: 100_000 }),
  })
  const span = fc.tuple(fc.integer({ min: -100, max: 900 }), fc.integer({ min: 1, max: 2000 }))
  fc.assert(
    fc.property(
      fc.array(step, { maxLength: 40 }),
      span,
      fc.integer({ min: 1, max: 200 }),
      (steps, [from, turns], rows) => {
        const edges = turnsByStep(steps, { from, to: from + turns }, { columns: 72, rows })
        expect(edges.length - 1).toBeLessThanOrEqual(rows)
        expect(edges[0]).toBe(from)
        expect(edges[edges.length - 1]).toBeGreaterThanOrEqual(from + turns)
        for (const [index, edge] of edges.slice(1).entries()) expect(edge).toBeGreaterThan(edges[index])
      },
    ),
  )
})
