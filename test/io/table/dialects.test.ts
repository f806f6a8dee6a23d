import { describe, expect, test } from 'vitest'
import { recordOf, valuesOf } from './tableText.ts'

// One invented record of three rows. The values in SI are worked out by hand from the definition of each unit.
const want = {
  time: [0.5, 1, 1.5],
  step: [1, 1, 2],
  angularVelocity: [1, 2, 4],
  torque: [0.0015, 0.00125, 0.001],
  axialForce: [5, 5.25, 1234.5],
  temperature: [296.15, 296.25, 296.15],
}
const body = ['1,0.5,1,0.0015,5,23', '1,1,2,0.00125,5.25,23.1', '2,1.5,4,0.001,1234.5,23']
const head = ['Step,Time,Angular velocity,Torque,Axial force,Temperature', ',s,rad/s,N·m,N,°C']
const plain = [...head, ...body].join('\n')

const encode = (text: string, big: boolean): Uint8Array => {
  const view = new DataView(new ArrayBuffer(2 * text.length))
  for (let n = 0; n < text.length; n++) view.setUint16(2 * n, text.charCodeAt(n), !big)
  return new Uint8Array(view.buffer)
}
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0))
const german = (line: string): string => line.replaceAll(',', ';').replaceAll('.', ',')
const semicolon = [...head.map((line) => line.replaceAll(',', ';')), ...body.map(german)].join('\r\n')
const columns = [
  ['Step', 'Time', 'Angular velocity', 'Torque', 'Axial force', 'Temperature'],
  ['-', 's', 'rad/s', 'N·m', 'N', '°C'],
  ...body.map((line) => line.split(',')),
]
const aligned = columns.map((line) => line.map((cell) => cell.padStart(18)).join('')).join('\n')
const leftAligned = columns.map((line) => line.map((cell) => cell.padEnd(18)).join('')).join('\n')

const dialects: [string, string | Uint8Array][] = [
  ['commas', plain],
  ['a byte-order mark', `\uFEFF${plain}`],
  ['CRLF', plain.replaceAll('\n', '\r\n')],
  ['CR', plain.replaceAll('\n', '\r')],
  ['line end after the last row', `${plain}\n`],
  ['semicolons and decimal commas', semicolon],
  ['Latin-1', latin1(semicolon)],
  ['tabs', plain.replaceAll(',', '\t')],
  ['tabs and decimal commas', semicolon.replaceAll(';', '\t')],
  ['bars', plain.replaceAll(',', '|')],
  ['UTF-16 little-endian with mark', encode(`\uFEFF${plain}`, false)],
  ['UTF-16 big-endian with mark', encode(`\uFEFF${semicolon}`, true)],
  ['UTF-16 little-endian without mark', encode(plain, false)],
  ['UTF-16 big-endian without mark', encode(plain.replaceAll(',', '\t'), true)],
  ['aligned by blanks, right', aligned],
  ['aligned by blanks, left', leftAligned],
  ['aligned by blanks, decimal commas', aligned.replaceAll('.', ',').replace('N,m', 'N.m')],
  ['blanks around cells', plain.replaceAll(',', ' ,  ')],
  ['all in quotation marks', plain.replace(/[^,\n]+/g, '"$&"')],
  [
    'decimal commas in quotation marks',
    [...head, ...body.map((line) => line.replace(/[^,\n]+/g, (cell) => `"${cell.replace('.', ',')}"`))].join('\n'),
  ],
  ['trailing separators', plain.replaceAll('\n', ',,\n')],
  ['blank lines', plain.replaceAll('\n', '\n\n')],
  ['lines of separators', plain.replace(body[1], `${body[1]}\n,,,,,`)],
  [
    'units in square brackets',
    ['Step,Time [s],Angular velocity [rad/s],Torque [N·m],Axial force [N],Temperature [°C]', ...body].join('\n'),
  ],
  [
    'units in round brackets',
    ['Step,Time (s),Angular velocity (rad/s),Torque (N·m),Axial force (N),Temperature (°C)', ...body].join('\n'),
  ],
  [
    'units after a slash',
    ['Step,Time / s,Angular velocity / rad/s,Torque / N·m,Axial force / N,Temperature / °C', ...body].join('\n'),
  ],
  [
    'units after "in"',
    [
      'Schritt,Zeit in s,Winkelgeschwindigkeit in rad/s,Drehmoment in N·m,Normalkraft in N,Temperatur in °C',
      ...body,
    ].join('\n'),
  ],
  [
    'units after a comma',
    [
      'Step;Time, s;Angular velocity, rad/s;Torque, N·m;Axial force, N;Temperature, °C',
      ...body.map((line) => line.replaceAll(',', ';')),
    ].join('\n'),
  ],
  [
    'units after an underscore',
    ['step,time_s,angular_velocity_rad/s,torque_Nm,axial_force_N,temperature_degC', ...body].join('\n'),
  ],
  ['symbols', ['Step,t [s],ω [rad/s],M [Nm],F_N [N],T [°C]', ...body].join('\n')],
  ['symbols and a row of units', ['Step,t,Ω,M,Fn,T', ',[s],[rad/s],[Nm],[N],[°C]', ...body].join('\n')],
  [
    'other units',
    [
      'Step,t [ms],n [1/min],M [µNm],F [mN],T [K]',
      ...[
        '1,500,9.549296585513721,1500,5000,296.15',
        '1,1000,19.098593171027442,1250,5250,296.25',
        '2,1500,38.197186342054884,1000,1234500,296.15',
      ],
    ].join('\n'),
  ],
  ['thousands marks', [...head, body[0], body[1], '2,1.5,4,0.001,"1,234.5",23'].join('\n')],
  ['thousands points', [semicolon.replace('1234,5', '1.234,5')].join('\n')],
  ['thousands blanks', [semicolon.replace('1234,5', '1 234,5')].join('\n')],
  ['comments before all that are no numbers', `# Sample: invented\n# ${head[0]}\n#${head[1]}\n${body.join('\n')}`],
  ['an index without a heading', [`,${head[0]}`, `,${head[1]}`, ...body.map((line, n) => `${n},${line}`)].join('\n')],
  ['exponents', plain.replace('0.0015', '1.5e-3').replace('1234.5', '1.2345E+03')],
  ['headings with line ends', plain.replace('Angular velocity', '"Angular\nvelocity"')],
  [
    'more columns, texts among them',
    [...[...head, ...body].map((line, n) => `${n === 0 ? 'Note,State' : n === 1 ? ',' : 'a "b" c;d,ok'},${line}`)].join(
      '\n',
    ),
  ],
]

