import { expect, test } from 'vitest'
import { progressLine } from '../../src/cli/progressLine.ts'
import { capturedDesk } from './capturedDesk.ts'

function seen(watched: boolean, calls: readonly (readonly [time: number, done: number])[]): string {
  const desk = capturedDesk({ watched })
  let time = 0
  const progress = progressLine(desk.screen, () => time)
  for (const [at, done] of calls) {
    time = at
    progress('reading', done, 10)
  }
  return desk.err()
}

test('nothing within the first second', () =>
  expect(
    seen(true, [
      [10, 1],
      [900, 9],
      [950, 10],
    ]),
  ).toBe(''))

test('after a second one line that rewrites itself, and goes when all is done', () => {
  const text = seen(true, [
    [1100, 3],
    [1150, 4],
    [1300, 5],
    [1500, 10],
  ])
  expect(text).toBe('\r\u001b[Kreading 30 %\r\u001b[Kreading 50 %\r\u001b[K')
})

test('nothing where nobody watches', () =>
  expect(
    seen(false, [
      [2000, 3],
      [5000, 10],
    ]),
  ).toBe(''))
