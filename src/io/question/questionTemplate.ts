import type { FixtureKind } from '../../core/terms/index.ts'
import { fixtureKindsWritten } from '../setup/fixtureKeys.ts'
import { keyLines } from '../setup/keyLines.ts'
import { wholeQuestion } from './wholeQuestion.ts'

const opening = [
  'Question for Kufe: what is to be found out, with which rig, fixture and pair, and what it may cost.',
  'Every value is an example: put in your own. Write quantities with their unit.',
  'A key behind a # without a blank is switched off; take the # away to use it.',
]

/** A question to start from, for one kind of fixture: required keys with examples, all others switched off with their defaults. */
export function questionTemplate(kind: FixtureKind, schema = 'question.schema.json'): string {
  const written = Object.entries(fixtureKindsWritten).find(([, own]) => own === kind)?.[0]
  if (written === undefined) throw new RangeError(`there is no fixture ${kind}`)
  const head = [`# yaml-language-server: $schema=${schema}`, ...opening.map((line) => `# ${line}`)]
  const keys = Object.entries(wholeQuestion.keys).flatMap(([name, key]) => [
    '',
    ...keyLines(name, name === 'title' ? { ...key, required: true } : key, { kind: written, indent: '' }),
  ])
  return `${[...head, ...keys].join('\n')}\n`
}
