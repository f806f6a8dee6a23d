/** What a cell of an exported table holds; null is an empty one. */
export type Cell = number | string | boolean | null

/** One column of an exported table. */
export interface DataColumn<Row> {
  readonly name: string
  readonly type: 'number' | 'integer' | 'text' | 'boolean'
  /** SI; empty for ratios, counts and texts. */
  readonly unit: string
  readonly about: string
  readonly cell: (row: Row) => Cell
}

/** A cell as it stands for machines: what is not finite is not known. */
export const cellOf = <Row>(column: DataColumn<Row>, row: Row): Cell => {
  const cell = column.cell(row)
  return typeof cell === 'number' && !Number.isFinite(cell) ? null : cell
}
