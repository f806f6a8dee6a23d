import type { Problem } from '../core/terms/index.ts'

/** What the program says by its exit code. Shown in every help text and checked against the pages of the verbs. */
export const exitCodes = {
  ok: { code: 0, meaning: 'done' },
  finding: { code: 1, meaning: 'done, and a check failed' },
  wrongUse: { code: 2, meaning: 'wrong use: an option, an argument, a file that may not be written' },
  badInput: { code: 3, meaning: 'bad input: a record or setup that cannot be used as it is' },
  store: { code: 4, meaning: 'the lab store' },
  fault: { code: 70, meaning: 'a fault of ours' },
} as const

/** Code for a list of problems: that of the first. */
export const codeOf = (problems: readonly Problem[]): number => exitCodes[problems[0]?.class ?? 'wrongUse'].code
