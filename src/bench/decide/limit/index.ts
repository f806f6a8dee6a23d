export { type JudgedLimits, judgeLimits } from './judgeLimits.ts'
export { drawLimit, limitText } from './limitDocument.ts'
export { type LimitWords, limitInWords, ruleInWords } from './limitWords.ts'
