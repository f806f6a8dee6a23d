import { expect, test } from 'vitest'
import { type ChoreResult, type TestReport, tally } from '../../scripts/tally.ts'

const chore = (name: string, ok: boolean): ChoreResult => ({ name, ok, seconds: 1, output: '' })

const report = (passed: number, failed: number, skipped: string[] = []): TestReport => ({
  success: failed === 0,
  numPassedTests: passed,
  numFailedTests: failed,
  testResults: [{ assertionResults: skipped.map((fullName) => ({ fullName, status: 'skipped' })) }],
})

const good = [chore('tests', true), chore('types', true), chore('lint', true)]

test.for<[what: string, chores: ChoreResult[], report: TestReport | undefined, passed: number, failed: number]>([
  ['tests and chores add up', good, report(40, 0), 42, 0],
  ['a failed test', [chore('tests', false), chore('lint', true)], report(39, 1), 40, 1],
  ['a failed chore', [chore('tests', true), chore('lint', false)], report(40, 0), 40, 1],
  ['a test file that does not load', [chore('tests', false)], report(40, 0), 40, 1],
  ['no report', [chore('tests', true)], undefined, 0, 1],
  ['no test found', [chore('tests', true)], report(0, 0), 0, 1],
  ['a report that says no although the runner ended well', [chore('tests', true)], report(3, 1), 3, 1],
  ['a single chore asked for', [chore('lint', true)], undefined, 1, 0],
])('%s', ([, chores, given, passed, failed]) => {
  expect(tally(chores, 'tests', given)).toMatchObject({ passed, failed })
})

test('tests that did not run are named', () => {
  expect(tally(good, 'tests', report(3, 0, ['reads a tape'])).skipped).toEqual(['reads a tape'])
})
