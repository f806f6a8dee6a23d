import fc from 'fast-check'
import { expect, test, vi } from 'vitest'

test.fails('a test that writes to the console fails', () => {
  console.warn('left over')
})

test('a test may catch what it expects on the console', () => {
  const warn = vi.spyOn(console, 'warn').mockImplementation(() => {})
  console.warn('expected')
  expect(warn).toHaveBeenCalledWith('expected')
  warn.mockRestore()
})

test('property tests draw from one seed', () => {
  const drawn = (): number[] => fc.sample(fc.integer(), { numRuns: 5, seed: fc.readConfigureGlobal()?.seed })
  expect(fc.readConfigureGlobal()?.seed).toBe(20_261_125)
  expect(drawn()).toEqual(drawn())
})
