import { describe, expect, test } from 'vitest'
import { isSafePath, plainExtension, plainName, shortIds } from '../../../src/io/dataPackage/fileNames.ts'

test.for([
  { words: 'Oat drink, creamy (1)', name: 'oat-drink-creamy-1' },
  { words: 'Größe µ', name: 'gro-e' },
  { words: 'Café', name: 'cafe' },
  { words: '../..', name: 'record' },
  { words: '燕麦', name: 'record' },
  { words: 'a'.repeat(50), name: 'a'.repeat(40) },
])('$words becomes $name', ({ words, name }) => {
  expect(plainName(words)).toBe(name)
})

test('only harmless extensions stay', () => {
  expect(['x.CSV', 'x.xlsx', 'x.parquet'].map(plainExtension)).toEqual(['csv', 'xlsx', 'parquet'])
  expect(['x.html', 'x.exe', 'x', '.csv.', 'x.svg'].map(plainExtension)).toEqual(['raw', 'raw', 'raw', 'raw', 'raw'])
})

test('short ids have as many digits as tell them apart', () => {
  const [a, b] = ['ab'.repeat(32), `${'ab'.repeat(7)}cd${'ab'.repeat(24)}`]
  expect(shortIds([a])(a)).toHaveLength(12)
  expect(shortIds([a, a, b])(b)).toHaveLength(16)
})

describe('paths', () => {
  test.for(['a', 'records/x-1/raw.csv', 'README.md', 'a b/c_d.e-f'])('%s is safe', (path) => {
    expect(isSafePath(path)).toBe(true)
  })

  test.for([
    '',
    '/a',
    'a/',
    'a//b',
    '..',
    'a/../b',
    './a',
    '.a',
    'a/.b',
    'a.',
    'a\\b',
    'C:a',
    'a:b',
    'nul',
    'a/CON.csv',
    'a\0',
    'a\n',
    ' a',
    'a ',
    '~/a',
    'é',
    'x'.repeat(401),
  ])('%j is not', (path) => {
    expect(isSafePath(path)).toBe(false)
  })
})
