import type { Problem } from './problem.ts'

/** A result, or all the problems that stood in its way. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** All went well. */
export const done = <T>(value: T): Outcome<T> => ({ ok: true, value })

/** Nothing could be had; says everything that stood in the way, not only the first. */
export const failed = (...problems: readonly Problem[]): Outcome<never> => ({ ok: false, problems })
