import fc from 'fast-check'
import { expect, test } from 'vitest'
import { channelsInMemory } from '../../../src/core/terms/index.ts'
import { columnsToParquet, parquetToChannels } from '../../../src/io/columns/index.ts'

const bits = (numbers: Float64Array): BigUint64Array =>
  new BigUint64Array(numbers.buffer.slice(numbers.byteOffset, numbers.byteOffset + numbers.byteLength))

test('every double comes back bit for bit', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.double(), { maxLength: 300 }), async (numbers) => {
      const torque = Float64Array.from(numbers)
      const back = await parquetToChannels(columnsToParquet(channelsInMemory({ torque, axialForce: torque })))
      expect(back.rows).toBe(numbers.length)
      for (const name of ['torque', 'axialForce'] as const) {
        expect(bits(back.read(name, 0, back.rows).slice())).toEqual(bits(torque))
      }
    }),
  )
})

test('zero and minus zero stay apart where both repeat', async () => {
  const torque = Float64Array.from({ length: 2000 }, (_, i) => (i % 3 === 0 ? -0 : 0))
  const back = await parquetToChannels(columnsToParquet(channelsInMemory({ torque })))
  expect(bits(back.read('torque', 0, 2000).slice())).toEqual(bits(torque))
})

test('a record of more than one row group keeps its order', async () => {
  const rows = 600_001
  const time = Float64Array.from({ length: rows }, (_, i) => i / 100)
  const gap = Float64Array.from({ length: rows }, (_, i) => (i % 7 === 0 ? Number.NaN : Math.sin(i)))
  const bytes = columnsToParquet(channelsInMemory({ time, gap }))
  const back = await parquetToChannels(bytes)
  expect(bits(back.read('time', 0, rows).slice())).toEqual(bits(time))
  expect(bits(back.read('gap', 0, rows).slice())).toEqual(bits(gap))
  const one = await parquetToChannels(bytes, ['gap'])
  expect(one.names).toEqual(['gap'])
})

test('equal columns give equal bytes, also read from within a larger buffer', async () => {
  const torque = Float64Array.of(1, 2, 3)
  const bytes = columnsToParquet(channelsInMemory({ torque }))
  expect(columnsToParquet(channelsInMemory({ torque }))).toEqual(bytes)
  const wide = Buffer.concat([Buffer.from('before'), bytes, Buffer.from('behind')])
  const back = await parquetToChannels(wide.subarray(6, 6 + bytes.length))
  expect([...back.read('torque', 0, 3)]).toEqual([1, 2, 3])
})
