import { ByteWriter, parquetWrite } from 'hyparquet-writer'
import { cellOf, type DataColumn } from './dataTable.ts'

const types = { number: 'DOUBLE', integer: 'INT32', text: 'STRING', boolean: 'BOOLEAN' } as const

/** A table as Parquet, null for what is not known; the note `units` names the unit of each column that has one. Equal tables give equal bytes. */
export function tableParquet<Row>(columns: readonly DataColumn<Row>[], rows: readonly Row[]): Uint8Array {
  const writer = new ByteWriter()
  parquetWrite({
    writer,
    createdBy: 'kufe',
    columnData: columns.map((column) => ({
      name: column.name,
      type: types[column.type],
      nullable: true,
      data: rows.map((row) => cellOf(column, row)),
    })),
    kvMetadata: [
      {
        key: 'units',
        value: JSON.stringify(
          Object.fromEntries(columns.flatMap(({ name, unit }) => (unit === '' ? [] : [[name, unit]]))),
        ),
      },
    ],
  })
  return new Uint8Array(writer.getBuffer())
}
