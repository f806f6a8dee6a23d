import { deflateRawSync } from 'node:zlib'
import { numberTableToParquet } from '../src/io/columns/parquetTable.ts'
import { pack } from '../src/io/table/zipArchive.ts'

/** A small record in one dialect. All are invented. */
export interface SeedTable {
  readonly name: string
  readonly bytes: Uint8Array
}

const rows = Array.from({ length: 40 }, (_, n) => {
  const step = 1 + Math.floor(n / 10)
  return [step, (n + 1) / 10, step * 0.5 + n / 1000, 0.02 - n / 5000, 5 + (n % 3) / 100, 1e-6 * (n % 7), 23 + n / 100]
})

const words = ['Step', 'Time', 'Angular velocity', 'Torque', 'Axial force', 'Gap', 'Temperature']
const units = ['', 's', 'rad/s', 'N·m', 'N', 'm', '°C']
const german = ['Schritt', 'Zeit', 'Drehzahl', 'Drehmoment', 'Normalkraft', 'Spalt', 'Temperatur']
const germanUnits = ['', 's', '1/min', 'mN·m', 'N', 'µm', '°C']

interface Shape {
  readonly separator?: string
  readonly comma?: boolean
  readonly lineEnd?: string
  readonly head: readonly (readonly string[])[]
  readonly preamble?: readonly string[]
  readonly repeat?: boolean
  readonly quote?: boolean
  readonly thousands?: string
  readonly pad?: number
}

function table(shape: Shape): string {
  const { separator = ',', lineEnd = '\n', head, preamble = [], pad = 0 } = shape
  const cell = (text: string): string => {
    const padded = text.padStart(pad)
    return shape.quote === true ? `"${padded.replaceAll('"', '""')}"` : padded
  }
  const line = (cells: readonly string[]): string => cells.map(cell).join(separator)
  const number = (value: number): string => {
    const [whole, rest = ''] = String(value).split('.')
    const grouped = shape.thousands === undefined ? whole : whole.replace(/\B(?=(\d{3})+$)/g, shape.thousands)
    return rest === '' ? grouped : `${grouped}${shape.comma === true ? ',' : '.'}${rest}`
  }
  const heads = head.map(line)
  const lines = [...preamble, ...heads]
  for (const [n, row] of rows.entries()) {
    if (shape.repeat === true && n > 0 && n % 10 === 0) lines.push('', `Step ${row[0]}`, ...heads)
    lines.push(line(row.map((value) => number(shape.thousands === undefined ? value : Math.round(value * 1e6) / 10))))
  }
  return lines.join(lineEnd) + lineEnd
}

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text)
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0) & 255)

function utf16(text: string, big: boolean): Uint8Array {
  const bytes = new Uint8Array(2 * text.length)
  const view = new DataView(bytes.buffer)
  for (let n = 0; n < text.length; n++) view.setUint16(2 * n, text.charCodeAt(n), !big)
  return bytes
}

const bracketed = (names: readonly string[], some: readonly string[], form: (unit: string) => string): string[] =>
  names.map((name, n) => (some[n] === '' ? name : `${name}${form(some[n])}`))

