export type { Compared, ComparedRecord } from './compared.ts'
export { type CompareFilesArgs, compareFiles } from './compareFiles.ts'
export {
  type CompareStudyArgs,
  compareKept,
  compareStudy,
  type StudyReplicates,
  studyReplicates,
} from './compareStudy.ts'
export type { CompareWords } from './compareWords.ts'
export { comparisonText } from './comparisonDocument.ts'
export { decisionBytes } from './decisionBytes.ts'
export { type ComparisonFiles, type DecisionWords, decisionContent, writeComparison } from './writeComparison.ts'
