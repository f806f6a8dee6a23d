export { plainDialect, type TableDialect, type TableEncoding, tableEncodings } from './tableDialect.ts'
export { tableBytes, writeTable } from './writeTable.ts'
