import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { nearestWord } from '../../../core/quantity/index.ts'
import { done, failed, type Outcome, type Problem } from '../../../core/terms/index.ts'
import { type NamedText, readTexts } from '../../../io/texts/index.ts'
import { type NoteKey, noteKeys, type ReportTexts } from '../../../report/index.ts'
import { fileProblem } from '../../fileProblem.ts'

/** What people say in a report and what no setup holds. */
export type ReportWords = Pick<ReportTexts, 'question' | 'answer' | 'author' | 'notes'>

const plainKeys = ['question', 'answer', 'author'] as const

type PlainKey = (typeof plainKeys)[number]

/** Reads the file of notes: question, answer, author, and one note for each item of a complete report. All problems at once. */
export function reportWords(file: string | undefined): Outcome<ReportWords> {
  if (file === undefined) return done({})
  let text: string
  try {
    text = readFileSync(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  const read = readTexts(text, basename(file))
  if (!read.ok) return read
  const unknown = read.value.filter(({ name }) => !isPlain(name) && !isNote(name))
  if (unknown.length > 0) return failed(...unknown.map(unknownName))
  const pick = (wanted: (name: string) => boolean): object =>
    Object.fromEntries(read.value.filter(({ name }) => wanted(name)).map(({ name, text: said }) => [name, said]))
  return done({ ...pick(isPlain), notes: pick(isNote) })
}

const isPlain = (name: string): name is PlainKey => plainKeys.includes(name as PlainKey)
const isNote = (name: string): name is NoteKey => noteKeys.includes(name as NoteKey)

function unknownName({ name, place }: NamedText): Problem {
  const known = [...plainKeys, ...noteKeys]
  const nearest = nearestWord(name, known)
  return {
    kind: 'noteUnknown',
    class: 'badInput',
    place,
    what: 'There is no note of this name.',
    mend: nearest === undefined ? `Use one of ${known.join(', ')}.` : `Did you mean ${nearest}?`,
  }
}
