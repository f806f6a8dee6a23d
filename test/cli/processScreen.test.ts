import { expect, test } from 'vitest'
import { hasUnicode } from '../../src/cli/processScreen.ts'

test.for([
  { env: {}, want: true },
  { env: { LANG: 'de_DE.UTF-8' }, want: true },
  { env: { LANG: 'C' }, want: false },
  { env: { LANG: 'de_DE.UTF-8', LC_ALL: 'C' }, want: false },
  { env: { LANG: 'C', LC_CTYPE: 'C.utf8' }, want: true },
  { env: { TERM: 'linux', LANG: 'de_DE.UTF-8' }, want: false },
])('Unicode with $env: $want', ({ env, want }) => expect(hasUnicode(env)).toBe(want))
