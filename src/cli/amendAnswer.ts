import type { Amended } from '../bench/lab/index.ts'
import { schemaVersion } from '../core/terms/index.ts'
import { briefInWords, shortId } from './show/addInWords.ts'
import { printable } from './show/printable.ts'
import { factChangesInWords } from './show/thingInWords.ts'

/** What a correction changed, for machines or for people. */
export function answerAmended({ before, after, brief, windows, answers }: Amended, json: boolean): string {
  if (json)
    return `${JSON.stringify({ schemaVersion, before, after, brief: brief ?? null, windows: windows ?? null, answers: answers ?? null }, null, 2)}\n`
  const name = `${shortId(after.id)}  ${printable(after.name)}`
  const reduced = `${windowsInWords(windows)}${brief === undefined ? '' : `Reduced with ${windows === undefined ? 'this setup' : 'them'}: ${briefInWords(brief)}.\n`}`
  const sheet = answersInWords(answers)
  if (before.version === after.version && (answers?.isNew === true || windows !== undefined))
    return `${name}\n${reduced}${sheet}`
  if (before.version === after.version)
    return `${name}: nothing differs, version ${after.version} stays.\n${reduced}${sheet}`
  return `${name}, version ${after.version}: ${factChangesInWords(before, after)}.\n${reduced}${sheet}`
}

const windowsInWords = (version: Amended['windows']): string =>
  version === undefined ? '' : `Windows as named, version ${version}.\n`

function answersInWords(answers: Amended['answers']): string {
  if (answers === undefined) return ''
  return answers.isNew
    ? `Run sheet kept, version ${answers.version}; it stands in the report of the record.\n`
    : `The run sheet is the one that was kept already, version ${answers.version}.\n`
}
