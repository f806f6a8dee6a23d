import { setFlagsFromString } from 'node:v8'

/** Verbs that read one record, answer and end. */
const shortVerbs: ReadonlySet<string | undefined> = new Set(['reduce', 'fit'])

/**
 * The engine readies itself for programs that run for hours: it compiles again and again what is called often, and lets
 * room for short-lived objects grow. A verb that ends within a second pays for that and has nothing of it: ten per cent
 * of the processor time and of the memory for a million rows (docs/speed.md). Loops over rows are still compiled well.
 */
export function readyForShortRun(verb: string | undefined): void {
  if (!shortVerbs.has(verb)) return
  setFlagsFromString('--invocation-count-for-turbofan=100000')
  setFlagsFromString('--invocation-count-for-osr=20000')
  setFlagsFromString('--semi-space-growth-factor=1')
}
