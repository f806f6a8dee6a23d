import type { Remark } from '../../terms/index.ts'

/** Too few rows left to say anything. */
export function tooFewSamples(seen: { rows: number; step: number }, fewest: number): Remark | undefined {
  if (seen.rows >= fewest) return undefined
  return {
    kind: 'tooFewSamples',
    seen: seen.rows,
    limit: fewest,
    unit: '',
    step: seen.step,
    sentence: `Only ${seen.rows} rows are left of this step after the cut; ${fewest} are needed.`,
    next: 'Lengthen the step or sample faster.',
  }
}
