/** Commands in the documentation that the tests do not run, by how they begin, each with its reason. */
export const notRun: readonly { readonly command: string; readonly reason: string }[] = [
  {
    command: 'kufe coverage --curves 1000',
    reason: 'takes minutes; a small study is run in test/bench/coverage.test.ts',
  },
  {
    command: 'kufe coverage --of',
    reason: 'takes minutes; small studies of each kind are run in test/bench/furtherCoverage.test.ts',
  },
  {
    command: 'kufe serve',
    reason: 'runs until somebody presses Ctrl+C; test/server does so',
  },
  {
    command: 'kufe verdict-rates --draws 20000',
    reason: 'takes minutes; a small study is run in test/bench/decide',
  },
  {
    command: 'kufe watch rig-output',
    reason: 'runs until somebody presses Ctrl+C; test/cli/killing.test.ts does so',
  },
]
