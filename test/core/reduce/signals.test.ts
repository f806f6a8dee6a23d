import { describe, expect, test } from 'vitest'
import { fixtureGeometry } from '../../../src/core/fixture/index.ts'
import { signalSource } from '../../../src/core/reduce/signals.ts'
import { type Channels, channelsInMemory, type Setup } from '../../../src/core/terms/index.ts'
import { threeBalls } from './virtualRuns.ts'

const rows = 40_000
const column = (value: (i: number) => number) => Float64Array.from({ length: rows }, (_, i) => value(i))
const columns = {
  time: column((i) => 0.01 * i),
  slidingSpeed: column((i) => 0.001 * (1 + (i % 7))),
  frictionForce: column((i) => 2 + Math.sin(i)),
  axialForce: column((i) => 5 + 0.1 * Math.cos(i)),
  gap: column((i) => 1e-6 * i),
}
const inMemory = channelsInMemory(columns)
/** As a reader gives channels that lie in a file: into arrays that are used again. */
const inFile: Channels = {
  ...inMemory,
  readInto: (name, from, out) => out.set(inMemory.read(name, from, from + out.length)),
}

const setup: Setup = {
  rig: { name: 'virtual rig', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
  fixture: threeBalls,
  pair: { upper: { name: 'ball' }, lower: { name: 'plate' } },
  run: {},
  options: {},
}
const geometry = fixtureGeometry(threeBalls)

describe('pages of signals', () => {
  test.for([
    ['in memory', inMemory],
    ['in a file', inFile],
  ] as const)('hold what the signals hold, %s', ([, channels]) => {
    const source = signalSource(channels, setup, geometry)
    const whole = source.signals(100, 39_000)
    let row = 100
    for (const page of source.pages(100, 39_000)) {
      expect(page.from).toBe(row)
      for (const name of ['time', 'torque', 'axialForce', 'angularVelocity', 'angle', 'gap'] as const) {
        expect(page[name]).toEqual(whole[name]?.subarray(row - 100, row - 100 + page.rows))
      }
      expect(page.temperature).toBeNull()
      row += page.rows
    }
    expect(row).toBe(39_000)
    expect(whole.torque[0]).toBe(columns.frictionForce[100] * geometry.lever)
    expect(whole.angularVelocity[5]).toBe(columns.slidingSpeed[105] / geometry.lever)
  })

  test('do not write into the record', () => {
    const source = signalSource(inMemory, setup, geometry)
    const before = columns.slidingSpeed.slice()
    for (const page of source.pages(0, rows)) expect(page.angularVelocity).toHaveLength(page.rows)
    expect(columns.slidingSpeed).toEqual(before)
  })
})