/** One small workbook; `packed` stores it deflated, as spreadsheet programs do. */
export function workbook(cells: readonly (readonly (string | number)[])[], packed = false): Uint8Array {
  const address = (row: number, column: number): string => `${String.fromCharCode(65 + column)}${row + 1}`
  const cellXml = (cell: string | number, row: number, column: number): string =>
    typeof cell === 'number'
      ? `<c r="${address(row, column)}"><v>${cell}</v></c>`
      : `<c r="${address(row, column)}" t="inlineStr"><is><t>${cell.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</t></is></c>`
  const body = cells.map((row, r) => `<row r="${r + 1}">${row.map((cell, c) => cellXml(cell, r, c)).join('')}</row>`)
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'
  const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
  const files = new Map([
    [
      'xl/workbook.xml',
      `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets><sheet name="Run &amp; rest" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    ],
    [
      'xl/_rels/workbook.xml.rels',
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    ],
    ['xl/worksheets/sheet1.xml', `<worksheet xmlns="${main}"><sheetData>${body.join('')}</sheetData></worksheet>`],
  ])
  return packed ? deflated(files) : pack(new Map([...files].map(([name, text]) => [name, utf8(text)])))
}

/** The same archive with its entries deflated: sizes and offsets are taken over from the stored one. */
function deflated(files: ReadonlyMap<string, string>): Uint8Array {
  const stored = pack(new Map([...files].map(([name, text]) => [name, utf8(text)])))
  const pieces: Uint8Array[] = []
  const central: Uint8Array[] = []
  const view = new DataView(stored.buffer)
  let at = 0
  let length = 0
  let entry = view.getUint32(stored.length - 6, true)
  for (const [name, text] of files) {
    const data = deflateRawSync(utf8(text))
    const local = stored.slice(at, at + 30 + name.length)
    const record = stored.slice(entry, entry + 46 + name.length)
    for (const [bytes, offset] of [
      [local, 4],
      [record, 6],
    ] as const) {
      const head = new DataView(bytes.buffer)
      head.setUint16(offset + 4, 8, true)
      head.setUint32(offset + 14, data.length, true)
    }
    new DataView(record.buffer).setUint32(42, length, true)
    pieces.push(local, data)
    central.push(record)
    at += 30 + name.length + utf8(text).length
    entry += 46 + name.length
    length += local.length + data.length
  }
  const end = stored.slice(-22)
  new DataView(end.buffer).setUint32(16, length, true)
  return Buffer.concat([...pieces, ...central, end])
}

const numbers = {
  rows: rows.length,
  names: [
    'Step',
    'Time [s]',
    'Angular velocity [rad/s]',
    'Torque [N·m]',
    'Axial force [N]',
    'Gap [m]',
    'Temperature [°C]',
  ],
  notes: {},
}

/** Small records of every dialect that is read, as a start for mutations. */
export function seedTables(): readonly SeedTable[] {
  const plain = table({ head: [words, units] })
  const semicolon = { separator: ';', comma: true, lineEnd: '\r\n' }
  const preamble = ['Sample;invented lacquer 3', 'Note;made up, no lab measured it', '']
  const wide = { separator: '\t', head: [bracketed(words, units, (unit) => ` [${unit}]`)] }
  const texts: [string, Uint8Array][] = [
    ['comma', utf8(plain)],
    ['comma with mark', utf8(`\uFEFF${plain}`)],
    ['comma quoted', utf8(table({ head: [words, units], quote: true, comma: true }))],
    ['repeated headings', utf8(table({ head: [words, units], repeat: true, preamble: ['Sample,invented'] }))],
    ['no step, repeated headings', utf8(table({ head: [['Kanal', ...words.slice(1)], units], repeat: true }))],
    ['semicolon, Latin-1', latin1(table({ ...semicolon, head: [german, germanUnits], preamble }))],
    [
      'semicolon, units in brackets',
      utf8(table({ ...semicolon, head: [bracketed(german, germanUnits, (u) => ` (${u})`)] })),
    ],
    ['semicolon, slash', utf8(table({ ...semicolon, head: [bracketed(german, germanUnits, (u) => ` / ${u}`)] }))],
    ['semicolon, in', utf8(table({ ...semicolon, head: [bracketed(german, germanUnits, (u) => ` in ${u}`)] }))],
    ['semicolon, thousands', utf8(table({ ...semicolon, thousands: '.', head: [german, germanUnits] }))],
    ['tab', utf8(table(wide))],
    ['tab, CR', utf8(table({ ...wide, lineEnd: '\r' }))],
    ['tab, UTF-16 with mark', utf16(`\uFEFF${table(wide)}`, false)],
    ['tab, UTF-16 without mark', utf16(table(wide), true)],
    ['bar', utf8(table({ separator: '|', head: [words, units], pad: 12 }))],
    ['aligned', utf8(table({ separator: ' ', pad: 20, head: [words, units.map((unit) => unit || '-')] }))],
    [
      'aligned, one word each',
      utf8(table({ separator: '  ', head: [['step', 't_s', 'omega_rad/s', 'M_Nm', 'Fn_N', 'h_m', 'T_degC']] })),
    ],
    ['no units', utf8(table({ head: [words] }))],
    ['no headings', utf8(table({ head: [] }))],
    ['headings only', utf8(`${words.join(',')}\n${units.join(',')}\n`)],
    [
      'two torques',
      utf8(
        table({
          head: [
            ['Step', 'Time', 'Torque', 'Torque', ...words.slice(4)],
            ['', 's', 'N·m', 'N·m', 'N', 'm', '°C'],
          ],
        }),
      ),
    ],
    ['workbook', workbook([words, units, ...rows])],
    ['workbook, deflated', workbook([words, units, ...rows], true)],
    [
      'parquet',
      numberTableToParquet({
        ...numbers,
        read: (name, from, to) => Float64Array.from(rows.slice(from, to), (row) => row[numbers.names.indexOf(name)]),
      }),
    ],
  ]
  return texts.map(([name, bytes]) => ({ name, bytes }))
}
