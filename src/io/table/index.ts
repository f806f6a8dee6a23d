export { answersFromText, type ColumnAnswer, type ColumnAnswers } from './answers.ts'
export { type Encoding, encodings } from './encoding.ts'
export { keepMapping, keptMappingNames, readMapping } from './keptMapping.ts'
export { type TableProblem, type TableProblemKind, tableProblemKinds } from './problems.ts'
export type {
  ColumnGuess,
  ColumnSource,
  DecimalMark,
  Dialect,
  PreambleEntry,
  RawRecord,
  Separator,
} from './rawRecord.ts'
export type { NamedMapping, ReadOptions } from './readOptions.ts'
export { readRecord } from './readRecord.ts'
