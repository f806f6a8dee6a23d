import { expect, test } from 'vitest'
import { reduceDefaults } from '../../../src/core/reduce/index.ts'
import { fixtureKindsWritten } from '../../../src/io/setup/fixtureKeys.ts'
import { readSetup, setupTemplate } from '../../../src/io/setup/index.ts'
import type { Key } from '../../../src/io/setup/keyKinds.ts'
import { setupKeys } from '../../../src/io/setup/setupKeys.ts'

const kinds = Object.entries(fixtureKindsWritten)

/** Switches on every key but the one that excludes another. */
const switchedOn = (text: string): string => text.replace(/^(\s*)#(?=["\w][^\n]*:)(?!slidingSpeed)/gm, '$1')

test.for(kinds)('%s: the starter file is a setup as it stands', ([, kind]) => {
  const read = readSetup(setupTemplate(kind), 'setup.yaml')
  expect(read.ok ? [] : read.problems).toEqual([])
  if (read.ok) {
    expect(read.value.setup.fixture.kind).toBe(kind)
    expect(read.value.setup.options).toEqual({})
  }
})

test.for(kinds)('%s: so it is with every key switched on, options at their defaults', ([, kind]) => {
  const read = readSetup(switchedOn(setupTemplate(kind)), 'setup.yaml')
  expect(read.ok ? [] : read.problems).toEqual([])
  if (!read.ok) return
  expect(read.value.setup.options).toEqual(reduceDefaults)
  expect(read.value.columns).toEqual({ 'M [mNm]': { channel: 'torque', unit: 'mN·m' } })
  expect(read.value.setup.liquid?.viscosityUncertainty).toBe(5e-5)
})

const names = (key: Key, kind: string): string[] => {
  if (key.is === 'variants') return names(key.variants[kind], kind)
  if (key.is !== 'section') return []
  return Object.entries(key.keys).flatMap(([name, inner]) => [name, ...names(inner, kind)])
}

test.for(kinds)('%s: the starter file names every key', ([written, kind]) => {
  const lines = setupTemplate(kind).split('\n')
  for (const name of names(setupKeys, written)) {
    expect(
      lines.some((line) => new RegExp(`^ *#?${name}:`).test(line)),
      name,
    ).toBe(true)
  }
})

test('it begins with the line that editors complete from', () => {
  expect(setupTemplate('ballOnBalls', '../s.json').split('\n')[0]).toBe('# yaml-language-server: $schema=../s.json')
})
