import { done, type Outcome, type Outside, type Problem } from '../../core/terms/index.ts'
import type { KeptRecord, KeptResult, Lab } from '../../store/index.ts'
import { countingResult } from './currentResult.ts'
import { inLab } from './inLab.ts'
import type { LabCall } from './labCall.ts'
import { namedRecords } from './named.ts'
import { type Recipe, recipesOf } from './recipes.ts'
import type { Finding, Verification } from './verification.ts'
import { verifyRecipes } from './verifyRecipes.ts'

export interface VerifyArgs {
  /** A record, a study or a sample; the whole lab where undefined. */
  readonly word: string | undefined
  /** Keep the results of this version of the program beside those of others. */
  readonly keep: boolean
  readonly threads: number
}

/** Records that the store looks at by their names; of more it looks at all. */
const mostChecked = 10_000

/**
 * Holds all bytes and texts against their checksums, computes the results again from them, and compares bit for bit.
 * Results of another version of the program are computed beside, and what changed is told by how much.
 */
export const verifyLab = (args: VerifyArgs, call: LabCall, outside: Outside): Promise<Outcome<Verification>> =>
  inLab(call, outside, async (lab) => {
    const records = await namedRecords(lab, args.word)
    if (!records.ok) return records
    const ids = args.word === undefined ? undefined : records.value.map(({ id }) => id)
    const few = ids !== undefined && ids.length <= mostChecked ? ids : undefined
    const checked = await lab.check({ records: few, progress: outside.progress })
    if (!checked.ok) return checked
    const results = await resultsOf(lab, ids)
    if (!results.ok) return results
    const { raws, setups, problems } = checked.value
    const verified = await verifyRecipes(soundRecipes(records.value, results.value, problems), {
      ...{ lab, call, outside },
      ...args,
    })
    if (!verified.ok) return verified
    const notReduced = await withoutResult(lab, records.value, results.value)
    if (!notReduced.ok) return notReduced
    return done({
      ...{ where: lab.where, program: outside.program },
      ...{ records: raws, setups, results: checked.value.results },
      ...verified.value,
      notReduced: notReduced.value,
      findings: [
        ...problems.map((problem) => damage(problem, records.value, results.value)),
        ...verified.value.findings,
      ],
    })
  })

async function withoutResult(
  lab: Lab,
  records: readonly KeptRecord[],
  results: readonly KeptResult[],
): Promise<Outcome<KeptRecord[]>> {
  const ofRecord = Map.groupBy(results, ({ origin }) => origin.raw)
  const without: KeptRecord[] = []
  for (const record of records) {
    const result = await countingResult(lab, record, ofRecord.get(record.id) ?? [])
    if (!result.ok) return result
    if (result.value === undefined) without.push(record)
  }
  return done(without)
}

async function resultsOf(lab: Lab, records: readonly string[] | undefined): Promise<Outcome<readonly KeptResult[]>> {
  if (records === undefined) return lab.results.list()
  const all: KeptResult[] = []
  for (const record of records) {
    const some = await lab.results.list({ record })
    if (!some.ok) return some
    all.push(...some.value)
  }
  return done(all)
}

/** What can be computed again: of whatever is damaged, enough is said already. */
function soundRecipes(
  records: readonly KeptRecord[],
  results: readonly KeptResult[],
  problems: readonly Problem[],
): Recipe[] {
  const damaged = new Set(problems.map(({ place }) => place.cell))
  const sound = results.filter(({ id }) => !damaged.has(id))
  return recipesOf(records, sound).filter(({ record, setup }) => !damaged.has(record.id) && !damaged.has(setup))
}

/** Names the records that hang on it where the store knew but a checksum: their own bytes, their setup or their result. */
function damage(problem: Problem, records: readonly KeptRecord[], results: readonly KeptResult[]): Finding {
  const { cell } = problem.place
  const behind = new Set(
    results.filter(({ id, origin }) => id === cell || origin.setup === cell).map(({ origin }) => origin.raw),
  )
  const hanging = records.filter(({ id, setup }) => id === cell || setup === cell || behind.has(id))
  return { what: 'damaged', problem, records: cell === undefined ? [] : hanging }
}
