export { answerAlarm, keepWatch, ruleSetNames, type WatchWords } from './keepWatch.ts'
export { drawWatch, watchText } from './watchDocument.ts'
export { type LabAlarm, type RigWatch, watchRig } from './watchRig.ts'
