import fc from 'fast-check'
import { expect, test } from 'vitest'
import { identifierFrom } from '../../../src/bench/lab/identifierFrom.ts'

test.for([
  ['Drawer runners', 'drawer-runners'],
  ['drawer-runners', 'drawer-runners'],
  ['Öl 3, weiß', 'ol-3-weiss'],
  ['  Lacquer B (60 µm) ', 'lacquer-b-60-m'],
  ['…', ''],
  ['a'.repeat(80), 'a'.repeat(64)],
  [`${'a'.repeat(63)} b`, 'a'.repeat(63)],
])('%s is %s', ([name, id]) => expect(identifierFrom(name)).toBe(id))

test('whatever comes out may be an id, and is its own id', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 90 }), (name) => {
      const id = identifierFrom(name)
      return (id === '' || /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/.test(id)) && identifierFrom(id) === id
    }),
  )
})
