import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type ChannelName, channelNames, channelsInMemory } from '../../../src/core/terms/index.ts'
import { plainDialect, type TableDialect, tableBytes } from '../../../src/io/index.ts'
import { readText } from './tableText.ts'

const unitNames: Readonly<Record<ChannelName, readonly string[]>> = {
  time: ['s', 'ms', 'min'],
  step: [''],
  angularVelocity: ['rad/s', '1/min', 'rpm', '°/s'],
  slidingSpeed: ['m/s', 'mm/s'],
  torque: ['N·m', 'mN·m', 'µN·m'],
  frictionForce: ['N', 'mN'],
  axialForce: ['N', 'mN', 'kN'],
  angle: ['rad', '°', 'mrad'],
  gap: ['m', 'mm', 'µm'],
  temperature: ['°C', 'K'],
}

const optional = channelNames.filter((name) => name !== 'time' && name !== 'torque')

const dialect = fc
  .record({
    marks: fc.constantFrom(
      [',', '.'],
      [';', '.'],
      [';', ','],
      ['\t', '.'],
      ['\t', ','],
      ['aligned', '.'],
      ['aligned', ','],
    ),
    lineEnd: fc.constantFrom('\n', '\r\n'),
    encoding: fc.constantFrom('utf-8', 'utf-8-bom', 'utf-16le', 'utf-16be', 'latin-1'),
    language: fc.constantFrom('en', 'de'),
    units: fc.constantFrom('row', 'squareBrackets', 'roundBrackets'),
    unitNames: fc.record(
      Object.fromEntries(
        channelNames.filter((name) => name !== 'step').map((name) => [name, fc.constantFrom(...unitNames[name])]),
      ),
    ),
    preamble: fc.array(fc.constantFrom('Sample;invented', 'Note: made up', '', 'Operator\tA. Nother'), {
      maxLength: 4,
    }),
  })
  .map(
    ({ marks: [separator, decimalMark], ...rest }) =>
      ({ ...plainDialect, ...rest, separator, decimalMark, digits: 15 }) as TableDialect,
  )

test('what is written in any dialect is read again', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.record({
        form: dialect,
        names: fc.subarray(optional),
        values: fc.array(fc.double({ min: -1000, max: 1000, noNaN: true }), { minLength: 12, maxLength: 60 }),
        repeat: fc.boolean(),
      }),
      async ({ form, names, values, repeat }) => {
        const rows = values.length
        const column = (shift: number): Float64Array =>
          Float64Array.from(values, (_, row) => values[(row + shift) % rows] + shift)
        const columns: Partial<Record<ChannelName, Float64Array>> = { torque: column(1) }
        for (const [shift, name] of names.entries()) columns[name] = column(shift + 2)
        columns.time = Float64Array.from(values, (_, row) => (row + 1) / 4)
        columns.step = Float64Array.from(values, (_, row) => 1 + Math.floor(row / 5))
        const channels = channelsInMemory(columns)
        const outcome = await readText(tableBytes(channels, { ...form, repeatHeadings: repeat }))
        if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join('\n'))
        const { value } = outcome
        expect(value.remarks).toEqual([])
        expect(value.channels.names).toEqual(channels.names)
        expect(value.rows).toBe(rows)
        expect(value.dialect.repeatedHeadings).toBe(repeat ? Math.ceil(rows / 5) - 1 : 0)
        for (const name of channels.names) {
          const [want, got] = [channels.read(name, 0, rows), value.channels.read(name, 0, rows)]
          // Fifteen digits in a unit up to a million times larger, and the zero point of °C.
          for (let row = 0; row < rows; row++) expect(Math.abs(got[row] - want[row])).toBeLessThan(1e-9)
        }
      },
    ),
    { numRuns: 300 },
  )
})
