import { expect, test } from 'vitest'
import { coverageStudy } from '../../src/bench/index.ts'
import { capturedDesk } from '../cli/capturedDesk.ts'

// 24 curves with their thousand draws: a plain fault shows, a finer one needs `kufe coverage`.
test('a small coverage study counts alike with one worker and two, and is near 95 %', async () => {
  const { outside } = capturedDesk()
  const one = await coverageStudy({ seed: 5, curves: 24, workers: 1 }, outside)
  const two = await coverageStudy({ seed: 5, curves: 24, workers: 2 }, outside)
  expect(two).toEqual(one)
  const [points] = one.rows
  expect(points.group).toBe('points')
  expect(points.of).toBeGreaterThan(200)
  // Five binomial standard errors of 95 %.
  expect(Math.abs(points.share - 0.95)).toBeLessThan(5 * Math.sqrt((0.95 * 0.05) / points.of))
}, 120_000)
