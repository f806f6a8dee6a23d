import { done, type MovedWindow, type Outcome } from '../../core/terms/index.ts'
import { canonicalJson, type KeptRecord, type KeptResult, type Lab } from '../../store/index.ts'
import { givenFromOrigin } from '../given.ts'
import { wantedWindows } from './mends.ts'

/**
 * The result that counts: the last one that was made with the setup of the record as it is known now, and with the windows
 * as its last paper of mends has them.
 */
export async function countingResult(
  lab: Lab,
  record: KeptRecord,
  results: readonly KeptResult[],
): Promise<Outcome<KeptResult | undefined>> {
  const fitting = results.filter(({ origin }) => origin.setup === record.setup)
  // Windows were never moved in most records: then nothing need be looked up.
  if (fitting.every((result) => windowsOf(result).length === 0)) return done(fitting.at(-1))
  const wanted = await wantedWindows(lab, record.id)
  if (!wanted.ok) return wanted
  const text = canonicalJson(wanted.value)
  return done(fitting.findLast((result) => canonicalJson(windowsOf(result)) === text))
}

/** The same, with its results looked up; undefined where the record is not reduced yet. */
export async function currentResult(lab: Lab, record: KeptRecord): Promise<Outcome<KeptResult | undefined>> {
  const results = await lab.results.list({ record: record.id })
  return results.ok ? countingResult(lab, record, results.value) : results
}

/** Windows that somebody had moved when this result was made. */
export const windowsOf = ({ origin }: Pick<KeptResult, 'origin'>): readonly MovedWindow[] =>
  givenFromOrigin(origin.options).windows ?? []
