import type { Sha256 } from '../../core/terms/index.ts'
import { canonicalJson, type KeptRecord, type KeptResult, type ResultKind } from '../../store/index.ts'
import { type Given, givenFromOrigin } from '../given.ts'

/** What people decided about a result, with all results that programs made of it. */
export interface Recipe {
  readonly record: KeptRecord
  readonly kind: ResultKind
  readonly setup: Sha256
  readonly given: Given
  /** In the order in which they were added. */
  readonly results: readonly KeptResult[]
}

/** The recipes behind the results of some records, in the order of the records. */
export function recipesOf(records: readonly KeptRecord[], results: readonly KeptResult[]): Recipe[] {
  const ofRecord = Map.groupBy(results, ({ origin }) => origin.raw)
  return records.flatMap((record) => {
    const byRecipe = Map.groupBy(ofRecord.get(record.id) ?? [], ({ kind, origin }) =>
      canonicalJson([kind, origin.setup, origin.options.given ?? null]),
    )
    return [...byRecipe.values()].map((alike): Recipe => {
      const [{ kind, origin }] = alike
      return { record, kind, setup: origin.setup, given: givenFromOrigin(origin.options), results: alike }
    })
  })
}
