/** How one chore of the gate ended. */
export interface ChoreResult {
  readonly name: string
  readonly ok: boolean
  readonly seconds: number
  /** All that it wrote. */
  readonly output: string
}

/** The part of the test runner's JSON report that is looked at. */
export interface TestReport {
  readonly success: boolean
  readonly numPassedTests: number
  readonly numFailedTests: number
  readonly testResults: readonly {
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[]
  }[]
}

export interface Tally {
  readonly passed: number
  readonly failed: number
  /** Names of tests that did not run. */
  readonly skipped: readonly string[]
}

/**
 * Counts every test and every other chore. The chore of the tests counts by its tests, and as one failure more when it
 * failed for another reason than a test (a file that does not load, an error outside any test, no report at all).
 */
export function tally(chores: readonly ChoreResult[], testChore: string, report: TestReport | undefined): Tally {
  const others = chores.filter(({ name }) => name !== testChore)
  const tests = chores.find(({ name }) => name === testChore)
  const passedTests = report?.numPassedTests ?? 0
  const failedTests = report?.numFailedTests ?? 0
  const sound = tests === undefined || (tests.ok && report?.success === true && passedTests > 0)
  return {
    passed: others.filter(({ ok }) => ok).length + passedTests,
    failed: others.filter(({ ok }) => !ok).length + (sound ? failedTests : Math.max(1, failedTests)),
    skipped: (report?.testResults ?? [])
      .flatMap(({ assertionResults }) => assertionResults)
      .filter(({ status }) => status !== 'passed' && status !== 'failed')
      .map(({ fullName }) => fullName),
  }
}
