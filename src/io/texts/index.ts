export { type NamedText, readTexts } from './readTexts.ts'
