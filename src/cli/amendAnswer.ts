import type { Amended } from '../bench/lab/index.ts'
import { schemaVersion } from '../core/terms/index.ts'
import { briefInWords, shortId } from './show/addInWords.ts'
import { printable } from './show/printable.ts'
import { factChangesInWords } from './show/thingInWords.ts'

/** What a correction changed, for machines or for people. */
export function answerAmended({ before, after, brief }: Amended, json: boolean): string {
  if (json) return `${JSON.stringify({ schemaVersion, before, after, brief: brief ?? null }, null, 2)}\n`
  const name = `${shortId(after.id)}  ${printable(after.name)}`
  const reduced = brief === undefined ? '' : `Reduced with this setup: ${briefInWords(brief)}.\n`
  if (before.version === after.version) return `${name}: nothing differs, version ${after.version} stays.\n${reduced}`
  return `${name}, version ${after.version}: ${factChangesInWords(before, after)}.\n${reduced}`
}
