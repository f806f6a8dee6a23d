export { answerAlarm, keepWatch } from './keepWatch.ts'
export { drawWatch, watchText } from './watchDocument.ts'
export { type RigWatch, watchRig } from './watchRig.ts'
