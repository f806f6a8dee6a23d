import { done, type Outcome } from '../../core/terms/index.ts'
import type { KeptRecord, KeptResult, Lab } from '../../store/index.ts'

/** The result that counts: the last one that was made with the setup of the record as it is known now. */
export const currentOf = (
  results: readonly KeptResult[],
  { setup }: Pick<KeptRecord, 'setup'>,
): KeptResult | undefined => results.findLast(({ origin }) => origin.setup === setup)

/** The same, looked up; undefined where the record is not reduced yet. */
export async function currentResult(lab: Lab, record: KeptRecord): Promise<Outcome<KeptResult | undefined>> {
  const results = await lab.results.list({ record: record.id })
  return results.ok ? done(currentOf(results.value, record)) : results
}
