import { describe, expect, test } from 'vitest'
import { change, engines, freshLab, kinds, rawBytes, value } from './engines.ts'

describe.each(engines)('columns on $name', ({ place }) => {
  test('keeps columns until others take their place', async () => {
    const lab = await freshLab(await place())
    const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
    const files = {
      raw: record.id,
      reading: 'guessed',
      rows: 9,
      program: 'kufe 0.1.0',
      parquet: rawBytes(3),
      pyramid: rawBytes(4),
    }
    expect(value(await lab.columns.get(record.id, 'guessed'))).toBeUndefined()
    expect(value(await lab.columns.put([files, { ...files, reading: 'told', rows: 8 }]))).toBe(2)
    expect(value(await lab.columns.get(record.id, 'guessed'))).toEqual(files)
    value(await lab.columns.put([{ ...files, program: 'kufe 0.2.0', parquet: rawBytes(5) }]))
    expect(value(await lab.columns.get(record.id, 'guessed'))).toEqual({
      ...files,
      program: 'kufe 0.2.0',
      parquet: rawBytes(5),
    })
    expect(value(await lab.columns.get(record.id, 'told'))?.rows).toBe(8)
    expect(kinds(await lab.columns.put([{ ...files, raw: '0'.repeat(64) }]))).toEqual(['notThere'])
  })
})
