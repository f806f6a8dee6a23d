import type { Problem } from './problem.ts'

/** A result, or all the problems that stood in its way. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] }

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value })

export const failed = (...problems: readonly Problem[]): Outcome<never> => ({ ok: false, problems })
