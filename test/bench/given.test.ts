import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { type Given, givenFromOrigin, givenInOrigin, nothingGiven } from '../../src/bench/given.ts'
import { reduceSource } from '../../src/bench/reduceSource.ts'
import { readSetup } from '../../src/io/index.ts'

const outside = { now: () => new Date(0), progress: () => {}, stop: { aborted: false }, program: 'kufe 0.0.0-test' }

const given: Given = {
  reading: {
    columns: { Torque: { unit: 'mN·m' }, 'Remark 1': { channel: null } },
    separator: ';',
    mapping: { name: 'workshop rig', columns: { Kraft: { channel: 'axialForce' } } },
  },
  options: { bandDraws: 100 },
}

test('nothing said leaves no trace in the origin', () => {
  expect(givenInOrigin(nothingGiven)).toBeUndefined()
  expect(
    givenInOrigin({ reading: { columns: {}, separator: undefined }, options: { seed: undefined } }),
  ).toBeUndefined()
  expect(givenFromOrigin({ seed: 1 })).toEqual(nothingGiven)
})

test('what was said comes back from the JSON of an origin as it was', () => {
  const options = JSON.parse(JSON.stringify({ seed: 1, given: givenInOrigin(given) }))
  expect(givenFromOrigin(options)).toEqual(given)
})

test('names stand in one order, whatever order they were said in', () => {
  const { columns, ...reading } = given.reading
  const other = {
    options: given.options,
    reading: { ...reading, columns: Object.fromEntries(Object.entries(columns ?? {}).reverse()) },
  }
  expect(JSON.stringify(givenInOrigin(other))).toBe(JSON.stringify(givenInOrigin(given)))
})

test('the origin of a result says all that its recomputation needs', async () => {
  const bytes = new Uint8Array(readFileSync('examples/lacquer/wax.csv'))
  const setup = readSetup(readFileSync('examples/lacquer/wax.setup.yaml', 'utf8'), 'wax.setup.yaml')
  if (!setup.ok) throw new Error('the demo has a good setup')
  const from = { source: bytes, file: 'wax.csv', setup: setup.value }
  const said: Given = {
    reading: { separator: ',', columns: { '#1': { channel: 'time' } } },
    options: { bandDraws: 123 },
  }
  const first = await reduceSource({ ...from, given: said }, outside)
  if (!first.ok) throw new Error('the demo can be reduced')
  expect(first.value.options.bandDraws).toBe(123)
  const again = await reduceSource({ ...from, given: givenFromOrigin(first.value.origin.options) }, outside)
  expect(again).toEqual(first)
  const plain = await reduceSource({ ...from, given: nothingGiven }, outside)
  expect(plain.ok && plain.value.origin.options).not.toEqual(first.value.origin.options)
})
