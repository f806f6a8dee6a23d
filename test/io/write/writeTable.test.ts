import { describe, expect, test } from 'vitest'
import { channelsInMemory } from '../../../src/core/terms/index.ts'
import { plainDialect, type TableDialect, tableBytes, writeTable } from '../../../src/io/write/index.ts'

const record = channelsInMemory({
  step: Float64Array.of(1, 1, 2),
  time: Float64Array.of(0.1, 0.2, 0.3),
  angularVelocity: Float64Array.of(Math.PI, Math.PI, 2 * Math.PI),
  torque: Float64Array.of(0.002, 0.0021, 0.0022),
  axialForce: Float64Array.of(5, 5.01, 4.99),
  temperature: Float64Array.of(296.15, 296.15, 296.25),
})

function text(dialect: Partial<TableDialect>, decode: string = 'utf-8'): string {
  return new TextDecoder(decode, { ignoreBOM: true }).decode(tableBytes(record, { ...plainDialect, ...dialect }))
}

describe('layout', () => {
  test('plain: one units row, SI with °C, points and commas', () => {
    expect(text({}).split('\n')).toEqual([
      'Time,Step,Angular velocity,Torque,Axial force,Temperature',
      's,,rad/s,N·m,N,°C',
      '0.1,1,3.141593,0.002,5,23',
      '0.2,1,3.141593,0.0021,5.01,23',
      '0.3,2,6.283185,0.0022,4.99,23.1',
      '',
    ])
  })

  test('German headings, comma, units in brackets, turns per minute, CRLF, preamble', () => {
    const rows = text({
      language: 'de',
      separator: ';',
      decimalMark: ',',
      lineEnd: '\r\n',
      units: 'squareBrackets',
      unitNames: { angularVelocity: '1/min', torque: 'mN·m' },
      preamble: ['Probe;A'],
      columns: ['time', 'angularVelocity', 'torque'],
    }).split('\r\n')
    expect(rows.slice(0, 3)).toEqual(['Probe;A', 'Zeit [s];Drehzahl [1/min];Drehmoment [mN·m]', '0,1;30;2'])
  })

  test('headings again at every step, after a blank line', () => {
    const rows = text({ repeatHeadings: true, units: 'none', columns: ['time'] }).split('\n')
    expect(rows).toEqual(['Time', '0.1', '0.2', '', 'Time', '0.3', ''])
  })

  test('aligned columns are of one width', () => {
    const rows = text({ separator: 'aligned', columns: ['step', 'torque'] })
      .trimEnd()
      .split('\n')
    expect(new Set(rows.map((row) => row.length)).size).toBe(1)
    expect(rows[1].trim().split(/\s+/)).toEqual(['-', 'N·m'])
  })

  test('own headings; a heading with the separator in it is quoted', () => {
    expect(text({ headings: { torque: 'M, shaft' }, columns: ['torque'] }).split('\n')[0]).toBe('"M, shaft"')
  })
})

describe('encoding', () => {
  const first = { columns: ['torque', 'temperature'] } as const
  const want = `${text(first)}`
  test('UTF-8 with mark', () => expect(text({ ...first, encoding: 'utf-8-bom' })).toBe(`\uFEFF${want}`))
  test('UTF-16, both orders', () => {
    expect(text({ ...first, encoding: 'utf-16le' }, 'utf-16le')).toBe(`\uFEFF${want}`)
    expect(text({ ...first, encoding: 'utf-16be' }, 'utf-16be')).toBe(`\uFEFF${want}`)
  })
  test('Latin-1', () => expect(text({ ...first, encoding: 'latin-1' }, 'latin1')).toBe(want))
  test('a letter that Latin-1 lacks is refused', () => {
    expect(() => text({ encoding: 'latin-1', preamble: ['η'] })).toThrow('η')
  })
})

test('chunks join to the same bytes', () => {
  const part = (from: number, to: number) =>
    channelsInMemory(Object.fromEntries(record.names.map((name) => [name, record.read(name, from, to).slice()])))
  const dialect = { ...plainDialect, repeatHeadings: true }
  const pieces = [...writeTable([part(0, 1), part(1, 3)], dialect)]
  expect(Buffer.concat(pieces)).toEqual(Buffer.from(tableBytes(record, dialect)))
})

test('dialects that cannot be read back are refused', () => {
  expect(() => text({ decimalMark: ',' })).toThrow('separator')
  expect(() => text({ unitNames: { torque: 'N' } })).toThrow('torque')
  expect(() => text({ digits: Number.NaN })).toThrow('digits')
  expect(() => text({ columns: ['gap'] })).toThrow('gap')
})
