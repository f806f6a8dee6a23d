import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { channelNames, channelsInMemory } from '../../../src/core/terms/index.ts'

describe('channels in memory', () => {
  const torque = Float64Array.of(1, 2, 3)
  const axialForce = Float64Array.of(4, Number.NaN, 6)

  test('give back the rows that are asked for', () => {
    const channels = channelsInMemory({ torque, axialForce })
    expect(channels.rows).toBe(3)
    expect([...channels.read('torque', 1, 3)]).toEqual([2, 3])
    expect([...channels.read('axialForce', 0, 3)]).toEqual([4, Number.NaN, 6])
  })

  test('list their names in the order of the house, however they were given', () => {
    expect(channelsInMemory({ axialForce, torque, time: torque }).names).toEqual(['time', 'torque', 'axialForce'])
  })

  test('cannot be of unequal length', () => {
    const given = { torque, axialForce: Float64Array.of(1) }
    expect(() => channelsInMemory(given)).toThrow(new RangeError('channel axialForce has 1 rows, torque has 3'))
  })

  test('say which channels there are when one is missing', () => {
    expect(() => channelsInMemory({ torque }).read('gap', 0, 1)).toThrow(
      new RangeError('this record has no channel gap; it has torque'),
    )
  })

  test('may be none at all', () => {
    expect(channelsInMemory({})).toMatchObject({ rows: 0, names: [] })
  })

  test('any cut joined to the rest is the whole', () => {
    const column = fc.float64Array({ minLength: 1, maxLength: 50 })
    fc.assert(
      fc.property(column, fc.nat(50), fc.constantFrom(...channelNames), (values, cut, name) => {
        const channels = channelsInMemory({ [name]: values })
        const at = Math.min(cut, values.length)
        const joined = [...channels.read(name, 0, at), ...channels.read(name, at, channels.rows)]
        expect(joined).toEqual([...values])
      }),
    )
  })
})
