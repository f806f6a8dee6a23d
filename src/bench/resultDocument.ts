import { type Curve, type Origin, type Reduction, type Remark, schemaVersion } from '../core/terms/index.ts'
import type { ReducedRecord } from './reducedRecord.ts'
import type { BudgetShare } from './sharedBudget.ts'

/** A reduced record for machines. Fields: docs/json.md; schema: schema/result.schema.json. */
export interface ResultDocument {
  readonly schemaVersion: typeof schemaVersion
  readonly record: { readonly file: string } & ReducedRecord['read']
  readonly origin: Origin
  readonly window: Reduction['window']
  readonly remarks: readonly Remark[]
  readonly points: Reduction['points']
  readonly curve: Curve | null
  readonly zeroes: { readonly axialForce: Reduction['forceZero']; readonly torque: Reduction['torqueBlank'] }
  readonly budget: readonly BudgetShare[]
  readonly ripple: Reduction['ripple']
  readonly noiseCorrelation: Reduction['noiseCorrelation']
  readonly sampleInterval: Reduction['sampleInterval']
  readonly segmentation: Reduction['segmentation']
  readonly steps: Reduction['steps']
}

/** SI throughout, null for what is not known, no clock and no path in it, so that equal input gives equal bytes. */
export function resultDocument(reduced: ReducedRecord): ResultDocument {
  const { reduction, curve } = reduced
  return {
    schemaVersion,
    record: { file: reduced.file, ...reduced.read },
    origin: reduced.origin,
    window: reduction.window,
    remarks: reduced.remarks,
    points: reduction.points,
    curve,
    zeroes: { axialForce: reduction.forceZero, torque: reduction.torqueBlank },
    budget: reduced.budget,
    ripple: reduction.ripple,
    noiseCorrelation: reduction.noiseCorrelation,
    sampleInterval: reduction.sampleInterval,
    segmentation: reduction.segmentation,
    steps: reduction.steps,
  }
}

/** The document as text, one field a line, with a line end. NaN and infinities become null. */
export const resultText = (reduced: ReducedRecord): string => `${JSON.stringify(resultDocument(reduced), null, 2)}\n`
