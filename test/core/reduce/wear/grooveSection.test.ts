import { expect, test } from 'vitest'
import { randomFrom } from '../../../../src/core/numeric/index.ts'
import { grooveSection } from '../../../../src/core/reduce/questions/index.ts'

/** Parabola of half width a and depth d on a tilted, rough surface: its area is 4/3·a·d. */
function profile({
  depth,
  halfWidth,
  roughness,
  seed,
}: {
  depth: number
  halfWidth: number
  roughness: number
  seed: number
}) {
  const random = randomFrom(seed)
  const position = Float64Array.from({ length: 801 }, (_, i) => (i - 400) * 2.5e-6)
  const height = position.map(
    (x) => 5e-7 + 2e-5 * x - depth * Math.max(0, 1 - (x / halfWidth) ** 2) + roughness * random.normal(),
  )
  return { position, height }
}

test('a smooth parabola: 4/3·a·d, its width and its depth', () => {
  const { position, height } = profile({ depth: 2e-6, halfWidth: 3e-4, roughness: 0, seed: 1 })
  const groove = grooveSection(position, height)
  expect(Math.abs(groove.area / ((4 / 3) * 3e-4 * 2e-6) - 1)).toBeLessThan(1e-3)
  expect(Math.abs(groove.width / 6e-4 - 1)).toBeLessThan(0.02)
  expect(Math.abs(groove.depth / 2e-6 - 1)).toBeLessThan(1e-3)
})

test('on a rough surface the area is off by about its stated uncertainty', () => {
  const z = Array.from({ length: 200 }, (_, seed) => {
    const { position, height } = profile({ depth: 2e-6, halfWidth: 3e-4, roughness: 5e-8, seed })
    const groove = grooveSection(position, height)
    return (groove.area - 8e-10) / groove.uncertainty
  })
  const root = Math.sqrt(z.reduce((sum, one) => sum + one ** 2, 0) / z.length)
  expect(root).toBeGreaterThan(0.6)
  expect(root).toBeLessThan(1.4)
})

test('refuses what is no profile', () => {
  expect(() => grooveSection(new Float64Array(10), new Float64Array(10))).toThrow(/20 places or more, got 10/)
  expect(() => grooveSection(new Float64Array(30), new Float64Array(30))).toThrow(/must rise, got a span of 0 m/)
})
