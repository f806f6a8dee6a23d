import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readRecord, tableProblemKinds } from '../../../src/io/index.ts'
import { mostProblems } from '../../../src/io/table/problems.ts'
import { longTable, problemsOf, readText, recordOf, valuesOf } from './tableText.ts'

const rows = (count: number, from = 0): string =>
  Array.from({ length: count }, (_, n) => `1,${(from + n) / 10},${0.02 - n / 1e6}`).join('\n')
const head = 'Step,Time,Torque\n,s,N·m\n'
const bytes = (...numbers: number[]): Uint8Array => Uint8Array.from(numbers)

// What must be refused: the kind, and where the finger points.
const refused: [string, string | Uint8Array, { kind: string; line?: number; column?: number; cell?: string }][] = [
  ['0 bytes', '', { kind: 'fileEmpty' }],
  [
    'a JPEG photo',
    bytes(0xff, 0xd8, 0xff, 0xe0, ...Array.from({ length: 900 }, (_, n) => (n * 37) % 256)),
    { kind: 'notATable', line: 1 },
  ],
  ['a PNG picture', bytes(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13), { kind: 'notATable', line: 1 }],
  ['noise', Uint8Array.from({ length: 5000 }, (_, n) => (n * n * 31 + n * 7) % 256), { kind: 'notATable', line: 1 }],
  ['a gzip archive', bytes(0x1f, 0x8b, 8, 0, 0, 0, 0, 0), { kind: 'notATable', line: 1 }],
  ['an old workbook', bytes(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1), { kind: 'notATable', line: 1 }],
  ['a letter', 'Dear colleague,\n\nthe rheometer is free on Monday.\n', { kind: 'notATable', line: 1 }],
  ['one word', 'torque', { kind: 'notATable', line: 1 }],
  ['line ends only', '\n\n\r\n', { kind: 'notATable', line: 1 }],
  ['headings only', head, { kind: 'noRows', line: 1 }],
  ['no torque', `Step,Time,Gap\n,s,mm\n${rows(5)}`, { kind: 'columnMissing', line: 1 }],
  ['no time', `Step,Gap,Torque\n,mm,N·m\n${rows(5)}`, { kind: 'columnMissing', line: 1 }],
  [
    'an unknown unit',
    `Step,Time,Torque\n,s,Nmm2x\n${rows(5)}`,
    { kind: 'unitUnknown', line: 1, column: 3, cell: 'Nmm2x' },
  ],
  [
    'a unit of something else',
    `Step,Time,Torque\n,s,mm\n${rows(5)}`,
    { kind: 'unitUnfit', line: 1, column: 3, cell: 'mm' },
  ],
  ['no unit', `Step,Time,Torque\n${rows(5)}`, { kind: 'unitMissing', line: 1, column: 2 }],
  ['two torques', `Time,Torque,Moment\ns,N·m,N·m\n${rows(5)}`, { kind: 'columnTwice', line: 1, column: 3 }],
  [
    'time running backwards',
    `${head}${rows(5, 100)}\n${rows(5)}`,
    { kind: 'timeBackwards', line: 8, column: 2, cell: '0' },
  ],
  ['text among numbers, often', `${head}${rows(10)}\n1,1.5,oops\n1,1.6,0.02`, { kind: 'tooManyDamaged', line: 13 }],
  ['commas for both jobs', 'Time [s],Torque [Nm]\n0,5,1,2\n1,0,1,3\n1,5,1,4', { kind: 'separatorUnclear', line: 2 }],
  [
    '1,234 and nothing that tells',
    'Time [s]\tTorque [Nm]\n1,234\t2,345\n2,234\t3,345',
    { kind: 'decimalUnclear', line: 2 },
  ],
]

test.for(refused)('%s', async ([, text, { kind, ...place }]) => {
  const [first] = await problemsOf(text)
  expect(first.kind).toBe(kind)
  expect(first.class).toBe('badInput')
  expect(first.place).toMatchObject({ file: 'run.csv', ...place })
  expect(first.what).toMatch(/^["A-Z0-9].*\.$/)
  expect(first.mend).toMatch(/[.?]$/)
  expect(tableProblemKinds).toContain(first.kind)
})

describe('files that cannot be opened', () => {
  test('no such file', async () => {
    const outcome = await readRecord('/nowhere/run.csv')
    expect(outcome).toMatchObject({ ok: false, problems: [{ kind: 'fileUnreadable', place: { file: 'run.csv' } }] })
  })

  test('a folder', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'kufe-test-'))
    expect(await readRecord(folder)).toMatchObject({
      ok: false,
      problems: [{ kind: 'fileUnreadable', what: 'The file is a folder.' }],
    })
    await rm(folder, { recursive: true })
  })
})

