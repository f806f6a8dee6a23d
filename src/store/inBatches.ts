/** Rows of one statement: a statement may have 32,766 parameters in SQLite and 65,535 in PostgreSQL. */
const batchRows = 400

/** Hands rows on in batches that one statement can take. */
export async function inBatches<T>(rows: readonly T[], act: (batch: T[]) => Promise<unknown>): Promise<void> {
  for (let from = 0; from < rows.length; from += batchRows) await act(rows.slice(from, from + batchRows))
}
