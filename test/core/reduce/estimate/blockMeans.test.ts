import { expect, test } from 'vitest'
import { BlockMeans } from '../../../../src/core/reduce/estimate/blockMeans.ts'

function meansOf(values: readonly number[], block: number): BlockMeans {
  const means = new BlockMeans({ columns: 2, rows: values.length, block })
  values.forEach((value, i) => {
    means.sums[0] += value
    means.sums[1] += 2 * value
    means.next(10 * i)
  })
  return means
}

test('means of whole blocks, and where each begins', () => {
  const means = meansOf([1, 2, 3, 4, 5, 6, 7], 3)
  expect([...means.means(0)]).toEqual([2, 5])
  expect([...means.means(1)]).toEqual([4, 10])
  // The seventh row fills no block, but it is known where it lies.
  expect([...means.begins()]).toEqual([0, 30, 60])
})

test('blocks of one row are the rows', () => {
  const means = meansOf([4, 1, 9], 1)
  expect([...means.means(0)]).toEqual([4, 1, 9])
  expect([...means.begins()]).toEqual([0, 10, 20])
})
