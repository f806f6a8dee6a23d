import { describe, expect, test } from 'vitest'
import { checkShape, limits } from '../../scripts/shape.ts'

const short = { path: 'src/io/short.ts', text: 'export const a = 1\n' }
const longText = (lines: number, head = 'const first = 1'): string => `${head}\n${'const b = 2\n'.repeat(lines - 1)}`
const checkWith = (path: string, text: string): string[] => checkShape([short, short, short, { path, text }])

describe('length of a file', () => {
  test.for([
    [limits.reasonAbove, 'const a = 1', ''],
    [limits.reasonAbove + 1, 'const a = 1', 'has 251 lines: split it, or begin it with a line "// Long because …"'],
    [limits.reasonAbove + 1, '// Long because it is one table.', ''],
    [limits.refusedAbove + 1, '// Long because it is one table.', 'has 401 lines: split it, 400 is the most'],
  ] as const)('%d lines that begin with %s', ([lines, head, complaint]) => {
    expect(checkWith('test/io/table.test.ts', longText(lines, head)).join('\n')).toContain(complaint)
    expect(checkWith('test/io/table.test.ts', longText(lines, head))).toHaveLength(complaint === '' ? 0 : 1)
  })

  test('the median of src is kept low, whatever the tests are', () => {
    const long = { path: 'src/io/long.ts', text: longText(limits.median) }
    expect(checkShape([short, long, long])).toEqual(['the median file under src has 80 lines: keep it under 80'])
    expect(checkShape([short, short, long, { ...long, path: 'test/long.test.ts' }])).toEqual([])
    expect(checkShape([])).toEqual(['no file under src was measured'])
  })
})

test.for(['utils.ts', 'helpers.ts', 'helper.mjs', 'common.ts', 'misc.ts', 'types.ts', 'Utils.test.ts'])(
  'a file may not be called %s',
  (name) => {
    expect(checkWith(`scripts/${name}`, '')).toEqual([`scripts/${name}: name the file after the one thing it holds`])
  },
)

test.for([
  ['export const a = 1', 'src/core/stats/a.ts:1 exports a without a doc comment'],
  ['/** One. */\nexport const a = 1\n\nexport interface B {}', 'src/core/stats/a.ts:4 exports B without a doc comment'],
  ['/* Not a doc comment. */\nexport function f() {}', 'src/core/stats/a.ts:2 exports f without a doc comment'],
  [
    '/** One. */\nexport const a = Math.random()',
    'src/core/stats/a.ts:2 uses Math.random: take the seed as an argument',
  ],
  ["export * from './b.ts'", "src/core/stats/a.ts:1 passes on another file's exports"],
] as const)('in core: %s', ([text, complaint]) => {
  const broken = checkWith('src/core/stats/a.ts', text)
  expect(broken).toHaveLength(1)
  expect(broken[0]).toContain(complaint)
})

test.for([
  ['src/core/stats/a.ts', '/** One. */\nexport const a = 1\nconst b = 2\nexport type {}'],
  ['src/core/stats/index.ts', "export * from './a.ts'"],
  ['src/io/typesOfQuote.ts', 'export const a = Math.random()'],
] as const)('%s may hold %s', ([path, text]) => {
  expect(checkWith(path, text)).toEqual([])
})
