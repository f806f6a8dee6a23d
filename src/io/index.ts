export { answeredSheet, type QuestionFile, readAnsweredSheet, readAnswers, readQuestion } from './question/index.ts'
export {
  fixtureKindsWritten,
  readSetup,
  type SetupFile,
  setupJsonSchema,
  setupTemplate,
  writeSetup,
} from './setup/index.ts'
export {
  answersFromText,
  type ColumnAnswers,
  type Dialect,
  keepMapping,
  keptMappingNames,
  type NamedMapping,
  type RawRecord,
  type ReadOptions,
  readMapping,
  readRecord,
  type TableLook,
  tableProblemKinds,
} from './table/index.ts'
export {
  type BreakawayRunFile,
  inventedLine,
  isBreakawayRun,
  readBreakawayRun,
  readVirtualRun,
  recordColumns,
  type VirtualRunFile,
  virtualRunTemplate,
} from './virtualRun/index.ts'
export { plainDialect, type TableDialect, tableBytes, writeTable } from './write/index.ts'
