import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readSetup, writeSetup } from '../../../src/io/setup/index.ts'
import { anyFixture, anySetup, withoutUndefined } from './anySetup.ts'

test('written and read back, a setup is the same, number for number', () => {
  fc.assert(
    fc.property(anySetup, (setup) => {
      const text = writeSetup(setup, { heading: ['made up'], schema: 'setup.schema.json' })
      const read = readSetup(text, 'setup.yaml')
      expect(read.ok ? [] : read.problems).toEqual([])
      if (read.ok) expect(read.value.setup).toEqual(setup)
    }),
    { numRuns: 300 },
  )
})

test('every kind of fixture keeps each of its fields', () => {
  const seen = new Set<string>()
  fc.assert(
    fc.property(anySetup, anyFixture, (setup, fixture) => {
      seen.add(fixture.kind)
      const read = readSetup(writeSetup({ ...setup, fixture }), 'setup.yaml')
      if (read.ok) expect(read.value.setup.fixture).toEqual(withoutUndefined(fixture))
      else expect(read.problems).toEqual([])
    }),
    { numRuns: 200 },
  )
  expect(seen.size).toBe(6)
})

test('answers on columns come back whatever the heading', () => {
  const headings = ['n [1/min]', 'FF', '  M', 'true', '- x', '"T"', '#', 'a: b', '__proto__', 'toString', 'µ']
  const columns = Object.fromEntries(headings.map((heading) => [heading, { unit: 'N' }]))
  Object.defineProperty(columns, '__proto__', { value: { unit: 'N' }, enumerable: true })
  const [setup] = fc.sample(anySetup, 1)
  const read = readSetup(writeSetup(setup, { columns }), 'setup.yaml')
  expect(read.ok ? Object.keys(read.value.columns) : read.problems).toEqual(Object.keys(columns))
})

test('a column left aside stays aside', () => {
  const [setup] = fc.sample(anySetup, 1)
  const columns = { M: { channel: 'torque', unit: 'mN·m' }, M2: { channel: 'ignore' } } as const
  const read = readSetup(writeSetup(setup, { columns }), 'setup.yaml')
  expect(read.ok && read.value.columns).toEqual(columns)
})

test('equal setups give equal text, and the text its own checksum', () => {
  const [setup] = fc.sample(anySetup, 1)
  expect(writeSetup(setup)).toBe(writeSetup(structuredClone(setup)))
  const read = readSetup('', 'empty.yaml')
  expect(read.ok).toBe(false)
})
