import { createHash } from 'node:crypto'
import { asProblem, type PlanQuestion, questionFaults } from '../../core/plan/index.ts'
import { done, failed, type Outcome, type Place, type Problem, type Sha256 } from '../../core/terms/index.ts'
import { assembleSetup } from '../setup/assembleSetup.ts'
import { crossChecks } from '../setup/crossChecks.ts'
import type { Gathered } from '../setup/gathered.ts'
import { yamlSource } from '../setup/yamlSource.ts'
import { type OwnSections, readRunSections } from '../virtualRun/readRunSections.ts'
import { RunValues } from '../virtualRun/runValues.ts'
import { assembleQuestion } from './assembleQuestion.ts'
import { questionKeys } from './questionKeys.ts'

/** A question file as read. */
export interface QuestionFile {
  readonly question: PlanQuestion
  /** Of the file's text in UTF-8. */
  readonly sha256: Sha256
  /** Where a key stands, for what is found wrong later; empty where it was not given. */
  readonly placeOf: (key: string) => Place
}

const ofQuestions: OwnSections = {
  keys: questionKeys,
  called: 'a question',
  withoutColumns: 'Take it out: there is no record yet.',
}

/** Nobody reads more. */
const mostProblems = 100

/**
 * Reads a question from YAML with units as people write them: the sections of a setup, and what is asked. Gives all problems at
 * once, each with line, column, key path, the text that stands there and what would mend it. Never throws on bad input.
 */
export function readQuestion(text: string, fileName: string): Outcome<QuestionFile> {
  const source = yamlSource(text.replace(/^\uFEFF/, ''), fileName)
  if (!source.ok) return source
  const gathered: Gathered = { values: new Map(), problems: [], columns: {} }
  readRunSections(source.value.root, { source: source.value, into: gathered, path: '' }, ofQuestions)
  const problems = [...gathered.problems, ...crossChecks(gathered)]
  if (problems.length > 0) return failed(...problems.sort(byLine).slice(0, mostProblems))
  const values = new RunValues(gathered)
  const question = assembleQuestion(values, assembleSetup(gathered))
  const impossible = questionFaults(question).filter(({ weight }) => weight === 'stops')
  if (impossible.length > 0) {
    const placed = impossible.map((fault): Problem => {
      const problem = asProblem(fault)
      const place = values.place(fault.key)
      return { ...problem, place: { file: fileName, ...problem.place, ...place } }
    })
    return failed(...placed.sort(byLine))
  }
  const sha256 = createHash('sha256').update(text, 'utf8').digest('hex')
  return done({ question, sha256, placeOf: (key) => values.place(key) })
}

const byLine = (a: Problem, b: Problem): number => (a.place.line ?? 0) - (b.place.line ?? 0)
