import { expect, test } from 'vitest'
import { fixtureKindsWritten } from '../../../src/io/setup/fixtureKeys.ts'
import { readSetup, setupProblemKinds, setupTemplate } from '../../../src/io/setup/index.ts'

/** Seeded numbers for mutations: mulberry32, public domain. */
function seeded(seed: number): (below: number) => number {
  let state = seed
  return (below) => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 4294967296) * below)
  }
}

const pieces = [
  '\t',
  '\n',
  ' ',
  ':',
  '- ',
  '"',
  "'",
  '{',
  '}',
  '[',
  ']',
  '&a ',
  '*a',
  '!',
  '%',
  '|',
  '>',
  '#',
  '? ',
  '---\n',
  '...\n',
  ',',
  '~',
  '\r',
  '\u0000',
  '\uFEFF',
  '\uD800',
  '🙂',
  '1e999',
  'NaN',
  '-0',
  '__proto__: 1\n',
  'constructor: {}\n',
  '<<: *a\n',
  '0x10',
  '.inf',
  '!!js/function x',
]

function mutate(text: string, draw: (below: number) => number): string {
  let mutated = text
  for (let slip = 1 + draw(6); slip > 0; slip--) {
    const at = draw(mutated.length + 1)
    const length = draw(12)
    const piece = pieces[draw(pieces.length)]
    const choice = draw(5)
    if (choice === 0) mutated = mutated.slice(0, at) + mutated.slice(at + length)
    else if (choice === 1) mutated = mutated.slice(0, at) + piece + mutated.slice(at)
    else if (choice === 2) mutated = mutated.slice(0, at) + mutated.slice(at, at + length).repeat(3) + mutated.slice(at)
    else if (choice === 3) mutated = mutated.slice(0, at) + piece + mutated.slice(at + length)
    else mutated = mutated.slice(0, at)
  }
  return mutated
}

/** Every answer is a setup or problems that say what, where and what to do. Gives the time it took in ms. */
function check(text: string): number {
  const start = performance.now()
  const read = readSetup(text, 'mutated.yaml')
  const time = performance.now() - start
  if (!read.ok) {
    expect(read.problems.length).toBeGreaterThan(0)
    for (const problem of read.problems) {
      expect(setupProblemKinds).toContain(problem.kind)
      expect(problem.what).toMatch(/\S.*\.$/s)
      expect(problem.mend).toMatch(/^[A-Z].*[.?]$/s)
      expect(problem.place.file).toBe('mutated.yaml')
      if (problem.place.line !== undefined) expect(problem.place.line).toBeGreaterThan(0)
    }
  }
  return time
}

test('600 mutated setups: a setup or typed problems, never a crash or a hang', () => {
  const kinds = Object.values(fixtureKindsWritten)
  let slowest = 0
  let accepted = 0
  for (let seed = 0; seed < 600; seed++) {
    const draw = seeded(seed)
    const starter = setupTemplate(kinds[seed % kinds.length])
    const text = mutate(seed % 2 === 0 ? starter : starter.replace(/^(\s*)#(?=["\w][^\n]*:)/gm, '$1'), draw)
    slowest = Math.max(slowest, check(text))
    if (readSetup(text, 'mutated.yaml').ok) accepted++
  }
  expect(slowest).toBeLessThan(2000)
  // Mutations in comments do no harm; if all or none were accepted the test would not be testing.
  expect(accepted).toBeGreaterThan(20)
  expect(accepted).toBeLessThan(400)
})

const bomb = Array.from({ length: 30 }, (_, n) => `l${n + 1}: &l${n + 1} [${Array(9).fill(`*l${n}`).join(', ')}]`).join(
  '\n',
)

const hostile: readonly (readonly [name: string, text: string])[] = [
  ['aliases that multiply', `l0: &l0 x\n${bomb}\nrig: *l30\n`],
  [
    'an alias of itself',
    'rig: &a { torque: *a, axialForce: *a, name: *a }\nfixture: *a\npair: &b { upper: *b, lower: *b }\n',
  ],
  ['an alias of nothing', 'rig: *nothing\nfixture: *nothing\npair: *nothing\n'],
  ['brackets without end', '['.repeat(100_000)],
  ['braces without end', `rig: ${'{'.repeat(100_000)}`],
  ['lists in lists', '- '.repeat(60_000)],
  ['questions', '? '.repeat(60_000)],
  ['anchors', '&a '.repeat(40_000)],
  ['many keys', Array.from({ length: 15_000 }, (_, n) => `k${n}:`).join('\n')],
  ['one key many times', 'rig:\n'.repeat(25_000)],
  ['many columns', `columns:\n${Array.from({ length: 6000 }, (_, n) => ` c${n}: {unit: N}`).join('\n')}`],
  ['a long line', `rig: ${'a '.repeat(60_000)}`],
  ['a long quantity', `run: { axialForce: ${'1 '.repeat(50_000)}N }`],
  ['digits', `run: { axialForce: ${'9'.repeat(1900)} N }`],
  ['grouped digits', `run: { axialForce: 1${' 000'.repeat(450)} N }`],
  ['brackets in a unit', `run: { axialForce: "5 ${'('.repeat(900)}N${')'.repeat(900)}" }`],
  ['hats in a unit', `run: { axialForce: "5 N${'^'.repeat(1900)}" }`],
  ['carriage returns', 'rig:\r\r\r\r'.repeat(10_000)],
  ['half a pair of surrogates', 'rig: \uD800\nfixture: \uDC00\n'],
]

test.for(hostile.map(([name, text]) => ({ name, text })))('$name: answered within two seconds', ({ text }) => {
  expect(text.length).toBeLessThan(128 * 1024)
  expect(check(text)).toBeLessThan(2000)
})

const whole = setupTemplate('ballsOnPlate')

test.for(
  [
    ['nothing', '', 'setupEmpty'],
    ['a comment', '# hello\n', 'setupEmpty'],
    ['a word', 'hello', 'sectionExpected'],
    ['a list', '- rig\n- fixture\n', 'sectionExpected'],
    ['a photo', '\uFFFD\uFFFD\u0000\u0010JFIF\u0000', 'setupNotText'],
    ['a zero byte', `${whole}\u0000`, 'setupNotText'],
    ['ten megabytes', `${whole}note: ${'x'.repeat(1e7)}`, 'setupTooLong'],
  ].map(([name, text, kind]) => ({ name, text, kind })),
)('$name is refused as $kind', ({ text, kind }) => {
  const read = readSetup(text, 'refused.yaml')
  const problems = read.ok ? [] : read.problems
  expect(problems[0].kind).toBe(kind)
  expect(problems).toHaveLength(1)
})
