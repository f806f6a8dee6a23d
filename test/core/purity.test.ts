import { expect, test } from 'vitest'

test('whoever takes chance or the clock from the machine in a pure room fails', () => {
  expect(() => Math.random()).toThrow('this room is pure: pass the seed in')
  expect(() => Date.now()).toThrow('this room is pure: pass the clock in')
})
