import { describe, expect, test } from 'vitest'
import {
  judgedAnswers,
  type Plan,
  type PlanQuestion,
  planOf,
  runSheetOf,
  strangeAnswers,
} from '../../../src/core/plan/index.ts'
import { lacquerQuestion, oatQuestion } from './questions.ts'

function plan(question: PlanQuestion): Plan {
  const outcome = planOf(question)
  if (!outcome.ok) throw new Error('the question must make a plan')
  return outcome.value
}

const entriesOf = (question: PlanQuestion) => runSheetOf(plan(question)).parts.flatMap(({ entries }) => entries)

test('the order of the job: zeroes before approach before conditioning before blank before sweep before after-checks', () => {
  const ids = entriesOf(oatQuestion).map(({ id }) => id)
  const order = [
    'clean',
    'mount',
    'temperature',
    'gapZero',
    'forceZero',
    'approach',
    'forceRipple',
    'conditioning',
    'blank',
    'sweep',
    'secondForceZero',
    'scar',
    'cleaning',
    'change',
  ]
  expect(order.map((id) => ids.indexOf(id))).toEqual(order.map((id) => ids.indexOf(id)).sort((a, b) => a - b))
  expect(order.filter((id) => !ids.includes(id))).toEqual([])
  expect(new Set(ids).size).toBe(ids.length)
})

test('time and distance are the sum of the entries, and the sweep is that of the plan', () => {
  const sheet = runSheetOf(plan(lacquerQuestion))
  const entries = sheet.parts.flatMap((part) => part.entries)
  expect(sheet.totals.time).toBeCloseTo(
    entries.reduce((sum, { duration }) => sum + duration, 0),
    9,
  )
  expect(sheet.totals.distance).toBeCloseTo(
    entries.reduce((sum, { distance }) => sum + distance, 0),
    9,
  )
  expect(entries.find(({ id }) => id === 'sweep')?.duration).toBeCloseTo(plan(lacquerQuestion).totals.time, 9)
  expect(sheet.sweep).toHaveLength(plan(lacquerQuestion).points.length)
})

describe('cautions stand before the step that they belong to', () => {
  const cautionsOf = (question: PlanQuestion, id: string): string =>
    entriesOf(question)
      .find((entry) => entry.id === id)
      ?.cautions.join(' ') ?? ''

  test('the moving stage, before all that moves it', () => {
    for (const id of ['gapZero', 'approach', 'blank', 'load', 'secondForceZero']) {
      expect(cautionsOf(lacquerQuestion, id)).toContain('hands out of the space')
    }
  })

  test('glass only where there is glass, heat only where it is hot', () => {
    expect(cautionsOf(oatQuestion, 'approach')).toContain('crack a brittle plate')
    expect(cautionsOf(lacquerQuestion, 'approach')).not.toContain('brittle')
    expect(cautionsOf(lacquerQuestion, 'temperature')).not.toContain('burn')
    const hot = { ...lacquerQuestion, run: { temperature: 373.15 } }
    expect(cautionsOf(hot, 'temperature')).toContain('hot enough to burn (100 °C)')
    expect(cautionsOf(hot, 'scar')).toContain('never bring solvent into a hot chamber')
  })

  test('balls may be thrown out, solvents burn, hoses leak; the manual comes first', () => {
    expect(cautionsOf(lacquerQuestion, 'sweep')).toContain('thrown out')
    expect(cautionsOf(lacquerQuestion, 'clean')).toContain('Solvents')
    expect(cautionsOf(lacquerQuestion, 'temperature')).toContain('hoses')
    const { foreword } = runSheetOf(plan(lacquerQuestion))
    expect(foreword.join(' ')).toMatch(/manual of the instrument.*licensed people come first/)
  })

  test('a ring throws no balls', () => {
    const ring = {
      ...lacquerQuestion,
      fixture: {
        kind: 'ringOnPlate',
        outerRadius: 0.0125,
        innerRadius: 0.01,
        segments: 1,
        pressure: 'uniformWear',
        radiusUncertainty: 0,
      } as const,
    }
    expect(cautionsOf(ring, 'sweep')).not.toContain('Balls')
  })
})

test('static friction only where it was asked for', () => {
  expect(entriesOf(lacquerQuestion).map(({ id }) => id)).not.toContain('static')
  const asked = { ...lacquerQuestion, ask: { ...lacquerQuestion.ask, staticDwell: 10 } }
  expect(entriesOf(asked).find(({ id }) => id === 'static')?.text).toContain('Rest 10 s')
})

describe('answers', () => {
  const sheet = runSheetOf(plan(lacquerQuestion))
  const load = plan(lacquerQuestion).suggestion.axialForce

  test('within, outside and open, each with its words', () => {
    const judged = judgedAnswers(sheet, [
      { id: 'approach', value: load },
      { id: 'forceRipple', value: 0.12 },
      { id: 'clean', value: true },
      { id: 'mount', value: false },
    ])
    const of = (id: string) => judged.find((answer) => answer.id === id)
    expect(of('approach')?.state).toBe('within')
    expect(of('forceRipple')).toMatchObject({ state: 'outside' })
    expect(of('forceRipple')?.sentence).toContain('12 % (wanted: at most 5 %)')
    expect(of('forceRipple')?.sentence).toContain('compliant coupling')
    expect(of('clean')?.state).toBe('within')
    expect(of('mount')?.state).toBe('outside')
    expect(of('scar')?.state).toBe('open')
  })

  test('limits belong to the range', () => {
    const state = (value: number) =>
      judgedAnswers(sheet, [{ id: 'approach', value }]).find(({ id }) => id === 'approach')?.state
    expect(state(load * 1.0199)).toBe('within')
    expect(state(load * 1.0201)).toBe('outside')
    expect(state(Number.NaN)).toBe('open')
  })

  test('an answer to nothing is named', () => {
    expect(
      strangeAnswers(sheet, [
        { id: 'approch', value: 1 },
        { id: 'approach', value: 1 },
      ]),
    ).toEqual(['approch'])
  })
})
