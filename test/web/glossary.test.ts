import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { remarkEntries } from '../../scripts/remarkEntries.ts'
import { remarkKinds } from '../../src/core/terms/index.ts'
import { words } from '../../src/web/glossary/words.ts'

const source = (path: string): string => readFileSync(new URL(`../../src/web/${path}`, import.meta.url), 'utf8')

test('the remarks of the glossary are those of docs/remarks.md; node scripts/remarkEntries.ts writes them anew', () => {
  expect(JSON.parse(source('glossary/remarkEntries.json'))).toEqual(remarkEntries())
})

test('every remark is a word with meaning, limit and what to do', () => {
  for (const kind of remarkKinds) {
    const word = words.find(({ key }) => key === kind)
    expect(word?.meaning.length, kind).toBeGreaterThan(20)
    expect(word?.source, kind).toMatch(/^Limit: .{5}/)
  }
})

test('keys differ, and each word names its source', () => {
  expect(new Set(words.map(({ key }) => key)).size).toBe(words.length)
  expect(words.filter(({ source: from }) => from.trim() === '')).toEqual([])
})

test('every word that a page links to is there', () => {
  const files = readdirSync(new URL('../../src/web', import.meta.url), { recursive: true, encoding: 'utf8' })
  const text = files
    .filter((file) => /\.tsx?$/.test(file) && !file.startsWith('glossary'))
    .map(source)
    .join('\n')
  const asked = [...text.matchAll(/<Term word="(\w+)"|\bword: '(\w+)'/g)].map((hit) => hit[1] ?? hit[2])
  const known = new Set([...words.map(({ key }) => key), 'list'])
  expect(asked.length).toBeGreaterThan(8)
  expect(asked.filter((word) => !known.has(word))).toEqual([])
})
