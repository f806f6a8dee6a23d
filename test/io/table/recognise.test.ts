import { describe, expect, test } from 'vitest'
import { problemsOf, recordOf, valuesOf } from './tableText.ts'

const rows = (count: number): string =>
  Array.from({ length: 3 }, (_, row) => Array.from({ length: count }, (_, column) => row + column / 10).join(';')).join(
    '\n',
  )
const table = (headings: string): string => `${headings}\n${rows(headings.split(';').length)}`

describe('every guess has its reason', () => {
  test('in a sentence', async () => {
    const { columns } = await recordOf(table('Zeit [s];Drehzahl [1/min];Solldrehzahl [1/min];M [mNm];Bemerkung'))
    expect(columns).toEqual([
      {
        column: 1,
        heading: 'Zeit [s]',
        unit: 's',
        channel: 'time',
        source: 'guess',
        reason: '"zeit" is a word for time and "s" is a unit of it.',
      },
      {
        column: 2,
        heading: 'Drehzahl [1/min]',
        unit: '1/min',
        channel: 'angularVelocity',
        source: 'guess',
        reason: '"drehzahl" is a word for angular velocity and "1/min" is a unit of it.',
      },
      {
        column: 3,
        heading: 'Solldrehzahl [1/min]',
        unit: '1/min',
        channel: null,
        source: 'guess',
        reason: 'it speaks of angular velocity, but of what was commanded, not what was measured.',
      },
      {
        column: 4,
        heading: 'M [mNm]',
        unit: 'mNm',
        channel: 'torque',
        source: 'guess',
        reason: '"M" is a word for torque and "mNm" read as mN·m is a unit of it.',
      },
      {
        column: 5,
        heading: 'Bemerkung',
        unit: '',
        channel: null,
        source: 'guess',
        reason: 'neither words nor unit name a channel.',
      },
    ])
  })

  test('1/s is read by the words', async () => {
    const { columns } = await recordOf(table('t [s];Drehzahl [1/s];M [Nm]'))
    expect(columns[1].reason).toBe('"drehzahl" is a word for angular velocity and "1/s" read as rev/s is a unit of it.')
  })

  test('a unit alone names a channel where no word does', async () => {
    const { columns } = await recordOf(table('Temps [s];Couple [N·m];Autre [mm]'))
    expect(columns.map(({ channel }) => channel)).toEqual(['time', 'torque', null])
    expect(columns[1].reason).toBe('no word names it, but it alone has a unit of torque.')
  })
})

describe('several columns for one channel', () => {
  test('the clock of a step gives way to the clock of the record', async () => {
    const { columns } = await recordOf(table('Step time [s];Time [s];Torque [N·m]'))
    expect(columns.map(({ channel }) => channel)).toEqual([null, 'time', 'torque'])
    expect(columns[0].reason).toBe('left aside: "Time [s]" holds time.')
  })

  test('the clock of a step is used where there is no other', async () => {
    const { columns } = await recordOf(table('Interval time [s];Torque [N·m]'))
    expect(columns[0].channel).toBe('time')
  })

  test('a column without unit gives way to one with', async () => {
    const { columns } = await recordOf(table('t [s];n;Rotational speed [rpm];M [Nm]'))
    expect(columns.map(({ channel }) => channel)).toEqual(['time', null, 'angularVelocity', 'torque'])
  })

  test('two torques: both are named, with the mend', async () => {
    const problems = await problemsOf(table('t [s];Torque [mN·m];Drehmoment [N·m]'))
    expect(problems).toEqual([
      {
        kind: 'columnTwice',
        class: 'badInput',
        place: { file: 'run.csv', line: 1, column: 3, name: 'Drehmoment [N·m]', cell: 'Drehmoment [N·m]' },
        what: '2 columns seem to hold torque: "Torque [mN·m]" (column 2), "Drehmoment [N·m]" (column 3).',
        mend: 'Leave all but one aside, for example to keep "Torque [mN·m]": --column "Drehmoment=none".',
      },
    ])
  })

  test('two torques: the mend works', async () => {
    const record = await recordOf(table('t [s];Torque [mN·m];Drehmoment [N·m]'), {
      columns: { Drehmoment: { channel: null } },
    })
    expect(valuesOf(record).torque).toEqual([0.0001, 0.0011, 0.0021])
  })

  test('two columns of one heading are told apart by number', async () => {
    const headings = 't [s];M [Nm];M [Nm]'
    expect((await problemsOf(table(headings)))[0].mend).toContain('--column "#3=none"')
    const record = await recordOf(table(headings), { columns: { '#2': { channel: null } } })
    expect(valuesOf(record).torque).toEqual([0.2, 1.2, 2.2])
  })
})

