import { describe, expect, test } from 'vitest'
import { workbook } from '../../../scripts/seedTables.ts'
import { ArchiveDamaged, ArchiveTooLarge, pack, unpack } from '../../../src/io/table/zipArchive.ts'
import { problemsOf, recordOf, valuesOf } from './tableText.ts'

const cells = [
  ['Sample', 'invented lacquer & wax <3>'],
  [],
  ['Step', 'Time', 'Torque', 'Temperature', 'Note'],
  ['', 's', 'mN·m', '°C', ''],
  [1, 0.1, 20.5, 23, 'begins'],
  [1, 0.30000000000000004, 1e-7, '', ''],
  [2, 1234567.875, -3, 23.5, '"quoted"'],
]

test.for([false, true])('a sheet is a table (deflated: %s)', async (deflated) => {
  const record = await recordOf(workbook(cells, deflated))
  expect(valuesOf(record)).toEqual({
    time: [0.1, 0.3, 1234567.875],
    step: [1, 1, 2],
    torque: [0.0205, 1e-10, -0.003],
    temperature: [296.15, Number.NaN, 296.65],
  })
  // Exactly the number that stands in the file.
  expect(record.channels.read('time', 1, 2)[0]).toBe(0.30000000000000004)
  expect(record.dialect).toMatchObject({ format: 'xlsx', headerLine: 3, unitRow: true, preambleLines: 2 })
  expect(record.preamble).toEqual([{ line: 1, key: 'Sample', value: 'invented lacquer & wax <3>' }])
})

test('problems point to the row of the sheet', async () => {
  const bad = [...cells.slice(0, 4), ...Array.from({ length: 10 }, (_, n) => [1, n, n % 2 === 0 ? 'high' : 2, 23])]
  const problems = await problemsOf(workbook(bad))
  expect(problems[1]).toMatchObject({ kind: 'notANumber', place: { line: 5, column: 3, name: 'Torque', cell: 'high' } })
})

describe('sheets', () => {
  const withSheets = (...sheets: (readonly (readonly (string | number)[])[])[]): Uint8Array => {
    const files = sheets.map((sheet) => unpack(workbook(sheet), () => true, 1e9))
    const all = new Map(files[0])
    const text = (name: string): string => new TextDecoder().decode(files[0].get(name))
    const put = (name: string, content: string): unknown => all.set(name, new TextEncoder().encode(content))
    const sheetXml = sheets
      .map((_, n) => `<sheet name="Sheet ${n + 1}" sheetId="${n + 1}" r:id="rId${n + 1}"/>`)
      .join('')
    put('xl/workbook.xml', text('xl/workbook.xml').replace(/<sheet .*\/>(?=<\/sheets>)/, sheetXml))
    const [, relation] = /(<Relationship .*?\/>)/.exec(text('xl/_rels/workbook.xml.rels')) ?? []
    const relations = sheets
      .map((_, n) => relation.replace('rId1', `rId${n + 1}`).replace('sheet1', `sheet${n + 1}`))
      .join('')
    put('xl/_rels/workbook.xml.rels', text('xl/_rels/workbook.xml.rels').replace(relation, relations))
    for (const [n, file] of files.entries())
      all.set(`xl/worksheets/sheet${n + 1}.xml`, file.get('xl/worksheets/sheet1.xml') ?? new Uint8Array())
    return pack(all)
  }
  const cover = [['This workbook holds an invented record.']]
  const other = [
    ['Time [s]', 'Torque [N·m]'],
    [1, 2],
    [2, 4],
  ]

  test('the first that holds a table is read', async () => {
    expect(valuesOf(await recordOf(withSheets(cover, other, cells))).torque).toEqual([2, 4])
  })

  test('one may be named, or numbered', async () => {
    const book = withSheets(cover, cells, other)
    expect((await recordOf(book, { sheet: 'Sheet 3' })).rows).toBe(2)
    expect((await recordOf(book, { sheet: 2 })).rows).toBe(3)
    expect(await problemsOf(book, { sheet: 1 })).toMatchObject([{ kind: 'notATable' }])
    expect(await problemsOf(book, { sheet: 'Shet 3' })).toMatchObject([
      { kind: 'sheetUnknown', class: 'wrongUse', mend: 'Did you mean "Sheet 3"?' },
    ])
    expect(await problemsOf(book, { sheet: 4 })).toMatchObject([{ kind: 'sheetUnknown' }])
  })
})

describe('broken and hostile archives', () => {
  test('cut off anywhere', async () => {
    const whole = workbook(cells, true)
    for (const share of [0.1, 0.5, 0.9, 0.99]) {
      expect(await problemsOf(whole.subarray(0, Math.floor(share * whole.length)))).toMatchObject([
        { kind: 'fileDamaged' },
      ])
    }
  })

  test('no workbook in it', async () => {
    const archive = pack(new Map([['run.csv', new TextEncoder().encode('t;M')]]))
    expect(await problemsOf(archive)).toMatchObject([{ kind: 'notATable' }])
  })

  test('a cell far outside is not filled up to', async () => {
    const files = new Map(unpack(workbook(cells), () => true, 1e9))
    const sheet = new TextDecoder().decode(files.get('xl/worksheets/sheet1.xml'))
    for (const address of ['XFD7', 'A99999999']) {
      files.set('xl/worksheets/sheet1.xml', new TextEncoder().encode(sheet.replace('r="E7"', `r="${address}"`)))
      expect(await problemsOf(pack(files))).toMatchObject([{ kind: 'fileDamaged' }])
    }
  })

  test('what unpacks to more than allowed is not unpacked', () => {
    const book = workbook(cells, true)
    expect(() => unpack(book, () => true, 100)).toThrow(ArchiveTooLarge)
  })

  test('a changed byte is noticed by its checksum', () => {
    const book = pack(new Map([['a.xml', new Uint8Array(100).fill(65)]]))
    book[60] ^= 1
    expect(() => unpack(book, () => true, 1000)).toThrow(ArchiveDamaged)
  })

  test('what was packed is unpacked', () => {
    const files = new Map([
      ['a', Uint8Array.of(1, 2, 3)],
      ['b/c.xml', new Uint8Array(0)],
    ])
    expect(unpack(pack(files), () => true, 1000)).toEqual(files)
    expect([...unpack(pack(files), (name) => name === 'a', 1000).keys()]).toEqual(['a'])
  })
})
