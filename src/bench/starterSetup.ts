import { relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { nearestWord } from '../core/quantity/index.ts'
import { done, failed, type Outcome } from '../core/terms/index.ts'
import { fixtureKindsWritten, setupTemplate } from '../io/index.ts'

const schema = fileURLToPath(new URL('../../schema/setup.schema.json', import.meta.url))

/** Kinds of fixture as the terminal takes them: `balls-on-plate`. */
export const fixtureWords: readonly string[] = Object.keys(fixtureKindsWritten).map((written) =>
  written.replaceAll(' ', '-'),
)

/** A setup to start from, for a kind of fixture; its first line leads editors to the schema, seen from `folder`. */
export function starterSetup(word: string, folder: string): Outcome<string> {
  const written = word.replaceAll('-', ' ')
  const kind = Object.hasOwn(fixtureKindsWritten, written) ? fixtureKindsWritten[written] : undefined
  if (kind !== undefined) return done(setupTemplate(kind, relative(resolve(folder), schema)))
  const nearest = nearestWord(word, fixtureWords)
  return failed({
    kind: 'fixtureUnknown',
    class: 'wrongUse',
    place: {},
    what: `There is no fixture "${word}".`,
    mend: nearest === undefined ? `Choose one of ${fixtureWords.join(', ')}.` : `Did you mean ${nearest}?`,
  })
}
