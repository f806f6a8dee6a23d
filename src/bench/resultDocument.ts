import { schemaVersion } from '../core/terms/index.ts'
import type { ReducedRecord } from './reducedRecord.ts'

/**
 * A reduced record for machines: SI throughout, null for what is not known, no clock and no path in it, so that equal
 * input gives equal bytes. Fields: docs/json.md; schema: schema/result.schema.json.
 */
export function resultDocument(reduced: ReducedRecord): object {
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
