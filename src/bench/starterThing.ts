import { relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { nearestWord } from '../core/quantity/index.ts'
import { done, failed, type Outcome } from '../core/terms/index.ts'
import { fixtureKindsWritten } from '../io/index.ts'
import { ownStarters, ownTemplate } from '../io/ownThings/index.ts'
import { questionTemplate } from '../io/question/index.ts'
import { fixtureWords } from './starterSetup.ts'

const schema = (name: string, folder: string): string =>
  relative(resolve(folder), fileURLToPath(new URL(`../../schema/${name}.schema.json`, import.meta.url)))

/** A file of an own body or liquid to start from; its first line leads editors to the schema, seen from `folder`. */
export function starterThing(word: string, folder: string): Outcome<string> {
  const starter = ownStarters.find((one) => one === word)
  if (starter !== undefined) return done(ownTemplate(starter, schema('material', folder)))
  return failed(unknown(word, ownStarters, 'starter'))
}

/** A question to start from, for a kind of fixture. */
export function starterQuestion(word: string, folder: string): Outcome<string> {
  const written = word.replaceAll('-', ' ')
  const kind = Object.hasOwn(fixtureKindsWritten, written) ? fixtureKindsWritten[written] : undefined
  return kind === undefined
    ? failed(unknown(word, fixtureWords, 'fixture'))
    : done(questionTemplate(kind, schema('question', folder)))
}

function unknown(word: string, known: readonly string[], what: string) {
  const nearest = nearestWord(word, known)
  return {
    kind: `${what}Unknown`,
    class: 'wrongUse' as const,
    place: {},
    what: `There is no ${what} "${word}".`,
    mend: nearest === undefined ? `Choose one of ${known.join(', ')}.` : `Did you mean ${nearest}?`,
  }
}
