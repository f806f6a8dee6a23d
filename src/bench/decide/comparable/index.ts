export { type ComparableWords, comparableText, type HeldSystems, holdSystems } from './holdSystems.ts'
