import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { questionJsonSchema, questionTemplate, readQuestion } from '../../../src/io/question/index.ts'
import { fixtureKindsWritten } from '../../../src/io/setup/fixtureKeys.ts'

const shipped = JSON.parse(readFileSync('schema/question.schema.json', 'utf8'))
const validate = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true }).compile(shipped)
const accepts = (text: string): boolean => validate(parse(text))
const lacquer = readFileSync('examples/lacquer/question.yaml', 'utf8')

test('the shipped schema is the one that the key tables give (node scripts/setupSchema.ts writes it)', () => {
  expect(shipped).toEqual(questionJsonSchema())
})

test.for(Object.values(fixtureKindsWritten))('the starter for %s makes a plan and keeps to the schema', (kind) => {
  const text = questionTemplate(kind)
  const read = readQuestion(text, 'question.yaml')
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  expect(accepts(text), JSON.stringify(validate.errors)).toBe(true)
  const on = text.replace(/^(\s*)#(?=["\w][^\n]*:)/gm, '$1')
  expect(accepts(on), JSON.stringify(validate.errors)).toBe(true)
})

test.for(['lacquer', 'oat-drinks'])('the question of %s keeps to the schema', (name) => {
  expect(accepts(readFileSync(`examples/${name}/question.yaml`, 'utf8')), JSON.stringify(validate.errors)).toBe(true)
})

describe('schema and reader refuse the same slips', () => {
  test.for<readonly [string, string, string]>([
    ['a mistyped key', 'mostTime:', 'mostTyme:'],
    ['a missing speed', '  slowest: 0.1 mm/s\n', ''],
    ['a number without unit', 'fastest: 200 mm/s', 'fastest: 200'],
    ['an unknown choice', '  perDecade: 10', '  direction: sideways'],
    ['a fraction of a point', 'perDecade: 10', 'perDecade: 2.5'],
    ['columns', 'title:', 'columns: {}\ntitle:'],
  ])('%s', ([, from, to]) => {
    const slipped = lacquer.replace(from, to)
    expect(slipped).not.toBe(lacquer)
    expect(accepts(slipped)).toBe(false)
    expect(readQuestion(slipped, 'question.yaml').ok).toBe(false)
  })
})