describe('answers', () => {
  const bare = table('TIME;FF;Druck [bar]')

  test('units that are written nowhere are asked for, and the answers work', async () => {
    const problems = await problemsOf(bare)
    expect(problems.map(({ kind, place, mend }) => [kind, place.column, mend])).toEqual([
      ['unitMissing', 1, 'Say the unit with --unit "TIME=s" or in the setup under columns.'],
      [
        'unitMissing',
        2,
        'Say the unit with --unit "FF=N" or in the setup under columns, or leave the column aside with --column "FF=none".',
      ],
    ])
    const record = await recordOf(bare, { columns: { TIME: { unit: 'min' }, FF: { unit: 'mN' } } })
    expect(valuesOf(record)).toEqual({ time: [0, 60, 120], frictionForce: [0.0001, 0.0011, 0.0021] })
    expect(record.columns[0]).toMatchObject({ channel: 'time', unit: 'min', source: 'option' })
  })

  test.for([
    ['the whole heading', 'Druck [bar]'],
    ['its words', 'Druck'],
    ['its words in another case', 'DRUCK'],
    ['its number', '#3'],
  ])('name a column by %s', async ([, key]) => {
    const columns = { TIME: { unit: 's' }, FF: { unit: 'N' }, [key]: { channel: 'torque', unit: 'N.m' } } as const
    expect(valuesOf(await recordOf(bare, { columns })).torque).toEqual([0.2, 1.2, 2.2])
  })

  test('an option goes before a kept mapping, and a mapping before the guess', async () => {
    const mapping = { name: 'rig 2', columns: { TIME: { unit: 'min' }, FF: { unit: 'mN' }, Gone: { unit: 's' } } }
    const record = await recordOf(bare, { mapping, columns: { TIME: { unit: 's' } } })
    expect(record.columns.map(({ source }) => source)).toEqual(['option', 'mapping', 'guess'])
    expect(valuesOf(record)).toEqual({ time: [0, 1, 2], frictionForce: [0.0001, 0.0011, 0.0021] })
  })

  test('an answer that speaks of no column is a mistake of use', async () => {
    const problems = await problemsOf(bare, {
      columns: { TIME: { unit: 's' }, FF: { unit: 'N' }, Druk: { unit: 's' } },
    })
    expect(problems).toMatchObject([{ kind: 'headingUnknown', class: 'wrongUse', place: { name: 'Druk' } }])
  })

  test('a table without headings is answered by numbers', async () => {
    expect((await problemsOf(rows(3))).map(({ kind }) => kind)).toEqual(['columnMissing', 'columnMissing'])
    const columns = { '#1': { channel: 'time', unit: 's' }, '#3': { channel: 'torque', unit: 'mN.m' } } as const
    const record = await recordOf(rows(3), { columns })
    expect(valuesOf(record)).toEqual({ time: [0, 1, 2], torque: [0.0002, 0.0012, 0.0022] })
    expect(record.dialect.headerLine).toBeNull()
  })

  test('a table with fewer headings than columns is answered by numbers too', async () => {
    const text = `t [s];M [Nm]\n${rows(3)}`
    expect((await problemsOf(text))[0].kind).toBe('headingsShort')
    const columns = { '#2': { channel: 'time', unit: 's' }, '#3': { channel: 'torque', unit: 'N.m' } } as const
    expect(valuesOf(await recordOf(text, { columns }))).toEqual({ time: [0.1, 1.1, 2.1], torque: [0.2, 1.2, 2.2] })
  })

  test('a unit that is none of the channel', async () => {
    const problems = await problemsOf(bare, { columns: { TIME: { unit: 's' }, FF: { channel: 'torque', unit: 'N' } } })
    expect(problems).toMatchObject([{ kind: 'unitUnfit', place: { column: 2, cell: 'N' } }])
  })
})

describe('channels that must be there', () => {
  test('the nearest heading is suggested', async () => {
    const problems = await problemsOf(
      table('Tme [s];Torqe [Nm];Normal force [N]').replace('[Nm]', '[x]').replace('[s]', ''),
    )
    expect(problems.map(({ kind, mend }) => [kind, mend])).toEqual([
      ['columnMissing', 'Did you mean "Tme"? Then say so with --column "Tme=time".'],
      ['columnMissing', 'Did you mean "Torqe [x]"? Then say so with --column "Torqe [x]=torque".'],
    ])
  })

  test('others may be asked for', async () => {
    const text = table('t [s];M [Nm]')
    expect(await problemsOf(text, { required: ['time', 'axialForce'] })).toMatchObject([{ kind: 'columnMissing' }])
    expect((await recordOf(table('t [s];T [°C]'), { required: ['time'] })).channels.names).toEqual([
      'time',
      'temperature',
    ])
  })
})
