import { expect, test } from 'vitest'
import { fillFromTables, type PlanQuestion } from '../../../src/core/plan/index.ts'
import { lacquerQuestion } from './questions.ts'

const asked = (more: Partial<PlanQuestion>): PlanQuestion => ({
  ...lacquerQuestion,
  bears: { upper: {}, lower: {} },
  ...more,
})

function filled(question: PlanQuestion) {
  const outcome = fillFromTables(question)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

test('bodies known by name bring stiffness and strength, and say from where', () => {
  const { question, taken } = filled(asked({ pair: { upper: { name: 'soda-lime glass' }, lower: { name: 'PMMA' } } }))
  // Handbook: glass about 70 GPa; PMMA about 3 GPa.
  expect(question.pair.upper.elasticModulus).toBeGreaterThan(60e9)
  expect(question.pair.upper.elasticModulus).toBeLessThan(80e9)
  expect(question.pair.lower.elasticModulus).toBeGreaterThan(2e9)
  expect(question.pair.lower.elasticModulus).toBeLessThan(4e9)
  expect(taken.length).toBeGreaterThanOrEqual(2)
})

test('what was given is never changed, a name that no table knows leaves its gap', () => {
  const { question, taken } = filled(lacquerQuestion)
  expect(question).toEqual(lacquerQuestion)
  expect(taken).toEqual([])
})

test('water at 20 °C has 1.0016 mPa·s (IAPWS R12-08, table 4)', () => {
  const { question } = filled(asked({ liquid: { name: 'water' }, run: { temperature: 293.15 } }))
  expect(question.liquid?.viscosity).toBeCloseTo(1.0016e-3, 6)
})

test('a liquid outside its table is a problem that tells the range', () => {
  const outcome = fillFromTables(asked({ liquid: { name: 'water' }, run: { temperature: 473.15 } }))
  expect(outcome.ok).toBe(false)
  if (outcome.ok) return
  expect(outcome.problems[0]).toMatchObject({ class: 'badInput', place: { name: 'run.temperature' } })
  expect(`${outcome.problems[0].what} ${outcome.problems[0].mend}`).toMatch(/°C/)
})

test('a liquid without a temperature asks for one', () => {
  const outcome = fillFromTables(asked({ liquid: { name: 'water' }, run: {} }))
  expect(outcome.ok || outcome.problems[0].mend).toContain('temperature')
})
