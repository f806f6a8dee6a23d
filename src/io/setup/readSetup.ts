import { createHash } from 'node:crypto'
import { done, failed, type Outcome, type Problem, type Setup, type Sha256 } from '../../core/terms/index.ts'
import { assembleSetup } from './assembleSetup.ts'
import type { ColumnAnswers } from './columnAnswers.ts'
import { crossChecks } from './crossChecks.ts'
import type { Gathered } from './gathered.ts'
import { readRoot } from './readSection.ts'
import { yamlSource } from './yamlSource.ts'

/** A setup file as read. */
export interface SetupFile {
  readonly setup: Setup
  readonly columns: ColumnAnswers
  /** Of the file's text in UTF-8. */
  readonly sha256: Sha256
}

/**
 * Reads a setup from YAML with units as people write them. Gives all problems at once, each with line, column, key
 * path, the text that stands there and what would mend it. Never throws on bad input.
 */
export function readSetup(text: string, fileName: string): Outcome<SetupFile> {
  const source = yamlSource(text.replace(/^\uFEFF/, ''), fileName)
  if (!source.ok) return source
  const gathered: Gathered = { values: new Map(), problems: [], columns: {} }
  readRoot(source.value.root, { source: source.value, into: gathered, path: '' })
  const problems = [...gathered.problems, ...crossChecks(gathered)].sort(byPlace)
  if (problems.length > 0) return failed(...problems.slice(0, mostProblems))
  const sha256 = createHash('sha256').update(text, 'utf8').digest('hex')
  return done({ setup: assembleSetup(gathered), columns: gathered.columns, sha256 })
}

/** Nobody reads more; a wrong file would otherwise print thousands. */
const mostProblems = 100

const byPlace = (a: Problem, b: Problem): number =>
  (a.place.line ?? 0) - (b.place.line ?? 0) || (a.place.column ?? 0) - (b.place.column ?? 0)
