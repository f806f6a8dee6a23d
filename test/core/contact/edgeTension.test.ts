import { expect, test } from 'vitest'
import { edgeTension, edgeTensionOf, effectiveModulus } from '../../../src/core/contact/index.ts'
import { glass, near, steel } from './near.ts'

test.for([
  [0.3, 0.4 / 3],
  [0.25, 0.5 / 3],
  [0.5, 0],
])('ν %d: %d p₀ (Johnson 1985, §3.4)', ([poissonRatio, want]) => {
  near(edgeTension(1, poissonRatio), want, 1e-9)
})

test('a glass plate of 69 MPa in bending under a steel ball is doubted, a strong one is not', () => {
  const sphere = { radius: 0.00635, effectiveModulus: effectiveModulus(steel, glass) }
  const plate = { name: 'the glass plate', strength: 69e6, poissonRatio: 0.22 }
  const doubtful = edgeTensionOf(10, sphere, plate)
  near(doubtful.tension, (0.56 / 3) * 538.105e6, 1e-5)
  expect(doubtful.doubts.map(({ kind }) => kind)).toEqual(['cracks'])
  expect(edgeTensionOf(10, sphere, { ...plate, strength: 700e6 }).doubts).toEqual([])
})

test('impossible arguments are refused', () => {
  expect(() => edgeTension(-1, 0.3)).toThrow(/peak pressure/)
  expect(() => edgeTension(1, 0.7)).toThrow(/Poisson/)
  expect(() => edgeTension(Number.NaN, 0.3)).toThrow(RangeError)
})
