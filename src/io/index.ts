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
  type ColumnAnswer,
  type ColumnAnswers,
  type ColumnGuess,
  type ColumnSource,
  type DecimalMark,
  type Dialect,
  type Encoding,
  encodings,
  keepMapping,
  keptMappingNames,
  type NamedMapping,
  type PreambleEntry,
  type RawRecord,
  type ReadOptions,
  readMapping,
  readRecord,
  type Separator,
  type TableProblem,
  type TableProblemKind,
  tableProblemKinds,
} from './table/index.ts'
export {
  inventedLine,
  readVirtualRun,
  recordColumns,
  type VirtualRunFile,
  virtualRunTemplate,
} from './virtualRun/index.ts'
export { plainDialect, type TableDialect, tableBytes, writeTable } from './write/index.ts'
