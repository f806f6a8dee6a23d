import type { VirtualRun } from '../../core/rig/index.ts'
import { done, failed, type Outcome, type Problem, type Setup } from '../../core/terms/index.ts'
import { assembleSetup } from '../setup/assembleSetup.ts'
import { crossChecks } from '../setup/crossChecks.ts'
import type { Gathered } from '../setup/gathered.ts'
import { yamlSource } from '../setup/yamlSource.ts'
import type { TableDialect } from '../write/index.ts'
import { assembleDialect } from './assembleDialect.ts'
import { assembleRun } from './assembleRun.ts'
import { readRunSections } from './readRunSections.ts'
import { runChecks, sheetChecks } from './runChecks.ts'
import { RunValues } from './runValues.ts'

/** A virtual run as a file tells it. */
export interface VirtualRunFile {
  readonly run: VirtualRun
  /** The setup with which its record is reduced. */
  readonly setup: Setup
  readonly dialect: TableDialect
  readonly seed: number
}

/**
 * Reads a virtual run from YAML with units as people write them. Gives all problems at once, each with line, column, key
 * path, the text that stands there and what would mend it. Never throws on bad input.
 */
export function readVirtualRun(text: string, fileName: string): Outcome<VirtualRunFile> {
  const source = yamlSource(text.replace(/^\uFEFF/, ''), fileName)
  if (!source.ok) return source
  const gathered: Gathered = { values: new Map(), problems: [], columns: {} }
  readRunSections(source.value.root, { source: source.value, into: gathered, path: '' })
  const values = new RunValues(gathered)
  const problems = [...gathered.problems, ...crossChecks(gathered), ...runChecks(values, { file: fileName })]
  if (problems.length > 0) return failed(...problems.sort(byLine).slice(0, mostProblems))
  const setup = assembleSetup(gathered)
  const run = assembleRun(values, setup)
  const late = sheetChecks(run, values)
  if (late.length > 0) return failed(...late)
  return done({
    run,
    setup,
    dialect: { ...assembleDialect(values), columns: run.columns },
    seed: values.number('seed', 1),
  })
}

const mostProblems = 100

const byLine = (a: Problem, b: Problem): number => (a.place.line ?? 0) - (b.place.line ?? 0)
