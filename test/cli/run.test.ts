import { expect, test } from 'vitest'
import { run } from '../../src/cli/run.ts'
import { verbs } from '../../src/cli/verbs.ts'
import { capturedDesk } from './capturedDesk.ts'

test('--help shows an example first and ends well', async () => {
  const desk = capturedDesk()
  expect(await run(['--help'], desk)).toBe(0)
  expect(desk.out()).toMatch(/^Example:\n {2}kufe demo\n/)
  for (const { name } of verbs) expect(desk.out()).toContain(`\n  ${name} `)
  expect(desk.err()).toBe('')
})

test.for(verbs.map(({ name, help }) => ({ name, help })))(
  'help of $name: example, usage, exit codes',
  async ({ name, help }) => {
    const desk = capturedDesk()
    expect(await run([name, '--help'], desk)).toBe(0)
    expect(desk.out()).toBe(help)
    expect(help).toMatch(new RegExp(`^Example:\n {2}kufe ${name}`))
    expect(help).toContain(`\nUsage: kufe ${name} `)
    for (const code of [0, 1, 2, 3, 4, 70]) expect(help).toMatch(new RegExp(`\n {2}${code} +\\S`))
    const wide = help.split('\n').filter((line) => line.length > 110)
    expect(wide).toEqual([])
  },
)

test('--version says program and version', async () => {
  const desk = capturedDesk()
  expect(await run(['--version'], desk)).toBe(0)
  expect(desk.out()).toBe('kufe 0.0.0-test\n')
})

test('nothing asked: the help, on standard error, as wrong use', async () => {
  const desk = capturedDesk()
  expect(await run([], desk)).toBe(2)
  expect(desk.out()).toBe('')
  expect(desk.err()).toContain('Example:')
})

test.for([
  { words: ['reduec', 'a.csv'], says: /unknown command 'reduec'/, mend: 'Did you mean reduce?' },
  { words: ['reduce', 'a.csv', '--setpu', 's'], says: /unknown option '--setpu'/, mend: 'Did you mean --setup?' },
  {
    words: ['reduce', '--setup', 's.yaml'],
    says: /missing required argument 'file'/,
    mend: 'Ask "kufe reduce --help"',
  },
  { words: ['reduce', 'a.csv', '-s', 's', '--draws', '-1'], says: /whole number from 100/, mend: 'Ask' },
  { words: ['reduce', 'a.csv', '-s', 's', '--segmentation', 'up'], says: /Allowed choices are auto/, mend: 'Ask' },
  { words: ['reduce', 'a.csv', 'b.csv', '-s', 's'], says: /too many arguments/, mend: 'Ask' },
  { words: ['completion', 'tcsh'], says: /Allowed choices are bash, zsh, fish/, mend: 'Ask "kufe completion --help"' },
])('wrong use: $words', async ({ words, says, mend }) => {
  const desk = capturedDesk()
  expect(await run(words, desk)).toBe(2)
  expect(desk.err()).toMatch(says)
  expect(desk.err()).toContain(mend)
  expect(desk.out()).toBe('')
})

test('wrong use with --json: one error object on standard output', async () => {
  const desk = capturedDesk()
  expect(await run(['reduce', '--json', '--setup', 's.yaml'], desk)).toBe(2)
  const document = JSON.parse(desk.out())
  expect(document).toMatchObject({
    schemaVersion: '1',
    error: { code: 2, class: 'wrongUse', problems: [{ kind: 'wrongUse' }] },
  })
  expect(desk.err()).toContain('missing required argument')
})
