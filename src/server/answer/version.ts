import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'

/** The version that a writer saw, out of `If-Match: "3"`; 0, or `If-None-Match: *`, where there was none. */
export function versionSeen(headers: Headers): Outcome<number> {
  if (headers.get('if-none-match')?.trim() === '*') return done(0)
  const text = headers.get('if-match')
  if (text === null) return failed(missing)
  const found = /^(?:W\/)?"?(\d{1,9})"?$/.exec(text.trim())
  return found === null ? failed(unreadable(text)) : done(Number(found[1]))
}

/** A version as a tag. */
export const versionTag = (version: number): string => `"${version}"`

const missing: Problem = {
  kind: 'versionMissing',
  class: 'wrongUse',
  place: { name: 'if-match' },
  what: 'The request does not say which version its writer saw.',
  mend: 'Send the header If-Match with the number of that version in quotes, "0" for none.',
}

const unreadable = (text: string): Problem => ({
  kind: 'versionWrong',
  class: 'wrongUse',
  place: { name: 'if-match', cell: text.slice(0, 80) },
  what: 'This names no version.',
  mend: 'Send one number in quotes, such as If-Match: "3".',
})
