import type { ColumnAnswers } from '../setup/index.ts'
import { headedColumns } from '../write/index.ts'
import type { VirtualRunFile } from './readVirtualRun.ts'

/** What a setup must say about the columns of the record: the units, where the record itself names none. */
export function recordColumns({
  run,
  dialect,
}: Pick<VirtualRunFile, 'dialect'> & { readonly run: Pick<VirtualRunFile['run'], 'columns'> }): ColumnAnswers {
  if (dialect.units !== 'none') return {}
  const columns = headedColumns(run.columns, dialect).filter(({ unit }) => unit !== '')
  return Object.fromEntries(columns.map(({ name, heading, unit }) => [heading, { channel: name, unit }]))
}
