import { type Point, remarkWords } from '../../core/terms/index.ts'
import { stepsInWords } from '../signKey.ts'
import { remarkNumbers } from './remarkNumbers.ts'
import type { RecordRow, StepRow } from './remarkRows.ts'

/** The figure in words, for people who hear it. */
export function remarksInWords(
  points: readonly Point[],
  onSteps: readonly StepRow[],
  onRecord: readonly RecordRow[],
): string {
  const steps = onSteps.map(({ sign, found }) => {
    const { seen, limit } = remarkNumbers(found.map(({ remark }) => remark))
    return `${remarkWords[sign.kind].words}: ${stepsInWords(sign)}, seen ${seen}, limit ${limit}.`
  })
  const whole = onRecord.map(({ remark }) => remark.sentence)
  if (steps.length + whole.length === 0) return `No remark on ${points.length} steps.`
  return [`Remarks on ${points.length} steps.`, ...steps, ...whole].join(' ')
}
