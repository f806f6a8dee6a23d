import { type FilledQuestion, fillFromTables, planOf } from '../../core/plan/index.ts'
import { done, failed, type Outcome, type Setup } from '../../core/terms/index.ts'
import { readQuestion, readSetup, type SetupFile, writeSetup } from '../../io/index.ts'

/** A question document as JSON: the same keys and words as in a question file. */
export type QuestionDocument = Readonly<Record<string, unknown>>

/** Reads a question document into SI and closes its gaps from the tables; all problems at once, each with its key. */
export function readQuestionDocument(document: QuestionDocument): Outcome<FilledQuestion> {
  // JSON is YAML: one reader says the same about both.
  const read = readQuestion(JSON.stringify(document, null, 2), 'question')
  return read.ok ? fillFromTables(read.value.question) : read
}

/** A setup to start from, with its text. */
export interface StarterSetup extends SetupFile {
  readonly text: string
}

/** A setup out of a question: what will be mounted, at the load that was decided or that the plan suggests. */
export function setupFromQuestion(document: QuestionDocument): Outcome<StarterSetup> {
  const filled = readQuestionDocument(document)
  if (!filled.ok) return filled
  const { rig, fixture, pair, liquid, run, title } = filled.value.question
  const plan = planOf(filled.value.question)
  if (!plan.ok) return failed(...plan.problems)
  const axialForce = run.axialForce ?? plan.value.suggestion.axialForce
  const setup: Setup = { rig, fixture, pair, liquid, run: { ...run, axialForce }, options: {} }
  const text = writeSetup(setup, {
    heading: [
      `Begun from the question: ${title.replace(/\s+/g, ' ')}`,
      'Put in what was really mounted and commanded; values from tables stand in where nobody measured.',
    ],
  })
  const read = readSetup(text, 'setup')
  return read.ok ? done({ ...read.value, text }) : read
}
