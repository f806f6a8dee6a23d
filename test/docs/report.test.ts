import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { itemWords } from '../../src/report/completeness/itemWords.ts'

test('docs/report.md lists every note with its item', () => {
  const rows = [...readFileSync('docs/report.md', 'utf8').matchAll(/^\| `(\w+)` \| (.+) \|$/gm)]
  expect(rows.map(([, key, item]) => [key, item])).toEqual(Object.entries(itemWords))
})
