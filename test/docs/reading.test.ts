import { expect, test } from 'vitest'
import { commandsOf, matchesOutput } from './commands.ts'

test('commands are found with their lines joined and the exit code that is promised', () => {
  expect(
    commandsOf('# first\nkufe reduce a.csv \\\n  --json\n\nkufe reduce b.csv  # exits 3: no torque\nls\n'),
  ).toEqual([
    { text: 'kufe reduce a.csv    --json', exits: 0 },
    { text: 'kufe reduce b.csv  # exits 3: no torque', exits: 3 },
    { text: 'ls', exits: 0 },
  ])
})

test.for([
  ['a\nb\n', 'a\nb\n', true],
  ['a  \nb\n', 'a\nb\n', true],
  ['a\nb\n', 'a\n', false],
  ['a\n', 'a\nb\n', false],
  ['a\nb\nc\nd\n', 'a\n…\nd\n', true],
  ['a\nd\n', 'a\n…\nd\n', true],
  ['a\nb\nc\n', 'a\n…\nd\n', false],
  ['a\nb\nc\n', '…\n', true],
] as const)('output %j, shown as %j: %s', ([output, shown, same]) => {
  expect(matchesOutput(output, shown)).toBe(same)
})
