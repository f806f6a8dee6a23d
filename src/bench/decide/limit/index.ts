export { type JudgedLimits, judgeLimits, type LimitArgs } from './judgeLimits.ts'
export { drawLimit, limitText } from './limitDocument.ts'
export { type LimitWords, limitInWords, ruleInWords } from './limitWords.ts'
