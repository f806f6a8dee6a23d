import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parquetWriteBuffer } from 'hyparquet-writer'
import { describe, expect, test } from 'vitest'
import { channelsInMemory } from '../../../src/core/terms/index.ts'
import { columnsToParquet } from '../../../src/io/columns/index.ts'
import { readRecord } from '../../../src/io/index.ts'
import { problemsOf, recordOf, valuesOf } from './tableText.ts'

type Columns = Parameters<typeof parquetWriteBuffer>[0]['columnData']

const parquet = (columnData: Columns, rowGroupSize = 1000): Uint8Array =>
  new Uint8Array(parquetWriteBuffer({ columnData, rowGroupSize }))

test('columns of every type of number, units in their names', async () => {
  const record = await recordOf(
    parquet([
      { name: 'time_s', data: [0.1, 0.2, 0.3], type: 'DOUBLE' },
      { name: 'Step', data: [1, 1, 2], type: 'INT32' },
      { name: 'torque_mNm', data: [1.5, 2.5, 3.5], type: 'FLOAT' },
      { name: 'Axial force [N]', data: [5n, 6n, 7n], type: 'INT64' },
      { name: 'Spalt in µm', data: [1, null, 3], type: 'DOUBLE' },
      { name: 'T_degC', data: ['23', '', '24.5'], type: 'STRING' },
      { name: 'Note', data: ['a', 'b', 'c'], type: 'STRING' },
    ]),
  )
  expect(valuesOf(record)).toEqual({
    time: [0.1, 0.2, 0.3],
    step: [1, 1, 2],
    torque: [0.0015, 0.0025, 0.0035],
    axialForce: [5, 6, 7],
    gap: [1e-6, Number.NaN, 3e-6],
    temperature: [296.15, Number.NaN, 297.65],
  })
  expect(record.dialect.format).toBe('parquet')
})

test('many row groups, from a file and from bytes, in memory and not', async () => {
  const count = 150_000
  const time = Array.from({ length: count }, (_, row) => row / 8)
  const bytes = parquet(
    [
      { name: 'Time [s]', data: time, type: 'DOUBLE' },
      { name: 'M [Nm]', data: time.map((t) => t / 1024), type: 'DOUBLE' },
    ],
    7000,
  )
  const folder = await mkdtemp(join(tmpdir(), 'kufe-test-'))
  const path = join(folder, 'run.parquet')
  await writeFile(path, bytes)
  const outcomes = [await readRecord(path), await readRecord(bytes), await readRecord(path, { spillAbove: 10 })]
  const hash = Buffer.from(await crypto.subtle.digest('SHA-256', new Uint8Array(bytes))).toString('hex')
  for (const outcome of outcomes) {
    if (!outcome.ok) throw new Error(outcome.problems[0].what)
    const { rows, channels, sha256, close } = outcome.value
    expect(rows).toBe(count)
    expect(sha256).toBe(hash)
    expect(channels.read('torque', 0, rows).every((torque, row) => torque === row / 8192)).toBe(true)
    close()
  }
  await rm(folder, { recursive: true })
})

test('columns that this program wrote need no units', async () => {
  const time = Float64Array.of(0, 1, 2)
  const channels = channelsInMemory({ time, torque: time, angularVelocity: time, temperature: time, step: time })
  const record = await recordOf(columnsToParquet(channels))
  expect(record.channels.names).toEqual(['time', 'step', 'angularVelocity', 'torque', 'temperature'])
  expect(valuesOf(record).temperature).toEqual([0, 1, 2])
})

describe('what is wrong is said', () => {
  const time: Columns[number] = { name: 'Time [s]', data: [1, 2, 3, 4, 1], type: 'DOUBLE' }
  const torque: Columns[number] = { name: 'Torque [Nm]', data: [1, 2, 3, 4, 5], type: 'DOUBLE' }

  test('time that runs back', async () => {
    expect(await problemsOf(parquet([time, torque]))).toMatchObject([
      { kind: 'timeBackwards', place: { line: 5, column: 1, cell: '1' } },
    ])
  })

  test('time that begins again with a step', async () => {
    const record = await recordOf(parquet([time, torque, { name: 'Step', data: [1, 1, 1, 1, 2], type: 'INT32' }]))
    expect(valuesOf(record).time).toEqual([1, 2, 3, 4, 5])
    expect(record.remarks).toMatchObject([{ kind: 'timeRunsOn', seen: 1 }])
  })

  test('texts among numbers', async () => {
    const words: Columns[number] = { name: 'Torque [Nm]', data: ['1', 'x', '2', '3', '4'], type: 'STRING' }
    const problems = await problemsOf(parquet([{ ...time, data: [1, 2, 3, 4, 5] }, words]))
    expect(problems).toMatchObject([
      { kind: 'tooManyDamaged' },
      { kind: 'notANumber', place: { line: 2, column: 2, cell: 'x' } },
    ])
  })

  test('no unit', async () => {
    expect(await problemsOf(parquet([{ ...time, name: 'time', data: [1, 2, 3, 4, 5] }, torque]))).toMatchObject([
      { kind: 'unitMissing', place: { column: 1 } },
    ])
  })

  test('no rows', async () => {
    expect(
      await problemsOf(
        parquet([
          { ...time, data: [] },
          { ...torque, data: [] },
        ]),
      ),
    ).toMatchObject([{ kind: 'noRows' }])
  })

  test('a file that was cut off', async () => {
    const whole = parquet([{ ...time, data: [1, 2, 3, 4, 5] }, torque])
    for (const length of [4, 8, 20, whole.length >> 1, whole.length - 1]) {
      expect(await problemsOf(whole.subarray(0, length))).toMatchObject([
        { kind: 'fileDamaged', place: { file: 'run.csv' } },
      ])
    }
  })
})
