import { expect, test } from 'vitest'
import { identifierOf } from '../../../../src/web/stations/lab/identifierOf.ts'

test.for([
  ['Lacquer A, 60 µm', 'lacquer-a-60-m'],
  ['Öl für Läufer', 'ol-fur-laufer'],
  ['  --x--  ', 'x'],
  ['../../etc/passwd', 'etc-passwd'],
  ['<b>', 'b'],
  ['硅油', 'without-letters'],
])('%s becomes %s', ([name, identifier]) => {
  expect(identifierOf(name)).toBe(identifier)
  expect(identifierOf(name)).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/)
})

test('a long name is cut, not at a hyphen', () => {
  const cut = identifierOf(`${'a'.repeat(59)}-${'b'.repeat(60)}`)
  expect(cut).toBe('a'.repeat(59))
})
