import { refuse } from './storeProblem.ts'

/** A text that both databases keep as it is: no NUL, which PostgreSQL refuses, and no half of a surrogate pair, which UTF-8 cannot write. */
export function plainText(text: string, name: string): string {
  if (text.isWellFormed() && !text.includes('\0')) return text
  return refuse('notUsable', {
    place: { name, cell: text.toWellFormed().replaceAll('\0', '\u2400').slice(0, 80) },
    what: `The text of "${name}" holds a character that cannot be kept.`,
    mend: 'Save it as UTF-8 text without NUL characters.',
  })
}

/** The same for a text that may be absent. */
export const plainTextOrNull = (text: string | null | undefined, name: string): string | null =>
  text === null || text === undefined ? null : plainText(text, name)
