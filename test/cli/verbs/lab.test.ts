// Long because its cases share one lab or one question, and each is a few lines.
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { run } from '../../../src/cli/run.ts'
import { checksum } from '../../../src/store/index.ts'
import { capturedDesk } from '../capturedDesk.ts'

let folder: string
let lab: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-lab-verbs-'))
  lab = join(folder, 'lab')
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

async function kufe(...words: string[]) {
  const desk = capturedDesk({}, { KUFE_LAB: lab, KUFE_BY: 'MK', KUFE_HOME: join(folder, 'home') })
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

const wax = ['examples/lacquer/wax.csv', '--draws', '100']
const waxId = checksum(readFileSync('examples/lacquer/wax.csv'))

describe('lab new', () => {
  test('makes a lab, and says what comes next', async () => {
    const { code, out, err } = await kufe('lab', 'new', lab, '--title', 'Lacquer workshop')
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toContain('Made the lab "Lacquer workshop"')
    expect((await kufe('list')).out).toMatch(/^Lacquer workshop · .* · 0 records\n$/)
  })

  test('as JSON', async () => {
    const { out } = await kufe('lab', 'new', lab, '--json')
    expect(JSON.parse(out)).toEqual({ schemaVersion: '1', where: lab, id: 'lab', title: 'lab' })
  })

  test('a second one in the same place is refused: 4, the lab store', async () => {
    await kufe('lab', 'new', lab)
    const { code, out, err } = await kufe('lab', 'new', lab, '--json')
    expect(code).toBe(4)
    expect(err).toContain('There is a lab here already.')
    expect(JSON.parse(out).error).toMatchObject({ code: 4, class: 'store', problems: [{ kind: 'labExists' }] })
  })

  test('somebody must have made it', async () => {
    const desk = capturedDesk({}, {})
    expect(await run(['lab', 'new', lab], desk)).toBe(2)
    expect(desk.err()).toContain('--by INITIALS')
  })
})

test('a lab that nobody named, and none here', async () => {
  const desk = capturedDesk({}, { KUFE_BY: 'MK' })
  expect(await run(['list'], desk)).toBe(2)
  expect(desk.err()).toContain('kufe lab new')
})

test('a lab that is not there: 4', async () => {
  expect(await kufe('list')).toMatchObject({ code: 4, err: expect.stringContaining('There is no lab here.') })
})

describe('add', () => {
  beforeEach(() => kufe('lab', 'new', lab))

  test('one record: what is on the disk is told, line by line', async () => {
    const { code, out, err } = await kufe('add', ...wax, '--study', 'Drawer runners')
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toBe(
      [
        `kept        ${waxId.slice(0, 12)}  examples/lacquer/wax.csv`,
        `reduced     ${waxId.slice(0, 12)}  wax.csv: 17 points; believe 200 µm/s to 300 mm/s; 2 to take care of`,
        '1 kept, 1 reduced.',
        '',
      ].join('\n'),
    )
    expect((await kufe('add', ...wax)).out).toMatch(/^known .*, kept on 2026-01-02 by MK\n1 known before\.\n$/)
  })

  test('a bad file among good ones: its problems with their mend, the others kept, 3', async () => {
    const poem = join(folder, 'poem.txt')
    writeFileSync(poem, 'roses are red\n')
    const { code, out, err } = await kufe('add', poem, ...wax, '--setup', 'examples/lacquer/wax.setup.yaml')
    expect(code).toBe(3)
    expect(out).toContain('1 kept, 1 refused, 1 reduced.')
    expect(err).toMatch(/^kufe: poem\.txt/)
  })

  test('as JSON one document, with the same', async () => {
    const poem = join(folder, 'poem.txt')
    writeFileSync(poem, 'roses are red\n')
    const { code, out } = await kufe('add', poem, ...wax, '-s', 'examples/lacquer/wax.setup.yaml', '--json')
    expect(code).toBe(3)
    expect(JSON.parse(out)).toMatchObject({
      schemaVersion: '1',
      aside: 0,
      events: [
        { what: 'refused', file: poem, problems: [{ place: { file: 'poem.txt' } }] },
        { what: 'kept', record: { id: waxId, name: 'wax.csv', version: 1 } },
        { what: 'reduced', record: { id: waxId }, brief: { points: 17 } },
      ],
    })
  })

  test.for([
    { words: ['--replicate', '0'], says: 'whole number from 1' },
    { words: ['--study', '…'], says: 'no letter or digit' },
    { words: ['--day', '25.11.2026'], says: 'is not a day' },
    { words: ['--unit', 'x'], says: 'HEADING=UNIT' },
  ])('wrong use: $words', async ({ words, says }) => {
    const { code, err } = await kufe('add', ...wax, ...words)
    expect(code).toBe(2)
    expect(err).toContain(says)
  })

  test('what was said about columns is said again by verify', async () => {
    const record = join(folder, 'moment.csv')
    const text = readFileSync('examples/lacquer/wax.csv', 'utf8')
    writeFileSync(record, text.replace('Torque', 'Quantity 7').replace('N·m', ''))
    const setup = ['--setup', 'examples/lacquer/wax.setup.yaml', '--draws', '100']
    expect((await kufe('add', record, ...setup)).code).toBe(3)
    const said = ['--column', 'Quantity 7=torque', '--unit', 'Quantity 7=N.m']
    expect((await kufe('add', record, ...setup, ...said)).code).toBe(0)
    expect(await kufe('verify')).toMatchObject({ code: 0, out: expect.stringContaining('Nothing was found.') })
  })
})

describe('list and show', () => {
  beforeEach(async () => {
    await kufe('lab', 'new', lab)
    await kufe('add', ...wax, '--study', 'Drawer runners', '--sample', 'wax', '--replicate', '2', '--why', 'first day')
  })

  test('records, studies, samples and the history', async () => {
    expect((await kufe('list')).out).toMatch(
      new RegExp(`${waxId.slice(0, 12)}  wax\\.csv  drawer-runners  wax +2  2026-01-02 MK +1  kufe 0\\.0\\.0-test`),
    )
    expect((await kufe('list', 'studies')).out).toMatch(/drawer-runners {2}Drawer runners +1\n/)
    expect((await kufe('list', 'samples')).out).toMatch(/wax +wax +1\n/)
    expect((await kufe('list', 'history')).out).toMatch(/MK {3}created study drawer-runners +first day\n/)
  })

  test('as JSON', async () => {
    expect(JSON.parse((await kufe('list', '--json')).out)).toMatchObject({
      lab: { where: lab },
      records: [{ id: waxId, study: 'drawer-runners', result: { kind: 'fit', origin: { raw: waxId } } }],
    })
    expect(JSON.parse((await kufe('list', 'history', '--json')).out).history).toHaveLength(6)
    expect(JSON.parse((await kufe('list', '--study', 'none', '--json')).out).records).toEqual([])
  })

  test.for(['wax.csv', waxId, waxId.slice(0, 6)])(
    'a record by %s: history, results, and the one that counts',
    async (word) => {
      const { code, out } = await kufe('show', word)
      expect(code).toBe(0)
      expect(out).toContain(`id          ${waxId}`)
      expect(out).toMatch(/\n +1 {2}2026-01-02 03:04:05 UTC {2}MK +added {2}first day\n/)
      expect(out).toMatch(/\n {2}counts {2}2026-01-02 03:04:05 UTC/)
      expect(out).toContain('wax.csv · 3 balls 6.35 mm')
      expect(out).toContain('\nRemarks\n')
    },
  )

  test('as JSON the result is byte for byte that of reduce', async () => {
    const words = ['examples/lacquer/wax.csv', '--setup', 'examples/lacquer/wax.setup.yaml', '--draws', '100', '--json']
    const reduced = (await kufe('reduce', ...words)).out
    const shown = JSON.parse((await kufe('show', 'wax.csv', '--json')).out)
    expect(shown.result).toEqual(JSON.parse(reduced))
    expect(shown.results[0].sha256).toBe(checksum(reduced))
  })

  test('a study with its records', async () => {
    const { out } = await kufe('show', 'drawer-runners')
    expect(out).toMatch(/^Drawer runners · study drawer-runners\n {2}made 2026-01-02 03:04:05 UTC by MK\n/)
    expect(out).toContain('wax.csv')
  })

  test('two records of one name must be told apart by their ids', async () => {
    const record = join(folder, 'wax.csv')
    cpSync('examples/lacquer/lacquer-a-1.csv', record)
    await kufe('add', record, '-s', 'examples/lacquer/lacquer-a-1.setup.yaml', '--draws', '100')
    const { code, err } = await kufe('show', 'wax.csv')
    expect(code).toBe(2)
    expect(err).toContain(`2 records are called "wax.csv"`)
    expect(err).toContain(waxId.slice(0, 12))
  })

  test('nothing of that name: 2, with what may have been meant', async () => {
    expect(await kufe('show', 'drawer-runer')).toMatchObject({
      code: 2,
      err: expect.stringContaining('drawer-runners'),
    })
  })
})

describe('verify', () => {
  beforeEach(async () => {
    await kufe('lab', 'new', lab)
    await kufe('add', ...wax)
  })

  test('nothing found: 0', async () => {
    expect(await kufe('verify')).toEqual({
      code: 0,
      err: '',
      out:
        `Lab ${lab}: 1 record, 1 setup, 1 result held against their checksums.\n` +
        '  1 result computed again by kufe 0.0.0-test: bit for bit the same.\nNothing was found.\n',
    })
  })

  test('a changed byte: named, 1', async () => {
    const raw = join(lab, 'raw', waxId.slice(0, 2), waxId)
    writeFileSync(raw, readFileSync(raw, 'utf8').replace('0', '1'))
    const { code, out } = await kufe('verify', 'wax.csv')
    expect(code).toBe(1)
    expect(out).toContain(`wax.csv (${waxId.slice(0, 12)}): The raw bytes of record`)
    const json = await kufe('verify', '--json')
    expect(json.code).toBe(1)
    expect(JSON.parse(json.out)).toMatchObject({ findings: [{ what: 'damaged', records: [{ name: 'wax.csv' }] }] })
  })
})

describe('amend', () => {
  beforeEach(async () => {
    await kufe('lab', 'new', lab)
    await kufe('add', ...wax)
  })

  test('a new version beside the old one, told and shown', async () => {
    const { code, out } = await kufe('amend', 'wax.csv', '--sample', 'Wax B', '--replicate', '2', '--why', 'mixed up')
    expect(code).toBe(0)
    expect(out).toBe(`${waxId.slice(0, 12)}  wax.csv, version 2: sample none → wax-b, replicate none → 2.\n`)
    expect((await kufe('show', 'wax.csv')).out).toMatch(
      / 2 {2}2026-.* {2}sample none → wax-b, replicate none → 2 {2}mixed up\n/,
    )
    const again = await kufe('amend', 'wax.csv', '--sample', 'Wax B', '--why', 'again')
    expect(again.out).toContain('nothing differs, version 2 stays')
  })

  test('another setup: what comes out with it', async () => {
    const setup = join(folder, 'other.yaml')
    const text = readFileSync('examples/lacquer/wax.setup.yaml', 'utf8')
    writeFileSync(setup, text.replace('trackRadius: 15 mm', 'trackRadius: 16 mm'))
    const { code, out } = await kufe('amend', 'wax.csv', '-s', setup, '--why', 'the 16 mm track')
    expect(code).toBe(0)
    expect(out).toMatch(/version 2: setup [0-9a-f]{12} → [0-9a-f]{12}\.\nReduced with this setup: 17 points; believe/)
  })

  test('without a reason: 2', async () => {
    expect(await kufe('amend', 'wax.csv', '--replicate', '2')).toMatchObject({
      code: 2,
      err: expect.stringContaining('A correction needs a reason.'),
    })
  })
})

describe('backup and restore', () => {
  beforeEach(async () => {
    await kufe('lab', 'new', lab)
    await kufe('add', ...wax)
  })

  test('a backup is a lab, and a lab comes out of it again', async () => {
    const [copy, back] = [join(folder, 'copy'), join(folder, 'back')]
    const made = await kufe('backup', copy)
    expect(made).toMatchObject({ code: 0, err: '' })
    expect(made.out).toContain(`${copy}: 1 record, 138,661 bytes`)
    expect(JSON.parse((await kufe('restore', copy, back, '--json')).out)).toMatchObject({ where: back, raws: 1 })
    expect((await kufe('list', '--lab', back)).out).toContain('wax.csv')
    expect((await kufe('list', 'history', '--lab', back)).out).toBe((await kufe('list', 'history')).out)
    expect((await kufe('verify', '--lab', back)).code).toBe(0)
  })

  test('a lab that is there is never written over: 4', async () => {
    await kufe('backup', join(folder, 'copy'))
    expect((await kufe('restore', join(folder, 'copy'), lab)).code).toBe(4)
    expect((await kufe('backup', lab)).code).toBe(4)
  })

  test('a damaged record is told, the rest is copied: 1', async () => {
    const raw = join(lab, 'raw', waxId.slice(0, 2), waxId)
    writeFileSync(raw, 'x')
    const { code, out, err } = await kufe('backup', join(folder, 'copy'))
    expect(code).toBe(1)
    expect(out).toContain('1 could not be copied')
    expect(err).toContain('not the ones that were kept')
  })
})

test('watch that is told to stop at once ends well', async () => {
  await kufe('lab', 'new', lab)
  expect(await kufe('watch', folder)).toEqual({ code: 0, err: '', out: `Watching ${folder}; Ctrl+C ends it.\n` })
  expect(JSON.parse((await kufe('watch', folder, '--json')).out)).toEqual({ what: 'watching', folder })
  expect((await kufe('watch', join(folder, 'none'))).code).toBe(3)
})

test('report writes what was asked for, and says so', async () => {
  await kufe('lab', 'new', lab)
  await kufe('add', ...wax)
  const [html, pdf] = [join(folder, 'out/wax.html'), join(folder, 'out/wax.pdf')]
  const { code, out } = await kufe('report', 'wax.csv', '--html', html, '--pdf', pdf)
  expect({ code, out }).toEqual({ code: 0, out: `Wrote ${html}\nWrote ${pdf}\n` })
  expect(readFileSync(html, 'utf8')).toMatch(/^<!doctype html>/)
  expect(readFileSync(pdf, 'latin1')).toMatch(/^%PDF-/)
  expect(JSON.parse((await kufe('report', 'wax.csv', '--html', html, '--json')).out)).toMatchObject({ files: [html] })
  expect((await kufe('report', 'wax.csv')).code).toBe(2)
})

describe('export and import', () => {
  beforeEach(async () => {
    await kufe('lab', 'new', lab)
    await kufe('add', ...wax, '--study', 'Drawer runners')
  })

  test('a package goes out and comes in again', async () => {
    const [zip, other] = [join(folder, 'wax.zip'), join(folder, 'other')]
    const out = await kufe('export', 'drawer-runners', zip, '--licence', 'CC-BY-4.0')
    expect(out).toMatchObject({
      code: 0,
      err: '',
      out: expect.stringMatching(/^Wrote .*wax\.zip: 1 record in \d+ files, /),
    })
    const taken = await kufe('import', zip, '--lab', other)
    expect(taken).toMatchObject({ code: 0, out: `Made the lab ${other}: 1 record and 1 result taken in.\n` })
    expect((await kufe('list', 'history', '--lab', other)).out).toBe((await kufe('list', 'history')).out)
    expect(JSON.parse((await kufe('import', zip, '--lab', other, '--json')).out)).toMatchObject({
      records: 0,
      known: 1,
    })
  })

  test('all of a lab into a folder, never over something', async () => {
    const out = join(folder, 'whole')
    expect(JSON.parse((await kufe('export', 'all', out, '--json')).out)).toMatchObject({ out, records: 1 })
    expect((await kufe('export', 'all', out)).code).toBe(2)
    expect((await kufe('export', 'nothing-of-that-name', join(folder, 'x'))).code).toBe(2)
  })

  test('a damaged package is refused: 3', async () => {
    const out = join(folder, 'whole')
    await kufe('export', 'all', out)
    writeFileSync(join(out, 'records.csv'), 'x')
    const taken = await kufe('import', out, '--lab', join(folder, 'other'))
    expect(taken).toMatchObject({ code: 3, err: expect.stringContaining('records.csv') })
  })

  test('a damaged record cannot go out: 4, and nothing is written', async () => {
    writeFileSync(join(lab, 'raw', waxId.slice(0, 2), waxId), 'x')
    const out = join(folder, 'whole')
    expect((await kufe('export', 'all', out)).code).toBe(4)
    expect(existsSync(out)).toBe(false)
  })
})

test('where somebody watches, each line stands on a line of its own', async () => {
  await kufe('lab', 'new', lab)
  const desk = capturedDesk({ watched: true }, { KUFE_LAB: lab, KUFE_BY: 'MK' })
  await run(['add', ...wax], desk)
  expect(desk.err()).toBe('\r\u001b[K\r\u001b[K')
})

test('a lab of a newer program is left alone: 4, whatever the verb', async () => {
  await kufe('lab', 'new', lab)
  const label = join(lab, 'lab.json')
  writeFileSync(label, JSON.stringify({ kufe: 'lab', format: 2 }))
  for (const words of [['list'], ['add', ...wax], ['verify'], ['backup', join(folder, 'copy')], ['watch', folder]]) {
    expect(await kufe(...words)).toMatchObject({ code: 4, err: expect.stringContaining('Update the program') })
  }
  expect(existsSync(join(folder, 'copy'))).toBe(false)
})
