import { describe, expect, test } from 'vitest'
import { type PlanQuestion, suggest } from '../../../src/core/plan/index.ts'
import { lacquerQuestion, oatQuestion } from './questions.ts'

describe('a suggestion without its trades', () => {
  const given = (question: PlanQuestion, axialForce: number | undefined): PlanQuestion => ({
    ...question,
    ask: { ...question.ask, axialForce },
  })

  test.for([
    ['lacquer', lacquerQuestion, 0.3],
    ['lacquer', lacquerQuestion, 5],
    ['lacquer', lacquerQuestion, 35],
    ['lacquer', lacquerQuestion, undefined],
    ['oat drinks', oatQuestion, 1],
    ['oat drinks', oatQuestion, undefined],
  ] as const)('%s: the same load, speeds and limits', ([, question, load]) => {
    const whole = suggest(given(question, load))
    const quick = suggest(given(question, load), { trades: false })
    const { forceSpan, aboveSpan, belowSpan, bodies, ...rest } = whole
    expect(quick).toMatchObject(rest)
    expect(quick.bodies).toEqual([])
    if (load === undefined) expect(quick).toMatchObject({ forceSpan, aboveSpan, belowSpan })
    expect(bodies).toBeDefined()
  })
})
