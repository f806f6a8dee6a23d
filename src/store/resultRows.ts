import type { Origin, Place, Sha256 } from '../core/terms/index.ts'
import { canonicalJson } from './canonicalJson.ts'
import { checksum } from './checksum.ts'
import { plainText } from './plainText.ts'
import type { KeptResult, NewResult, ResultFilter, ResultKind } from './results.ts'
import type { Reading, ResultRow } from './schema/tables.ts'

/** The row of a result but for the change that adds it. Throws RangeError for an origin that is none. */
export function resultRow({ kind, origin, text }: NewResult): Omit<ResultRow, 'change'> {
  const { raw, setup, seed, program } = origin
  if (!Number.isSafeInteger(seed)) throw new RangeError(`seed must be a whole number below 2⁵³, got ${seed}`)
  const options = plainText(canonicalJson(origin.options), 'options')
  return {
    id: resultId(kind, origin),
    ...{ kind, raw, setup, options, seed },
    program: plainText(program, 'program'),
    text: plainText(text, 'result'),
    sha256: checksum(text),
  }
}

/** See `KeptResult.id`. */
export const resultId = (kind: ResultKind, { raw, setup, options, program, seed }: Origin): Sha256 =>
  checksum(canonicalJson([kind, raw, setup, options, program, seed]))

/** The options that a row holds; undefined where the text is none that was kept here. */
function keptOptions(text: string): Origin['options'] | undefined {
  try {
    const options: unknown = JSON.parse(text)
    return typeof options === 'object' && options !== null && !Array.isArray(options) ? { ...options } : undefined
  } catch {
    return undefined
  }
}

/** Whether a row is the one that was kept: its text, and what it was made from, give its checksums. */
export function isAsKept({
  id,
  kind,
  options,
  text,
  sha256,
  raw,
  setup,
  program,
  seed,
}: Omit<ResultRow, 'change'>): boolean {
  const read = keptOptions(options)
  if (read === undefined || checksum(text) !== sha256) return false
  // Written by `resultRow` alone, so the kind is one.
  return resultId(kind as ResultKind, { raw, setup, program, seed, options: read }) === id
}

/** Results in the order in which they were added. */
export async function resultRows(
  on: Reading,
  wanted: ResultFilter & { readonly ids?: readonly Sha256[] },
): Promise<KeptResult[]> {
  const { ids, kind, record, after, limit } = wanted
  let query = on
    .selectFrom('results as r')
    .innerJoin('history as h', 'h.seq', 'r.change')
    .select(['r.id', 'r.kind', 'r.raw', 'r.setup', 'r.options', 'r.program', 'r.seed', 'r.sha256'])
    .select(['h.seq', 'h.at', 'h.who', 'h.why'])
    .orderBy('h.seq')
  if (ids !== undefined) query = query.where('r.id', 'in', [...ids])
  if (kind !== undefined) query = query.where('r.kind', '=', kind)
  if (record !== undefined) query = query.where('r.raw', '=', record)
  if (after !== undefined) query = query.where('h.seq', '>', after)
  if (limit !== undefined) query = query.limit(limit)
  return (await query.execute()).map(({ id, kind, sha256, seq, at, who, why, options, ...origin }) => ({
    ...{ id, sha256 },
    kind: kind as ResultKind, // written by `resultRow` alone
    // Damaged options leave a list readable; whoever asks for the text is told.
    origin: { ...origin, options: keptOptions(options) ?? {} },
    change: { number: seq, at, who, why },
  }))
}

/** Words for a result whose text, or the note of what it was made from, is not the one that was kept. */
export const resultChanged = (place: Place, id: Sha256) => ({
  place: { ...place, name: 'result', cell: id },
  what: `Result ${id} is not the one that was kept.`,
  mend: 'Restore the lab from a backup into a new place, and find out who changed it.',
})