describe('all problems of a file at once', () => {
  test('columns and rows together', async () => {
    const text = `Step,Time,Torque,Gap,Spalt\n,s,Nmm2x,mm,mm\n${rows(4).replaceAll('\n', ',1,1\n')},1,1\n1,0.1,0.02,1,1`
    expect((await problemsOf(text)).map(({ kind }) => kind)).toEqual(['columnTwice', 'unitUnknown', 'timeBackwards'])
  })

  test('no more than twenty, the rest is counted', async () => {
    const problems = await problemsOf(longTable(1000, (row) => `1,${row},${row % 3 === 0 ? `x${row}` : '0.02'}`))
    expect(problems).toHaveLength(mostProblems + 1)
    expect(problems[0].what).toBe('334 of 1000 rows do not read as rows of the table, more than 5 %.')
    expect(problems[1]).toEqual({
      kind: 'notANumber',
      class: 'badInput',
      place: { file: 'run.csv', line: 3, column: 3, name: 'Torque', cell: 'x0' },
      what: '"x0" in column "Torque" is no number.',
      mend: 'Write it as a plain number or leave the cell empty.',
    })
    expect(problems.at(-1)).toMatchObject({ kind: 'andMore', what: 'and 315 more.' })
  })

  test('every place where time runs back, up to the cap', async () => {
    const problems = await problemsOf(longTable(100, (row) => `1,${row % 2 === 0 ? row : row - 2},0.02`))
    expect(problems.slice(0, 2).map(({ place }) => [place.line, place.cell])).toEqual([
      [4, '-1'],
      [6, '1'],
    ])
    expect(problems.at(-1)?.what).toBe('and 30 more.')
  })
})

describe('a few damaged rows are left out and told', () => {
  const good = 200
  const withOne = (line: string): string => longTable(good, (row) => (row === 57 ? line : `1,${row / 10},0.02`))

  // A word in place of a number, a cut row, cells too many, a missing time.
  test.for([
    ['1,5.7,oops', '"oops" in column "Torque" is no number.'],
    ['1,5.7,0,02', 'the row has more than 3 cells, the first of them too many is "02".'],
    ['1,5.7', 'the row ends before column "Torque".'],
    ['1,,0.02', 'the row has no time in column "Time".'],
    ['1,5.7,"0.02', '""0.02" in column "Torque" is no number.'],
    ['1,5.7,0.02 N·m', '"0.02 N·m" in column "Torque" is no number.'],
    ['sensor restarted', '"sensor restarted" in column "Step" is no number.'],
  ])('%s', async ([line, said]) => {
    const record = await recordOf(withOne(line))
    expect(record.rows).toBe(good - 1)
    expect(record.remarks).toHaveLength(1)
    expect(record.remarks[0]).toMatchObject({ kind: 'rowsLeftOut', seen: 1, limit: 10, unit: '' })
    expect(record.remarks[0].sentence).toBe(`1 of 200 rows were left out; the first is line 60: ${said}`)
    expect(valuesOf(record).time).toEqual(
      Array.from({ length: good }, (_, row) => row / 10).filter((_, row) => row !== 57),
    )
  })

  test('a decimal in the wrong spelling is never read a thousand times too large', async () => {
    const record = await recordOf(
      longTable(good, (row) => `1,${row / 10},0.02`)
        .replaceAll(',', ';')
        .replace('5.7;0.02', '5.7;1,234'),
    )
    expect(record.remarks[0].next).toBe(
      'Write it with "." as the decimal mark, or name the file\'s own mark with --decimal comma.',
    )
  })

  test('up to five per cent, and no more', async () => {
    const text = (bad: number): string => longTable(100, (row) => (row < bad ? '1,x,0.02' : `1,${row},0.02`))
    expect((await recordOf(text(5))).remarks[0]).toMatchObject({ seen: 5, limit: 5 })
    expect((await problemsOf(text(6)))[0].kind).toBe('tooManyDamaged')
  })

  test('the last line may stop early', async () => {
    const record = await recordOf(`${head}${rows(10)}\n1,1.`)
    expect(record.rows).toBe(10)
    expect(record.remarks).toMatchObject([
      { kind: 'rowsLeftOut', seen: 1, sentence: 'The last line (13) stops early and was left out.' },
    ])
  })

  test('a whole last line without a line end is a row', async () => {
    const record = await recordOf(`${head}${rows(10)}`)
    expect(record.rows).toBe(10)
    expect(record.remarks).toEqual([])
  })
})

