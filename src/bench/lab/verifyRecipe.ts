import { done, type Outcome, type Outside } from '../../core/terms/index.ts'
import { checksum, type KeptResult, type Lab } from '../../store/index.ts'
import { computeKept } from './computeKept.ts'
import type { ComputedResult } from './computeResult.ts'
import type { Computing } from './computing.ts'
import { firstName } from './firstName.ts'
import type { Recipe } from './recipes.ts'
import { type Difference, resultDifferences } from './resultDifferences.ts'
import type { Finding } from './verification.ts'

/** What one recipe came to. */
export interface RecipeVerified {
  readonly same: number
  readonly sameByOther: number
  readonly superseded: number
  readonly findings: readonly Finding[]
  /** A result of this version where none is kept yet. */
  readonly fresh: ComputedResult | undefined
}

const nothingSeen = { same: 0, sameByOther: 0, superseded: 0, findings: [], fresh: undefined } as const

/** Computes a recipe again and holds the results that are kept of it against that. */
export async function verifyRecipe(
  recipe: Recipe,
  { lab, by, outside }: { readonly lab: Lab; readonly by: Computing; readonly outside: Outside },
): Promise<RecipeVerified> {
  const { record, kind, setup, given } = recipe
  try {
    const file = await firstName(lab, record)
    const task = { record, file: file.ok ? file.value : record.name, setup, given, kind, program: outside.program }
    const computed = await computeKept(lab, task, by)
    if (!computed.ok)
      return { ...nothingSeen, findings: [{ what: 'notComputed', record, problems: computed.problems }] }
    return await compare(lab, recipe, computed.value)
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error)
    return { ...nothingSeen, findings: [{ what: 'fault', record, message }] }
  }
}

async function compare(lab: Lab, { record, results }: Recipe, computed: ComputedResult): Promise<RecipeVerified> {
  const ours = results.filter(({ origin }) => origin.program === computed.origin.program)
  const others = results.filter((result) => !ours.includes(result))
  const sha256 = checksum(computed.text)
  const findings: Finding[] = []
  for (const result of ours.filter((one) => one.sha256 !== sha256)) {
    const differences = await differencesTo(lab, result, computed)
    if (differences.ok) findings.push({ what: 'differs', record, result, differences: differences.value })
  }
  const same = ours.filter((one) => one.sha256 === sha256).length
  const last = others.at(-1)
  if (ours.length > 0 || last === undefined) return { ...nothingSeen, same, superseded: others.length, findings }
  const differences = await differencesTo(lab, last, computed)
  const changed = differences.ok ? differences.value : []
  if (changed.length > 0)
    findings.push({ what: 'changed', record, result: last, differences: changed, keptBeside: false })
  return {
    same,
    sameByOther: changed.length === 0 && differences.ok ? 1 : 0,
    superseded: others.length - 1,
    findings,
    fresh: computed,
  }
}

/** A text that is not what was kept is no ground for a comparison, and is told as damaged elsewhere. */
async function differencesTo(lab: Lab, { id }: KeptResult, { text }: ComputedResult): Promise<Outcome<Difference[]>> {
  const kept = await lab.results.text(id)
  return kept.ok ? done(resultDifferences(kept.value, text, ['origin.program'])) : kept
}
