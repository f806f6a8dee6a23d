import type { ComparisonScale } from '../terms/index.ts'

/** What may be chosen about a comparison. */
export interface CompareOptions {
  readonly scale: ComparisonScale
  /** Largest difference without meaning: a share of friction, or friction itself where `scale` is difference. */
  readonly margin: number
  /** Whether the samples share one scatter between replicates, or each has its own. */
  readonly scatter: 'pooled' | 'separate'
  readonly draws: number
  readonly seed: number
}

/** Margin of practical difference: common practice, no source (`decidingDefaults` of a plan has the same). */
export const compareDefaults: CompareOptions = {
  scale: 'ratio',
  margin: 0.1,
  scatter: 'pooled',
  draws: 10_000,
  seed: 1,
}
