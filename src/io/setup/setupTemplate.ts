import type { FixtureKind } from '../../core/terms/index.ts'
import { fixtureKindsWritten } from './fixtureKeys.ts'
import { keyLines } from './keyLines.ts'
import { setupKeys } from './setupKeys.ts'

const opening = [
  'Setup for Kufe: everything that has to be known beside the raw record.',
  'Every value is an example: put in your own. Write quantities with their unit.',
  'A key behind a # without a blank is switched off; take the # away to use it.',
]

/** A starter file for one kind of fixture: required keys with examples, all others switched off with their defaults. */
export function setupTemplate(kind: FixtureKind, schema = 'setup.schema.json'): string {
  const written = Object.entries(fixtureKindsWritten).find(([, own]) => own === kind)?.[0]
  if (written === undefined) throw new RangeError(`there is no fixture ${kind}`)
  const head = [`# yaml-language-server: $schema=${schema}`, ...opening.map((line) => `# ${line}`)]
  const sections = Object.entries(setupKeys.keys).flatMap(([name, key]) => [
    '',
    ...keyLines(name, key, { kind: written, indent: '' }),
  ])
  return `${[...head, ...sections].join('\n')}\n`
}
