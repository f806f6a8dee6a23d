import { printable } from './printable.ts'

/** Records that say nothing, with the reason; empty where there are none. */
export const leftInWords = (left: readonly { readonly name: string; readonly why: string }[]): string =>
  left.length === 0 ? '' : `\nNot used:\n${left.map(({ name, why }) => `  ${printable(name, 60)}: ${why}.\n`).join('')}`
