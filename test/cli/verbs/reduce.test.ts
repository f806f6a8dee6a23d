import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Ajv } from 'ajv'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../capturedDesk.ts'

// The demo records are the input: a virtual rig made them.
const lacquer = (name: string): string[] => [
  `examples/lacquer/${name}.csv`,
  '--setup',
  `examples/lacquer/${name}.setup.yaml`,
]
const quick = ['--draws', '100']

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-reduce-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

async function kufe(...words: string[]) {
  const desk = capturedDesk({}, { KUFE_HOME: join(folder, 'home') })
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

const validate = new Ajv({ allErrors: true, strict: false }).compile(
  JSON.parse(readFileSync('schema/result.schema.json', 'utf8')),
)

describe('JSON', () => {
  test.for([
    ...['lacquer-a-1', 'lacquer-a-tilted', 'silicone-spray', 'wax'].map(lacquer),
    ['examples/oat-drinks/oat-drink-plain.csv', '--setup', 'examples/oat-drinks/oat-drink-plain.setup.yaml'],
  ])('of $0 is what the schema says', async (words) => {
    const { code, out, err } = await kufe('reduce', ...words, ...quick, '--json')
    expect({ code, err }).toEqual({ code: 0, err: '' })
    validate(JSON.parse(out))
    expect(validate.errors ?? []).toEqual([])
  })

  test('the schema refuses a result without its window or with an unknown field', async () => {
    const { out } = await kufe('reduce', ...lacquer('wax'), ...quick, '--json')
    const document = JSON.parse(out)
    expect(validate({ ...document, window: undefined })).toBe(false)
    expect(validate({ ...document, windows: 1 })).toBe(false)
  })

  test('same input, same bytes; another seed, another band and nothing else but what follows from it', async () => {
    const words = ['reduce', ...lacquer('wax'), ...quick, '--json']
    const first = await kufe(...words)
    expect((await kufe(...words)).out).toBe(first.out)
    const other = JSON.parse((await kufe(...words, '--seed', '9')).out)
    const document = JSON.parse(first.out)
    expect(other.points).toEqual(document.points)
    expect(other.origin).toMatchObject({ seed: 9, raw: document.origin.raw, setup: document.origin.setup })
    expect(other.curve.band).not.toEqual(document.curve.band)
  })

  test('where the files lie does not matter', async () => {
    const [record = '', , setup = ''] = lacquer('wax')
    const copy = { record: join(folder, 'wax.csv'), setup: join(folder, 'other-name.yaml') }
    writeFileSync(copy.record, readFileSync(record))
    writeFileSync(copy.setup, readFileSync(setup))
    const here = await kufe('reduce', record, '--setup', setup, ...quick, '--json')
    const there = await kufe('reduce', copy.record, '--setup', copy.setup, ...quick, '--json')
    expect(there.out).toBe(here.out)
  })

  test('--no-curve leaves the curve out', async () => {
    const { out } = await kufe('reduce', ...lacquer('wax'), '--no-curve', '--json')
    const document = JSON.parse(out)
    expect(document.curve).toBeNull()
    expect(validate(document)).toBe(true)
  })
})

describe('files', () => {
  test('--svg writes the drawing whole, and no half file stays', async () => {
    const svg = join(folder, 'drawings', 'wax.svg')
    const { code } = await kufe('reduce', ...lacquer('wax'), ...quick, '--svg', svg, '--palette', 'dark')
    expect(code).toBe(0)
    expect(readFileSync(svg, 'utf8')).toMatch(/^<svg [\s\S]*<\/svg>\n$/)
    expect(readdirSync(join(folder, 'drawings'))).toEqual(['wax.svg'])
  })

  test('a drawing that cannot be written is wrong use, and says so', async () => {
    const { code, err } = await kufe('reduce', ...lacquer('wax'), ...quick, '--svg', folder)
    expect(code).toBe(2)
    expect(err).toContain('A folder has this name.')
  })

  test('columns and units are kept under a name and used again', async () => {
    const record = join(folder, 'own-words.csv')
    const text = readFileSync('examples/lacquer/wax.csv', 'utf8')
    writeFileSync(record, text.replace('Torque', 'Twist').replace('N·m', ''))
    const setup = ['--setup', 'examples/lacquer/wax.setup.yaml', ...quick, '--json']
    const refused = await kufe('reduce', record, ...setup)
    expect(refused.code).toBe(3)
    const kept = await kufe(
      'reduce',
      record,
      ...setup,
      '--column',
      'Twist=torque',
      '--unit',
      'Twist=N.m',
      '--save-mapping',
      'twisted',
    )
    expect({ code: kept.code, err: kept.err }).toEqual({ code: 0, err: '' })
    const again = await kufe('reduce', record, ...setup, '--mapping', 'twisted')
    expect(JSON.parse(again.out).points).toEqual(JSON.parse(kept.out).points)
    const sources = JSON.parse(again.out).record.columns.map(({ source }: { source: string }) => source)
    expect(sources).toContain('mapping')
    const lost = await kufe('reduce', record, ...setup, '--mapping', 'twistde')
    expect(lost.code).toBe(2)
    expect(lost.err).toContain('Did you mean "twisted"?')
  })
})

describe('bad input', () => {
  test.for([
    {
      name: 'no setup',
      words: ['examples/lacquer/wax.csv'],
      code: 2,
      says: 'No setup is given',
      mend: 'kufe setup balls-on-plate',
    },
    {
      name: 'no record',
      words: ['no.csv', '--setup', 'examples/lacquer/wax.setup.yaml'],
      code: 3,
      says: 'no.csv',
      mend: 'path',
    },
    {
      name: 'setup missing',
      words: ['examples/lacquer/wax.csv', '--setup', 'no.yaml'],
      code: 3,
      says: 'no.yaml: There is no such file.',
      mend: 'Check the name',
    },
    {
      name: 'a record as setup',
      words: ['examples/lacquer/wax.csv', '--setup', 'examples/lacquer/wax.csv'],
      code: 3,
      says: 'wax.csv',
      mend: '',
    },
    {
      name: 'a folder',
      words: ['examples', '--setup', 'examples/lacquer/wax.setup.yaml'],
      code: 3,
      says: 'folder',
      mend: 'Name one file',
    },
    {
      name: 'unit of nonsense',
      words: [...lacquer('wax'), '--unit', 'Torque=cubits'],
      code: 3,
      says: 'cubits',
      mend: '',
    },
    {
      name: 'half an answer',
      words: [...lacquer('wax'), '--column', 'Torque'],
      code: 2,
      says: '"Torque"',
      mend: 'HEADING=CHANNEL',
    },
  ])('$name', async ({ words, code, says, mend }) => {
    const plain = await kufe('reduce', ...words)
    expect(plain.code).toBe(code)
    expect(plain.err).toContain(says)
    expect(plain.err).toContain(mend)
    expect(plain.out).toBe('')
    const json = await kufe('reduce', ...words, '--json')
    expect(json.code).toBe(code)
    expect(JSON.parse(json.out).error.code).toBe(code)
  })
})

test('--strict answers 1 where values must not be used, 0 where all is well', async () => {
  const bad = await kufe('reduce', ...lacquer('silicone-spray'), ...quick, '--strict')
  expect(bad.code).toBe(1)
  expect(bad.err).toContain('torque under the floor')
  expect((await kufe('reduce', ...lacquer('silicone-spray'), ...quick)).code).toBe(0)
  const good = await kufe('reduce', ...lacquer('wax'), ...quick, '--strict')
  expect({ code: good.code, err: good.err }).toEqual({ code: 0, err: '' })
})

test('people get the points, the plot, the window, the plateau and the remarks', async () => {
  const { code, out, err } = await kufe('reduce', ...lacquer('lacquer-a-tilted'), ...quick)
  expect({ code, err }).toEqual({ code: 0, err: '' })
  for (const title of [
    'Read',
    'Points',
    'Friction coefficient',
    'Believe',
    'Curve',
    'Uncertainty and zeroes',
    'Remarks',
  ]) {
    expect(out).toContain(`\n${title}`)
  }
  expect(out).toContain('friction ripple per turn, steps 2–8')
  expect(out).toMatch(/Believe this curve from [\d.]+ mm\/s/)
})
