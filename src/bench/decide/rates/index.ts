export { keepsPromise, type VerdictRates, verdictRates } from './verdictRates.ts'
