import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../capturedDesk.ts'

const creamy = 'examples/oat-drinks/oat-drink-creamy.material.yaml'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-material-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

async function kufe(...words: string[]) {
  const desk = capturedDesk({ width: 100 })
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

test('the table holds bodies and liquids, for people and for machines', async () => {
  const { code, out } = await kufe('material')
  expect(code).toBe(0)
  for (const name of ['100Cr6', 'soda-lime glass', 'PTFE', 'leather', 'Liquids', 'ISO VG 46'])
    expect(out).toContain(name)
  const { bodies, liquids } = JSON.parse((await kufe('material', '--json')).out)
  expect(bodies.length).toBeGreaterThanOrEqual(25)
  expect(bodies[0].elasticModulus).toMatchObject({ source: expect.any(String), low: expect.any(Number) })
  expect(liquids.map(({ name }: { name: string }) => name)).toContain('water')
})

test('a body is told with the source of each value', async () => {
  const { out } = await kufe('material', 'Acrylglas')
  expect(out).toMatch(/^PMMA \(polymer\)/)
  expect(out).toMatch(/elastic modulus +2\.7 GPa +2\.24 GPa +3\.24 GPa +Dowling/)
})

test('a liquid at a temperature: water at 20 °C has 1.0016 mPa·s (IAPWS R12-08)', async () => {
  const { out } = await kufe('material', 'water', '--temperature', '20 °C')
  expect(out).toMatch(/20 °C +1\.002 mPa·s/)
})

test.for([
  { words: ['water', '-t', '200 °C'], code: 3, says: '110 °C' },
  { words: ['water', '-t', 'warm'], code: 2, says: 'number' },
  { words: ['moon dust'], code: 2, says: 'kufe material' },
  { words: ['steel'], code: 3, says: '"100Cr6"' },
  { words: ['--starter', 'bodi'], code: 2, says: 'Did you mean body' },
  { words: ['PMMA', '--own', 'nowhere.yaml'], code: 3, says: 'nowhere.yaml' },
  { words: ['PMMA', '--lab', 'nowhere'], code: 4, says: 'nowhere' },
])('$words exits with $code', async ({ words, code, says }) => {
  const told = await kufe('material', ...words)
  expect({ code: told.code, out: told.out }).toEqual({ code, out: '' })
  expect(told.err).toContain(says)
})

describe('in a lab', () => {
  test('a flow curve is fitted, kept, and used by a question and a setup', async () => {
    const lab = join(folder, 'lab')
    expect((await kufe('lab', 'new', lab, '--by', 'MK')).code).toBe(0)
    const kept = await kufe('material', '--keep', creamy, '--lab', lab, '--by', 'MK')
    expect({ code: kept.code, err: kept.err }).toEqual({ code: 0, err: '' })
    expect(kept.out).toContain('Kept "oat drink, creamy" as oat-drink-creamy, version 1.')
    expect(kept.out).toMatch(/cross \(taken\)/)
    expect((await kufe('material', '--lab', lab)).out).toContain('oat drink, creamy *')
    const question = join(folder, 'q.yaml')
    const text = readFileSync('examples/oat-drinks/question.yaml', 'utf8')
    writeFileSync(question, text.replace('oat drink, plain', 'oat drink, creamy').replace(/^ {2}viscosity.*\n/gm, ''))
    expect((await kufe('plan', question, '--lab', lab)).out).toContain('The liquid thins')
    expect((await kufe('plan', question)).out).not.toContain('The liquid thins')
  })
})

test('starters are read by the verbs that want them', async () => {
  const files = ['question.yaml', 'body.yaml', 'setup.yaml', 'filled.yaml'].map((name) => join(folder, name))
  const [question, body, setup, filled] = files
  expect((await kufe('plan', '--starter', 'ball-on-plates', '--out', question)).code).toBe(0)
  expect((await kufe('plan', question)).code).toBe(0)
  expect((await kufe('material', '--starter', 'body', '--out', body)).code).toBe(0)
  expect((await kufe('material', 'birch plywood', '--own', body)).code).toBe(0)
  writeFileSync(
    setup,
    readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
      .replace(/(lower:\n\s*name: ).*/, '$1birch plywood')
      .replace(/^ {4}(elasticModulus|poissonRatio): .*\n/gm, ''),
  )
  const { code, out } = await kufe('setup', '--fill', setup, '--own', body, '--out', filled)
  expect(code).toBe(0)
  expect(out).toContain('birch plywood: modulus 9 GPa')
  expect((await kufe('setup', '--check', filled)).code).toBe(0)
  expect((await kufe('plan', '--starter', 'ball-on-plates', '--out', question)).code).toBe(2) // it is there already
})

test('laws and doubts are told when asked for, and a run sheet is written as a PDF', async () => {
  const sheet = join(folder, 'sheet.pdf')
  const { code, out } = await kufe('plan', 'examples/oat-drinks/question.yaml', '--laws', '--sheet', sheet)
  expect(code).toBe(0)
  expect(out).toMatch(/How each number is reckoned[\s\S]*Law: Hertz\.[\s\S]*Valid: [\s\S]*Doubt: /)
  expect(readFileSync(sheet).subarray(0, 5).toString()).toBe('%PDF-')
  expect((await kufe('plan')).err).toContain('--starter')
})