test('a column of words is refused with the short way out', async () => {
  const problems = await problemsOf(longTable(50, (row) => `up ${row},${row},0.02`))
  expect(problems[0].mend).toContain('leave the column aside with --column "Step=none"')
  const record = await recordOf(
    longTable(50, (row) => `up ${row},${row},0.02`),
    { columns: { Step: { channel: null } } },
  )
  expect(record.rows).toBe(50)
})

describe('words for nothing', () => {
  test.for(['NaN', 'nan', 'inf', '-Infinity', 'n/a', '#N/A', '---'])(
    '%s counts as an empty cell and is told',
    async (word) => {
      const record = await recordOf(longTable(10, (row) => `1,${row},${row === 4 || row === 6 ? word : '0.02'}`))
      expect(record.rows).toBe(10)
      expect(record.channels.read('torque', 4, 5)[0]).toBeNaN()
      expect(record.remarks).toMatchObject([{ kind: 'cellsLeftEmpty', seen: 2, limit: 0 }])
      expect(record.remarks[0].sentence).toBe(
        `2 cells hold a word instead of a number and count as empty; the first is "${word}" in line 7, column "Torque".`,
      )
    },
  )
})

describe('hostile shapes', () => {
  const within = async (milliseconds: number, text: string | Uint8Array): Promise<string> => {
    const started = performance.now()
    const outcome = await readText(text)
    expect(performance.now() - started).toBeLessThan(milliseconds)
    return outcome.ok ? `${outcome.value.rows} rows` : outcome.problems[0].kind
  }

  test('one line of ten megabytes', async () => {
    expect(await within(2000, 'x'.repeat(10_000_000))).toBe('notATable')
    expect(await within(2000, '1,'.repeat(5_000_000))).toMatch(/notATable|tooManyColumns/)
  })

  test('a line of ten megabytes among the rows', async () => {
    expect(await within(2000, `${head}${rows(30)}\n1,3,${'0'.repeat(10_000_000)}1\n${rows(30, 40)}\n`)).toBe('60 rows')
    expect(await within(2000, `${head}${rows(30)}\n${'"'.repeat(10_000_001)}\n${rows(30, 40)}\n`)).toBe('60 rows')
  })

  test('a line longer than is read', async () => {
    expect(await within(4000, `${head}${rows(30)}\n${'1,'.repeat(9_000_000)}\n`)).toBe('lineTooLong')
  })

  test('no line end anywhere', async () => {
    expect(await within(2000, `${head}${rows(1000)}`.replaceAll('\n', ' '))).toBe('noRows')
  })

  test('a thousand columns, and one too many', async () => {
    const line = (cells: number, cell: (n: number) => string): string =>
      Array.from({ length: cells }, (_, n) => cell(n)).join(',')
    const wide = (cells: number): string =>
      [
        line(cells, (n) => ['Time [s]', 'Torque [Nm]'][n] ?? `Channel ${n}`),
        ...[1, 2, 3].map((row) => line(cells, () => String(row))),
      ].join('\n')
    expect(await within(2000, wide(1000))).toBe('3 rows')
    expect(await within(2000, wide(1001))).toBe('tooManyColumns')
  })

  test('zero bytes and control letters in a text do not reach the screen', async () => {
    const [problem] = await problemsOf(`Time [s],Torque [\u001b[31mN\u0000]\n${rows(50).replaceAll('1,', '')}\n`)
    expect(`${problem.what}${problem.mend}${JSON.stringify(problem.place)}`).not.toMatch(/\p{Cc}/u)
  })

  test('headings that name what every object has', async () => {
    const columns = { constructor: { unit: 's' }, toString: { unit: 'N' } }
    expect((await problemsOf(`__proto__,constructor\n${rows(5)}`, { columns })).map(({ kind }) => kind)).toContain(
      'columnMissing',
    )
  })
})
