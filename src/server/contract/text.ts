import { z } from 'zod'

/** Letters that no name holds: a terminal, a log or a page would do something with them. */
const withoutControl = /^[^\p{Cc}\p{Cs}\u2028\u2029]*$/u

/** A line of text that people typed. It is text everywhere: never markup, never a path. */
export const line = (most: number) =>
  z
    .string()
    .max(most, `Write at most ${most} letters.`)
    .regex(withoutControl, 'Leave out line ends and control characters.')

/** The same with something in it. */
export const name = (most: number) =>
  line(most).refine((text) => text.trim() !== '', 'Write at least one letter or digit.')

/** Initials or name of whoever does something, for the history. */
export const by = name(80).describe('Who does this, for the history.')

/** Why, for the history. */
export const why = line(2000).describe('Why, for the history.')

/** SHA-256 in hexadecimal, or the first four or more digits of it. */
export const recordWord = z.string().regex(/^[0-9a-f]{4,64}$/, 'Name a record by its id or its first digits.')

/** Id of a study, a sample or a named paper. */
export const identifier = z
  .string()
  .max(64)
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'An id is made of small letters, digits and single hyphens.')
