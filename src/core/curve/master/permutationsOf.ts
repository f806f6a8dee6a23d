import type { Random } from '../../numeric/index.ts'

/** All orders of so many things are tried up to this number of things; of more, a sample. */
const mostWhole = 4
const sampled = 59

/** Orders of 0 … count − 1 other than the natural one: all of them for up to four things, else 59 different draws. */
export function permutationsOf(count: number, random: Random): readonly (readonly number[])[] {
  if (!(Number.isInteger(count) && count >= 2)) throw new RangeError(`count must be 2 or more, got ${count}`)
  const natural = Array.from({ length: count }, (_, i) => i)
  const key = (order: readonly number[]): string => order.join(' ')
  if (count <= mostWhole) return allOrders(natural).filter((order) => key(order) !== key(natural))
  const found = new Map<string, readonly number[]>()
  while (found.size < sampled) {
    const order = shuffled(natural, random)
    if (key(order) !== key(natural)) found.set(key(order), order)
  }
  return [...found.values()]
}

function allOrders(items: readonly number[]): readonly (readonly number[])[] {
  if (items.length <= 1) return [items]
  return items.flatMap((first, i) =>
    allOrders([...items.slice(0, i), ...items.slice(i + 1)]).map((rest) => [first, ...rest]),
  )
}

/** Fisher and Yates. */
function shuffled(items: readonly number[], random: Random): readonly number[] {
  const order = [...items]
  for (let i = order.length - 1; i > 0; i--) {
    const j = random.integer(i + 1)
    const held = order[i]
    order[i] = order[j]
    order[j] = held
  }
  return order
}
