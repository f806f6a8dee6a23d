import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse, stringify } from 'yaml'
import { planOf } from '../../../src/core/plan/index.ts'
import { readQuestion } from '../../../src/io/index.ts'
import { questionKeys } from '../../../src/web/question/questionKeys.ts'
import { type FlatPaper, flatPaper, nestedPaper, type QuestionPaper } from '../../../src/web/question/questionPaper.ts'
import { readPaper } from '../../../src/web/question/readPaper.ts'
import { completePaper, fixtureKinds, starterFixture } from '../../../src/web/question/starterPaper.ts'
import { written } from '../../../src/web/question/written.ts'

/** What the terminal's reader makes of a paper: the same document, through YAML. */
function asFile(flat: FlatPaper) {
  const read = readQuestion(stringify(nestedPaper(flat)), 'question.yaml')
  if (!read.ok) throw new Error(read.problems.map(({ what, place }) => `${place.name}: ${what}`).join('\n'))
  return read.value.question
}

const example = (name: string): QuestionPaper =>
  parse(readFileSync(new URL(`../../../examples/${name}/question.yaml`, import.meta.url), 'utf8'))

describe('the page reads a question as the terminal does', () => {
  test.for(['lacquer', 'oat-drinks'])('example %s', (name) => {
    const flat = flatPaper(example(name))
    const { question, troubles } = readPaper(completePaper(flat))
    expect(troubles).toEqual([])
    expect(question).toEqual(asFile(flat))
  })

  test.for(fixtureKinds)('a new study with %s', (kind) => {
    const paper = completePaper(starterFixture(kind))
    const { question, troubles } = readPaper(paper)
    expect(troubles).toEqual([])
    expect(question).toEqual(asFile(paper))
    expect(planOf(question).ok).toBe(true)
  })

  test('any quantity that a sentence may set', () => {
    const paths = Object.keys(questionKeys).filter((path) => !path.startsWith('fixture.'))
    const set = fc.constantFrom(...paths).chain((path) => {
      const { least, most, dimension } = questionKeys[path]
      const [low, high] = [Math.max(least, 1e-9), Math.min(most, 1e9)]
      const value = fc.double({ min: 0, max: 1, noNaN: true }).map((share) => low * (high / low) ** share)
      return fc.tuple(
        fc.constant(path),
        dimension === 'count' ? value.map((one) => Math.max(least, Math.round(one))) : value,
      )
    })
    fc.assert(
      fc.property(fc.array(set, { minLength: 1, maxLength: 6 }), (sets) => {
        const paper = new Map(completePaper(new Map()))
        for (const [path, value] of sets) paper.set(path, written(path, value * (questionKeys[path].scale ?? 1)))
        const file = readQuestion(stringify(nestedPaper(paper)), 'question.yaml')
        // Values that contradict each other are the reader's to refuse; the page shows them as problems of the plan.
        if (!file.ok) return file.problems.every(({ kind }) => kind !== 'keyUnknown' && kind !== 'quantityUnreadable')
        expect(readPaper(paper).question).toEqual(file.value.question)
        return true
      }),
      { numRuns: 200 },
    )
  })

  test('a value under a moving hand goes before what is written', () => {
    const paper = completePaper(new Map())
    const { question } = readPaper(paper, new Map([['ask.axialForce', 7.5]]))
    expect(question.ask.axialForce).toBe(7.5)
  })

  test('what cannot be read is told with its place', () => {
    const paper = new Map([...completePaper(new Map()), ['ask.slowest', 'slow']])
    expect(readPaper(paper).troubles).toEqual([expect.objectContaining({ path: 'ask.slowest' })])
  })
})

test('a paper stays the same through its row of keys', () => {
  const paper = example('oat-drinks')
  expect(flatPaper(nestedPaper(flatPaper(paper)))).toEqual(flatPaper(paper))
})
