import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../capturedDesk.ts'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-compare-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

const records = 'test/data/records'
const both = [`A=${records}/varnish-a-*.csv`, `B=${records}/varnish-b-*.csv`]
const setup = ['--setup', `${records}/varnish.setup.yaml`, '--turns', '1000']

async function kufe(...words: string[]) {
  const desk = capturedDesk()
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

test('two samples: verdict first, picture, tables; nothing on stderr', async () => {
  const { code, out, err } = await kufe('compare', ...both, ...setup)
  expect({ code, err }).toEqual({ code: 0, err: '' })
  const lines = out.split('\n')
  expect(lines[0]).toBe('A against B · 10 records')
  expect(lines[2]).toMatch(/^ {2}B slips more easily than A over the whole range/)
  for (const title of ['At single speeds', 'Scatter between replicates', 'Replicates']) expect(lines).toContain(title)
  expect(out).toMatch(/sliding speed \(mm\/s\)/)
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100)
})

test('one sample: its repeatability, and its replicates about their mean', async () => {
  const { code, out } = await kufe('compare', both[0], ...setup)
  expect(code).toBe(0)
  expect(out).toMatch(/Replicates of A scatter by 3\.2 %/)
  expect(out).toContain('o replicate   dots their mean')
  expect(out).not.toContain('At single speeds')
})

test('a drawing and JSON', async () => {
  const svg = join(folder, 'difference.svg')
  const { code, out, err } = await kufe('compare', ...both, ...setup, '--svg', svg, '--json')
  expect({ code, err }).toEqual({ code: 0, err: `Wrote ${svg}\n` })
  expect(JSON.parse(out).differences[0].second).toBe('B')
  expect(readFileSync(svg, 'utf8')).toMatch(/^<svg .*B slips more easily than A/s)
})

test.for([
  { words: [], kind: 'nothingToCompare', code: 2 },
  { words: [...both, ...setup, '--without', 'varnish-a-1.csv'], kind: 'removalUnsigned', code: 2 },
  { words: ['--study', 'runners', ...both], kind: 'studyAndRecords', code: 2 },
  { words: [...both], kind: 'setupMissing', code: 2 },
])('wrong use: $kind', async ({ words, kind, code }) => {
  const answer = await kufe('compare', ...words, '--json')
  expect(answer.code).toBe(code)
  expect(JSON.parse(answer.out).error.problems[0].kind).toBe(kind)
})
