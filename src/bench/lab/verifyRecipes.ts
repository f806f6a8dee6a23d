import { done, type Outcome, type Outside } from '../../core/terms/index.ts'
import type { Lab, NewResult } from '../../store/index.ts'
import { computing } from './computing.ts'
import { inOrder } from './inOrder.ts'
import { changeNow, type LabCall } from './labCall.ts'
import type { Recipe } from './recipes.ts'
import type { Finding, Verification } from './verification.ts'
import { type RecipeVerified, verifyRecipe } from './verifyRecipe.ts'

interface Verifying {
  readonly lab: Lab
  readonly call: LabCall
  readonly outside: Outside
  readonly keep: boolean
  readonly threads: number
}

type Sums = Pick<Verification, 'same' | 'sameByOther' | 'superseded' | 'keptBeside' | 'findings'>

/** Results of one transaction. */
const batchResults = 32

/** Verifies recipes one after the other, in several threads; keeps what this version of the program makes where asked to. */
export async function verifyRecipes(recipes: readonly Recipe[], verifying: Verifying): Promise<Outcome<Sums>> {
  const { lab, outside, keep, threads } = verifying
  const by = computing(recipes.length, threads)
  const seen: RecipeVerified[] = []
  let batch: NewResult[] = []
  let keptBeside = 0
  const flush = async (): Promise<Outcome<unknown>> => {
    const kept = await keepBeside(batch, verifying)
    if (kept.ok) keptBeside += batch.length
    batch = []
    return kept
  }
  try {
    for await (const one of inOrder(recipes, by.width, (recipe) => verifyRecipe(recipe, { lab, by, outside }))) {
      if (keep && one.fresh !== undefined) batch.push(newResult(one.fresh))
      seen.push({ ...one, fresh: undefined })
      if (batch.length >= batchResults) {
        const kept = await flush()
        if (!kept.ok) return kept
      }
      outside.progress('verifying', seen.length, recipes.length)
    }
    const kept = await flush()
    return kept.ok ? done({ ...sums(seen, keep), keptBeside }) : kept
  } finally {
    await by.close()
  }
}

const newResult = ({ kind, origin, text }: NewResult): NewResult => ({ kind, origin, text })

const keepBeside = async (batch: readonly NewResult[], { lab, call, outside }: Verifying): Promise<Outcome<unknown>> =>
  batch.length === 0 ? done(null) : lab.results.add(batch, changeNow(call, outside))

function sums(seen: readonly RecipeVerified[], keep: boolean): Omit<Sums, 'keptBeside'> {
  const total = (name: 'same' | 'sameByOther' | 'superseded'): number => seen.reduce((sum, one) => sum + one[name], 0)
  const findings = seen.flatMap((one) => one.findings)
  return {
    same: total('same'),
    sameByOther: total('sameByOther'),
    superseded: total('superseded'),
    findings: findings.map(
      (finding): Finding => (finding.what === 'changed' ? { ...finding, keptBeside: keep } : finding),
    ),
  }
}
