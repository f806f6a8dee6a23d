import type { DataColumn } from './dataTable.ts'

const types = { number: 'number', integer: 'integer', text: 'string', boolean: 'boolean' } as const

/** Table Schema (Data Package Standard 2.0) of a CSV that `tableCsv` wrote. `unit` is ours; the standard has no word for it. */
export const tableSchema = <Row>(columns: readonly DataColumn<Row>[]): object => ({
  fields: columns.map(({ name, type, unit, about }) => ({
    name,
    type: types[type],
    description: about,
    ...(unit === '' ? {} : { unit }),
  })),
  missingValues: [''],
})

/** Its Table Dialect: names in the first row, units in the second. */
export const tableDialect = { header: true, headerRows: [1], commentRows: [2], delimiter: ',', lineTerminator: '\r\n' }