test.for(dialects)('%s', async ([, text]) => {
  expect(valuesOf(await recordOf(text))).toEqual(want)
})

describe('numbers that could be cut in two ways', () => {
  // Two columns set apart by one blank, and the same with marks between groups of three.
  test.for([
    ['t[s] M[Nm]', ['0,974 135,25', '1,958 135,5', '2,939 136,25'], [0.974, 1.958, 2.939], [135.25, 135.5, 136.25]],
    ['t[s];M[Nm]', ['1.234,5;2.345,25', '1.235,5;2.346,25'], [1234.5, 1235.5], [2345.25, 2346.25]],
    ['t[s];M[Nm]', ['1 234,5;2 345,25', '1 235,5;2 346,25'], [1234.5, 1235.5], [2345.25, 2346.25]],
    ['t[s]\tM[Nm]', ['1,234.5\t2,345.25', '1,235.5\t2,346.25'], [1234.5, 1235.5], [2345.25, 2346.25]],
    ['t[s] M[Nm]', ['1 234', '2 345', '3 456'], [1, 2, 3], [234, 345, 456]],
    ['t[s],M[Nm]', ['1,234', '2,345', '3,456'], [1, 2, 3], [234, 345, 456]],
    ['t[s];M[Nm]', ['0,001;2', '0,002;3', '1,234;4'], [0.001, 0.002, 1.234], [2, 3, 4]],
  ] as [string, string[], number[], number[]][])('%s: %s', async ([line, rows, time, torque]) => {
    expect(valuesOf(await recordOf([line, ...rows].join('\n')))).toEqual({ time, torque })
  })
})

describe('what was found out is told', () => {
  test('semicolons', async () => {
    const { dialect, preamble, sha256 } = await recordOf(
      latin1(`Sample;oat drink; warm\r\nNote: made up\r\n\r\n${semicolon}`),
    )
    expect(dialect).toEqual({
      format: 'text',
      encoding: 'windows-1252',
      separator: ';',
      decimalMark: ',',
      thousandsMark: null,
      preambleLines: 3,
      headerLine: 4,
      unitRow: true,
      repeatedHeadings: 0,
    })
    expect(preamble).toEqual([
      { line: 1, key: 'Sample', value: 'oat drink; warm' },
      { line: 2, key: 'Note', value: 'made up' },
    ])
    expect(sha256).toMatch(/^[0-9a-f]{64}$/)
  })

  test('SHA-256 is that of the raw bytes', async () => {
    const bytes = encode(`\uFEFF${plain}`, false)
    const hash = Buffer.from(await crypto.subtle.digest('SHA-256', new Uint8Array(bytes))).toString('hex')
    expect((await recordOf(bytes)).sha256).toBe(hash)
  })

  test('a preamble longer than the first look', async () => {
    const preamble = Array.from({ length: 60_000 }, (_, n) => `Remark ${n};nothing to say about the ${n}th thing`)
    const record = await recordOf([...preamble, semicolon].join('\n'))
    expect(record.dialect.headerLine).toBe(60_001)
    expect(record.preamble).toHaveLength(1000)
    expect(valuesOf(record)).toEqual(want)
  })

  test('a preamble with numbers in it', async () => {
    const record = await recordOf(`Gap range,0.001,0.002\nDate,2026-11-25,12:00\nRange,1,2,3\n\n${plain}`)
    expect(record.dialect.headerLine).toBe(5)
    expect(valuesOf(record)).toEqual(want)
  })
})

describe('ragged rows', () => {
  test('may lack what is not needed', async () => {
    const record = await recordOf([...head, '1,0.5,1,0.0015', body[1], '2,1.5,4,0.001,1234.5,'].join('\n').concat('\n'))
    const values = valuesOf(record)
    expect(values.axialForce).toEqual([Number.NaN, 5.25, 1234.5])
    expect(values.temperature).toEqual([Number.NaN, 296.25, Number.NaN])
    expect(record.remarks).toEqual([])
  })

  test('empty cells are NaN', async () => {
    expect(valuesOf(await recordOf(plain.replace('0.00125', ''))).torque).toEqual([0.0015, Number.NaN, 0.001])
  })
})

test('a dialect may be said instead of found out', async () => {
  const odd = 'Time [s];Torque [Nm]\n1,000;2,000\n2,000;3,000'
  expect(valuesOf(await recordOf(odd, { decimalMark: '.' })).torque).toEqual([2000, 3000])
  expect(valuesOf(await recordOf(odd)).torque).toEqual([2, 3])
  const latin = latin1('Time [s],Temperature [°C],Torque [Nm]\n1,20,3\n2,20,3')
  expect(valuesOf(await recordOf(latin, { encoding: 'windows-1252', separator: ',' })).temperature).toEqual([
    293.15, 293.15,
  ])
})
