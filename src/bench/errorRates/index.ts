export { type ErrorRateStudy, errorRateStudy, isKept, type RateRow, rateTables } from './errorRateStudy.ts'
