import type { ComparisonScale, Removal } from '../terms/index.ts'
import type { CompareAsk } from './compareSamples.ts'

/** What a paper of a decision holds: what was asked of the comparison, and which replicates a person took out, and why. */
export interface DecisionPaper {
  readonly margin: number | null
  readonly scale: ComparisonScale
  readonly scatter: 'pooled' | 'separate'
  /** m/s; empty for the usual ones. */
  readonly at: readonly number[]
  readonly rankAt: number | null
  readonly removals: readonly Removal[]
  /** Titles of the samples that are compared; null for those with two replicates or more. */
  readonly samples: readonly string[] | null
}

/** What nobody has said yet. */
export const plainDecision: DecisionPaper = {
  margin: null,
  scale: 'ratio',
  scatter: 'pooled',
  at: [],
  rankAt: null,
  removals: [],
  samples: null,
}

/** What a paper says; what it does not say, or says otherwise than we write it, is as if nobody had said it. */
export function decisionFrom(content: unknown): DecisionPaper {
  if (typeof content !== 'object' || content === null) return plainDecision
  const said: Partial<Record<keyof DecisionPaper, unknown>> = content
  return {
    margin: positive(said.margin),
    scale: said.scale === 'difference' ? 'difference' : 'ratio',
    scatter: said.scatter === 'separate' ? 'separate' : 'pooled',
    at: list(said.at).flatMap((speed) => positive(speed) ?? []),
    rankAt: positive(said.rankAt),
    removals: list(said.removals).filter(isRemoval),
    samples: Array.isArray(said.samples) ? said.samples.filter((name) => typeof name === 'string') : null,
  }
}

/** Margin of a difference of friction where nobody has said one: a tenth of a usual 0.2. Common practice, no source. */
export const usualDifference = 0.02

/** The same as a question to the comparison. */
export const askOf = ({ margin, scale, scatter, at, rankAt, removals }: DecisionPaper): CompareAsk => ({
  options: {
    scale,
    scatter,
    ...(margin !== null ? { margin } : scale === 'difference' ? { margin: usualDifference } : {}),
  },
  ...(at.length === 0 ? {} : { at }),
  ...(rankAt === null ? {} : { rankAt }),
  removals,
})

const positive = (value: unknown): number | null =>
  typeof value === 'number' && value > 0 && value < Number.POSITIVE_INFINITY ? value : null

const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : [])

const isRemoval = (value: unknown): value is Removal =>
  typeof value === 'object' &&
  value !== null &&
  (['record', 'by', 'why'] as const).every((name) => {
    const text: unknown = Reflect.get(value, name)
    return typeof text === 'string' && text.trim() !== ''
  })
