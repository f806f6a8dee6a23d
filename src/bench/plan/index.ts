export { planDocument, planText } from './planDocument.ts'
export { type PlannedFile, planFile } from './planFile.ts'
export { planPicture } from './planPicture.ts'
