export { type CompareAsk, compareSamples } from './compareSamples.ts'
export { type CompareOptions, compareDefaults } from './decideDefaults.ts'
export type { Replicate, ReplicateBlocks, ReplicatePoint } from './replicate.ts'
export { spokenShare, spokenShares, spokenSpan, spokenSpeed } from './speedWords.ts'
