import type { Verb } from './verb.ts'

/** Verbs that are called for one file after the other, so that every millisecond of their start counts. */
const alone: Readonly<Record<string, () => Promise<Verb>>> = {
  reduce: async () => (await import('./verbs/reduce.ts')).reduceVerb,
  fit: async () => (await import('./verbs/fit.ts')).fitVerb,
}

/** The verbs that a command line may mean: loading all forty takes longer than reading most records. */
export async function verbsFor([first = '']: readonly string[]): Promise<readonly Verb[]> {
  return Object.hasOwn(alone, first) ? [await alone[first]()] : (await import('./verbs.ts')).allVerbs
}
