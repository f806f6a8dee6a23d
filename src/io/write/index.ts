export { plainDialect, type TableDialect, type TableEncoding } from './tableDialect.ts'
export { headedColumns } from './tableHeadings.ts'
export { tableBytes, writeTable } from './writeTable.ts'
