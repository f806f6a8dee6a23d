import { setFlagsFromString } from 'node:v8'

/** Verbs that read one record, answer and end. */
const shortVerbs: ReadonlySet<string | undefined> = new Set(['reduce', 'fit'])

/** The version that these names belong to; another one may not know them and would say so on standard error. */
const knownEngine = /^24\./

const flags = [
  '--invocation-count-for-turbofan=100000',
  '--invocation-count-for-osr=20000',
  '--semi-space-growth-factor=1',
] as const

/**
 * The engine readies itself for programs that run for hours: it compiles again and again what is called often, and lets
 * the room for short-lived objects grow. A verb that ends within a second pays for that and has little of it: a tenth of
 * the processor time and of the memory for a million rows (docs/speed.md). Loops over rows are compiled as well as ever.
 */
export function readyForShortRun(verb: string | undefined, node: string): void {
  if (!shortVerbs.has(verb) || !knownEngine.test(node)) return
  for (const flag of flags) setFlagsFromString(flag)
}
