import { type HeldAgainstPlan, heldAgainstPlan } from '../../core/plan/index.ts'
import { done, type Outcome, type Outside } from '../../core/terms/index.ts'
import { type ReduceFileArgs, reduceFile } from '../reduceFile.ts'
import type { PlannedFile } from './planFile.ts'

/** A record held against the plan that it was made by. */
export interface HeldRecord {
  readonly file: string
  readonly held: HeldAgainstPlan
}

/** Reduces a record with its setup and holds it against a plan. */
export async function heldRecord(
  { plan }: PlannedFile,
  args: ReduceFileArgs,
  outside: Outside,
): Promise<Outcome<HeldRecord>> {
  const reduced = await reduceFile(args, outside)
  if (!reduced.ok) return reduced
  return done({ file: reduced.value.file, held: heldAgainstPlan(plan, reduced.value.reduction) })
}
