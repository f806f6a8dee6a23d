import { setTimeout } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { inOrder } from '../../../src/bench/lab/inOrder.ts'

async function all<T>(items: AsyncIterable<T>, into: T[] = []): Promise<T[]> {
  for await (const item of items) into.push(item)
  return into
}

test('answers come in the order of the items, and no more than so many are worked on at once', async () => {
  let running = 0
  let most = 0
  const work = async (item: number): Promise<number> => {
    most = Math.max(most, ++running)
    await setTimeout(item % 3)
    running--
    return item * 10
  }
  const items = Array.from({ length: 20 }, (_, i) => i)
  expect(await all(inOrder(items, 4, work))).toEqual(items.map((item) => item * 10))
  expect(most).toBe(4)
})

test('a failure is thrown in its turn, after what came before it, and leaves nothing running', async () => {
  const seen: number[] = []
  let ended = 0
  const work = async (item: number): Promise<number> => {
    await setTimeout(5 - item)
    ended++
    if (item === 2) throw new Error('two')
    return item
  }
  await expect(all(inOrder([0, 1, 2, 3], 4, work), seen)).rejects.toThrow('two')
  expect(seen).toEqual([0, 1])
  expect(ended).toBe(4)
})

test('no items, no answers', async () => {
  expect(await all(inOrder([], 3, async () => 1))).toEqual([])
})
