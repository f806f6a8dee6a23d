export { keepsPromise, type LimitRate, type VerdictRates, verdictRates, type WatchRate } from './verdictRates.ts'
