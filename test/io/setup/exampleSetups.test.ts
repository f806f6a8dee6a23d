import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { fixtureGeometry } from '../../../src/core/fixture/index.ts'
import type { Setup } from '../../../src/core/terms/index.ts'
import { readSetup } from '../../../src/io/setup/index.ts'

const data = new URL('../../data/', import.meta.url)

function setupOf(path: string): { setup: Setup; columns: object } {
  const read = readSetup(readFileSync(new URL(path, data), 'utf8'), path)
  if (!read.ok) throw new Error(read.problems.map(({ what, mend }) => `${what} ${mend}`).join('\n'))
  return read.value
}

const records = readdirSync(new URL('records/', data))
  .filter((name) => name.endsWith('.csv'))
  .map((name) => name.replace('.csv', ''))

test('there are records to check', () => expect(records.length).toBeGreaterThanOrEqual(19))

/** What went into each record stands in its truth file. */
test.for(records)('%s: the setup says what the record was made with', (name) => {
  const truth = JSON.parse(readFileSync(new URL(`records/${name}.truth.json`, data), 'utf8'))
  const { setup, columns } = setupOf(`records/${name.startsWith('varnish') ? 'varnish' : name}.setup.yaml`)
  const geometry = fixtureGeometry(setup.fixture)
  expect(geometry.lever).toBeCloseTo(truth.lever, 15)
  expect(geometry.loadFactor).toBeCloseTo(truth.load_factor, 14)
  expect(setup.run.axialForce).toBe(truth.spec.force)
  expect(setup.run.temperature).toBeCloseTo(truth.spec.temperature + 273.15, 10)
  expect(setup.rig.inertia ?? 0).toBe(truth.spec.inertia)
  expect(setup.rig.torque.ceiling ?? null).toBe(truth.spec.saturate)
  expect([setup.rig.torque.scaleAccuracy, setup.rig.axialForce.scaleAccuracy]).toEqual([0, 0])
  expect(columns).toEqual({})
})

test('the torque floor follows from the noise: twenty standard uncertainties of a step mean', () => {
  const { noise, dwell, rate } = JSON.parse(
    readFileSync(new URL('records/near-torque-floor.truth.json', data), 'utf8'),
  ).spec
  // Autocorrelation time of an AR(1) series: (1 + φ)/(1 − φ).
  const uncertainty = noise.torque * Math.sqrt((1 + noise.ar) / (1 - noise.ar) / (dwell * rate))
  const { setup } = setupOf('records/near-torque-floor.setup.yaml')
  expect(Math.abs((setup.rig.torque.floor ?? 0) / (20 * uncertainty) - 1)).toBeLessThan(0.05)
})

test.for([
  ['pin-disc-base', 0.07],
  ['pin-disc-2p5', 0.065],
] as const)('%s: load, speed and units that the file has not', ([name, radius]) => {
  const { setup, columns } = setupOf(`open-data/${name}.setup.yaml`)
  expect(fixtureGeometry(setup.fixture).lever).toBe(radius)
  expect(setup.run.axialForce).toBe(50)
  // π·d·n is 2.40 m/s for each, by the notice of the data.
  expect((setup.run.angularVelocity ?? 0) * radius).toBeCloseTo(2.4, 2)
  expect(columns).toEqual({ TIME: { channel: 'time', unit: 's' }, FF: { channel: 'frictionForce', unit: 'N' } })
})
