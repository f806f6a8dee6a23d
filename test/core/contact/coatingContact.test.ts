import { expect, test } from 'vitest'
import { coatingContact, effectiveModulus, hertzApproach } from '../../../src/core/contact/index.ts'
import { near, steel } from './near.ts'

const lacquer = { elasticModulus: 2e9, poissonRatio: 0.38 }
const wood = { elasticModulus: 1e9, poissonRatio: 0.3 }
const plate = { radius: 0.00635, ball: steel, coating: lacquer, substrate: wood, thickness: 80e-6 }
const kinds = (load: number, thickness: number) =>
  coatingContact(load, { ...plate, thickness }).doubts.map(({ kind }) => kind)

test('depth over thickness by the coating’s own modulus, and the substrate’s answer beside', () => {
  const contact = coatingContact(2, plate)
  near(contact.depthShare, hertzApproach(2, 0.00635, effectiveModulus(steel, lacquer)) / 80e-6, 1e-14)
  expect(contact.substrateAlone.contactRadius).toBeGreaterThan(contact.coatingAlone.contactRadius)
})

test('a tenth of the thickness is the limit (Bückle’s rule, common practice)', () => {
  const depth = hertzApproach(2, 0.00635, effectiveModulus(steel, lacquer))
  expect(kinds(2, depth * 9.99)).toContain('substrateFelt')
  expect(kinds(2, depth * 10.01)).not.toContain('substrateFelt')
  expect(kinds(2, depth * 10.01)).toContain('baseFelt')
  expect(kinds(2, 1)).toEqual([])
})

test('impossible arguments are refused', () => {
  expect(() => coatingContact(-1, plate)).toThrow(/load/)
  expect(() => coatingContact(1, { ...plate, thickness: Number.NaN })).toThrow(/thickness/)
  expect(() => coatingContact(1, { ...plate, coating: { ...lacquer, poissonRatio: 0.7 } })).toThrow(/Poisson/)
})
