// What a reduction needs and nothing more: every module that a verb loads takes time and memory.
export { fitRecord } from '../fitRecord.ts'
export type { ReducedRecord } from '../reducedRecord.ts'
export { reduceFile } from '../reduceFile.ts'
export { resultText } from '../resultDocument.ts'
