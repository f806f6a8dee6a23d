import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readRecord } from '../../../src/io/index.ts'

const data = join(import.meta.dirname, '..', '..', 'data')
const everything = ['time', 'step', 'angularVelocity', 'torque', 'axialForce', 'angle', 'gap', 'temperature']

/** What each file holds was counted in the file itself (rows, headings); first and last rows are read off and turned to SI by hand. */
const records: {
  file: string
  rows: number
  names: readonly string[]
  repeated: number
  first: Record<string, number>
  last: Record<string, number>
}[] = [
  {
    file: 'varnish-a-1.csv',
    rows: 1100,
    names: everything,
    repeated: 0,
    first: { time: 0.1, angularVelocity: 0.01098933, torque: 0.02015115, gap: 1.075786e-6, temperature: 298.16089 },
    last: { time: 110, step: 11, angle: 292.7059 },
  },
  {
    file: 'lost-contact.csv',
    rows: 2160,
    names: everything.filter((name) => name !== 'step' && name !== 'angle'),
    repeated: 0,
    first: { time: 0.1, torque: 0.0131867 },
    last: { time: 216, angularVelocity: 20 },
  },
  {
    file: 'near-torque-floor.csv',
    rows: 4320,
    names: everything,
    repeated: 35,
    first: { torque: 1.169081e-5, axialForce: -0.03189827 },
    last: { step: 36, angle: 1273.626 },
  },
  {
    file: 'oat-drink-warm.csv',
    rows: 5040,
    names: everything,
    repeated: 0,
    first: {
      torque: 5.025373e-6,
      angularVelocity: (0.1402281 * 2 * Math.PI) / 60,
      gap: 2.001021e-3,
      angle: 1.468466e-3,
    },
    last: { time: 504, step: 42, axialForce: 3.013171 },
  },
  {
    file: 'up-and-down.csv',
    rows: 1920,
    names: everything,
    repeated: 0,
    first: { torque: 3.2764e-3, temperature: 298.16469 },
    last: { time: 192, step: 16, angle: 300.6711 },
  },
  {
    file: 'ring-grease.csv',
    rows: 1560,
    names: everything,
    repeated: 0,
    first: {
      time: 0.001666667 * 60,
      torque: 16559.74e-6,
      axialForce: 10.00096,
      gap: 1.256973e-6,
      angle: (0.1349234 * Math.PI) / 180,
    },
    last: { time: 2.6 * 60, step: 13 },
  },
]

test.for(records)('$file is read without help', async ({ file, rows, names, repeated, first, last }) => {
  const outcome = await readRecord(join(data, 'records', file))
  if (!outcome.ok) throw new Error(outcome.problems[0].what)
  const { value } = outcome
  expect(value.rows).toBe(rows)
  expect(value.channels.names).toEqual(names)
  expect(value.remarks).toEqual([])
  expect(value.dialect.repeatedHeadings).toBe(repeated)
  for (const [at, want] of [
    [0, first],
    [rows - 1, last],
  ] as const) {
    for (const name of value.channels.names) {
      if (want[name] !== undefined) expect(value.channels.read(name, at, at + 1)[0]).toBeCloseTo(want[name], 12)
    }
  }
})

describe('real measured files without units', () => {
  // Means as the README beside the files gives them (CC BY 4.0, their source is named there).
  test.for([
    ['pin-disc-base-a.txt', 460, 20.9312, 19.8334],
    ['pin-disc-base-b.txt', 460, 19.2176, 19.8919],
    ['pin-disc-2p5-a.txt', 427, 26.9469, 27.6029],
  ] as [string, number, number, number][])('%s', async ([file, rows, all, secondHalf]) => {
    const path = join(data, 'open-data', file)
    const asked = await readRecord(path)
    expect(asked.ok ? [] : asked.problems.map(({ kind }) => kind)).toEqual(['unitMissing', 'unitMissing'])
    const outcome = await readRecord(new Uint8Array(readFileSync(path)), {
      columns: { TIME: { unit: 's' }, FF: { unit: 'N' } },
    })
    if (!outcome.ok) throw new Error(outcome.problems[0].what)
    const { channels } = outcome.value
    expect(channels.rows).toBe(rows)
    expect(outcome.value.remarks).toEqual([])
    const mean = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length
    expect(mean(channels.read('frictionForce', 0, rows))).toBeCloseTo(all, 4)
    expect(mean(channels.read('frictionForce', rows >> 1, rows))).toBeCloseTo(secondHalf, 4)
  })
})
