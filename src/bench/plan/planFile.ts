import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { fillFromTables, type OwnThings, type Plan, planOf } from '../../core/plan/index.ts'
import { done, failed, type Outcome, type Problem, type Sha256 } from '../../core/terms/index.ts'
import { readQuestion } from '../../io/index.ts'
import { fileProblem } from '../fileProblem.ts'

/** A plan with the file that asked for it. */
export interface PlannedFile {
  readonly file: string
  readonly sha256: Sha256
  readonly plan: Plan
  /** What was taken from the tables of bodies and liquids. */
  readonly taken: readonly string[]
}

/** Reads a question file, closes its gaps from the tables and what people keep of their own, and plans; all problems at once. */
export async function planFile(file: string, own?: OwnThings): Promise<Outcome<PlannedFile>> {
  let text: string
  try {
    text = await readFile(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  const name = basename(file)
  const read = readQuestion(text, name)
  if (!read.ok) return read
  const { question, placeOf } = read.value
  const inFile = (problem: Problem): Problem => ({
    ...problem,
    place: { file: name, ...problem.place, ...placeOf(problem.place.name ?? '') },
  })
  const filled = fillFromTables(question, own)
  if (!filled.ok) return failed(...filled.problems.map(inFile))
  const plan = planOf(filled.value.question)
  if (!plan.ok) return failed(...plan.problems.map(inFile))
  return done({ file: name, sha256: read.value.sha256, plan: plan.value, taken: filled.value.taken })
}
