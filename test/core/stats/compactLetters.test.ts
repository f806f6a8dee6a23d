import { expect, test } from 'vitest'
import { compactLetters } from '../../../src/core/stats/judging/index.ts'

const told =
  (...pairs: readonly (readonly [number, number])[]) =>
  (a: number, b: number): boolean =>
    pairs.some(([c, d]) => (a === c && b === d) || (a === d && b === c))

test('nobody told apart, all told apart, and a chain (by hand)', () => {
  expect(compactLetters(3, told())).toEqual(['a', 'a', 'a'])
  expect(compactLetters(3, () => true)).toEqual(['a', 'b', 'c'])
  expect(compactLetters(4, told([0, 2], [0, 3], [1, 3]))).toEqual(['a', 'ab', 'bc', 'c'])
})

test('what shares a letter is not told apart, what shares none is, for every pattern of five', () => {
  const pairs = [0, 1, 2, 3, 4].flatMap((a) => [0, 1, 2, 3, 4].filter((b) => b > a).map((b) => [a, b] as const))
  for (let pattern = 0; pattern < 1024; pattern++) {
    const differ = told(...pairs.filter((_, bit) => (pattern >> bit) % 2 === 1))
    const letters = compactLetters(5, differ)
    for (const [a, b] of pairs) {
      const share = [...letters[a]].some((letter) => letters[b].includes(letter))
      expect(share).toBe(!differ(a, b))
    }
  }
})
