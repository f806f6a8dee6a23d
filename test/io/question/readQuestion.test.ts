import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Scalar } from 'yaml'
import { askDefaults, decidingDefaults, expectedDefaults, planOf } from '../../../src/core/plan/index.ts'
import type { Problem } from '../../../src/core/terms/index.ts'
import { readQuestion } from '../../../src/io/index.ts'
import { questionKeys } from '../../../src/io/question/questionKeys.ts'
import type { Key } from '../../../src/io/setup/keyKinds.ts'
import { readLeaf } from '../../../src/io/setup/readLeaf.ts'

const lacquer = readFileSync('examples/lacquer/question.yaml', 'utf8')

function read(text: string) {
  const outcome = readQuestion(text, 'question.yaml')
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems, null, 1))
  return outcome.value.question
}

function problems(text: string): readonly Problem[] {
  const outcome = readQuestion(text, 'question.yaml')
  return outcome.ok ? [] : outcome.problems
}

/** The example with one piece put in place of another. */
function changed(from: string | RegExp, to: string): string {
  const text = lacquer.replace(from, to)
  if (text === lacquer) throw new Error(`the example has no ${from}`)
  return text
}

const lineOf = (text: string, part: string): number => text.split('\n').findIndex((line) => line.includes(part)) + 1

test.for(['examples/lacquer/question.yaml', 'examples/oat-drinks/question.yaml'])(
  '%s reads, says it is invented, and makes a plan',
  (file) => {
    const text = readFileSync(file, 'utf8')
    expect(text).toMatch(/^# Invented/)
    const plan = planOf(read(text))
    expect(plan.ok && plan.value.suggestion.possible).toBe(true)
  },
)

test('units become SI', () => {
  const question = read(lacquer)
  expect(question.ask).toMatchObject({
    slowest: 1e-4,
    fastest: 0.2,
    leastForce: 0.5,
    mostForce: 40,
    mostTime: 2700,
    uncertainty: 0.05,
  })
  // 1e-5 mm³/(N·m)
  expect(question.bears.lower.wearRate).toBeCloseTo(1e-14, 25)
  expect(question.bears.lower.yieldStrength).toBe(6e7)
  expect(question.deciding.samples).toEqual(['lacquer A', 'lacquer B'])
  const oat = read(readFileSync('examples/oat-drinks/question.yaml', 'utf8'))
  // 0.5 1/GPa
  expect(oat.pressureViscosity).toBeCloseTo(5e-10, 20)
})

test('what is left out has the default that the key table tells', () => {
  const bare = lacquer.replace(/\nask:[\s\S]*$/, '\nask:\n  slowest: 1 mm/s\n  fastest: 10 mm/s\n')
  const { ask, expected, deciding } = read(bare)
  expect(ask).toEqual({ ...askDefaults, slowest: 1e-3, fastest: 1e-2, leastForce: 0.01, mostForce: 50 })
  expect(expected).toEqual(expectedDefaults)
  expect(deciding).toEqual({ ...decidingDefaults, samples: ['sample'] })
  const told = (section: 'ask' | 'expected' | 'deciding', values: object): void => {
    const keys = questionKeys.keys[section]
    if (keys.is !== 'section') throw new Error(`${section} is no section`)
    for (const [name, key] of Object.entries(keys.keys)) {
      if (key.is !== 'quantity' || key.default === undefined) continue
      const value = readLeaf(key, new Scalar(key.default))
      expect([name, value.ok && value.value]).toEqual([name, (values as Record<string, unknown>)[name]])
    }
  }
  told('ask', ask)
  told('expected', expected)
  told('deciding', deciding)
})

test('every key has an example that it reads itself', () => {
  const walk = (key: Key, path: string): void => {
    if (key.is === 'section') for (const [name, inner] of Object.entries(key.keys)) walk(inner, `${path}.${name}`)
    else if (key.is === 'quantity' || key.is === 'choice')
      expect([path, readLeaf(key, new Scalar(key.example)).ok]).toEqual([path, true])
  }
  walk(questionKeys, '')
})

describe('bad input is told with its line and its mend', () => {
  test.for<{ name: string; text: string; line: string; mend: RegExp }>([
    {
      name: 'negative load',
      text: changed('leastForce: 0.5 N', 'leastForce: -2 N'),
      line: 'leastForce',
      mend: /more than 0/,
    },
    {
      name: 'Poisson ratio 0.7',
      text: changed('poissonRatio: 0.35', 'poissonRatio: 0.7'),
      line: 'poissonRatio: 0.7',
      mend: /at most 0\.5/,
    },
    {
      name: 'ball larger than its track',
      text: changed('ballDiameter: 6.35 mm', 'ballDiameter: 40 mm'),
      line: 'ballDiameter',
      mend: /less than 25\.98/,
    },
    {
      name: 'coating thicker than its plate',
      text: changed('plateThickness: 6 mm', 'plateThickness: 50 µm'),
      line: 'thickness: 60 µm',
      mend: /thinner than 50 µm/,
    },
    {
      name: 'speeds the wrong way round',
      text: changed('slowest: 0.1 mm/s', 'slowest: 0.5 m/s'),
      line: 'slowest',
      mend: /at most 200 mm\/s/,
    },
    { name: 'no unit', text: changed('fastest: 200 mm/s', 'fastest: 200'), line: 'fastest', mend: /m\/s/ },
    { name: 'unknown key', text: changed('mostTime:', 'mostTyme:'), line: 'mostTyme', mend: /mostTime/ },
    {
      name: 'unknown choice',
      text: changed('  perDecade: 10', '  direction: sideways'),
      line: 'sideways',
      mend: /up and down/,
    },
  ])('$name', ({ text, line, mend }) => {
    const found = problems(text)
    expect(found).toHaveLength(1)
    expect(found[0]).toMatchObject({ class: 'badInput', place: { file: 'question.yaml', line: lineOf(text, line) } })
    expect(found[0].mend).toMatch(mend)
  })

  test('all at once', () => {
    const text = lacquer
      .replace('poissonRatio: 0.35', 'poissonRatio: 0.7')
      .replace('leastForce: 0.5 N', 'leastForce: -2 N')
    expect(problems(text)).toHaveLength(2)
  })

  test('columns have no place in a question', () => {
    expect(problems(`${lacquer}\ncolumns:\n  Torque: { unit: Nm }\n`)[0].mend).toContain('there is no record yet')
  })

  test.for(['', '- 1', ':::', '\0', 'ask: 5'])('%j is refused', (text) => {
    expect(problems(text).length).toBeGreaterThan(0)
  })
})
