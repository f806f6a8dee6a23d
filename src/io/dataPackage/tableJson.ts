import { cellOf, type DataColumn } from './dataTable.ts'

/** A table as JSON with its units: `{"units": {…}, "rows": [{…}]}`, one row a line. */
export function tableJson<Row>(columns: readonly DataColumn<Row>[], rows: readonly Row[]): string {
  const units = Object.fromEntries(columns.flatMap(({ name, unit }) => (unit === '' ? [] : [[name, unit]])))
  const lines = rows.map((row) => JSON.stringify(Object.fromEntries(columns.map((c) => [c.name, cellOf(c, row)]))))
  return `{"units":${JSON.stringify(units)},"rows":[\n${lines.join(',\n')}\n]}\n`
}
