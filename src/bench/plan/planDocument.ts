import { planLimits } from '../../core/plan/index.ts'
import { schemaVersion } from '../../core/terms/index.ts'
import type { HeldRecord } from './heldRecord.ts'
import type { PlannedFile } from './planFile.ts'
import { planPicture } from './planPicture.ts'
import type { FilledSheet } from './planSheet.ts'

/** What goes with a plan where it was asked for. */
interface BesidePlan {
  readonly sheet: FilledSheet
  readonly record: HeldRecord | null
}

/** Cells of the window in the document. */
const cells = { columns: 60, rows: 40 } as const

/**
 * A plan for machines: SI throughout, no clock and no folder in it. `window.broken` holds a row of masks for each load; bit i of a
 * mask stands for `window.limits[i]`, 0 for a cell that can be measured.
 */
function planDocument({ file, sha256, plan, taken }: PlannedFile, { sheet, record }: BesidePlan): object {
  const window = planPicture(plan, cells)
  const columns = window.speeds.length
  const row = (values: ArrayLike<number>, j: number): number[] =>
    Array.from({ length: columns }, (_, i) => values[j * columns + i])
  const rows = (values: ArrayLike<number>): number[][] => Array.from(window.forces, (_, j) => row(values, j))
  return {
    schemaVersion,
    file,
    sha256,
    taken,
    plan,
    runSheet: sheet.sheet,
    answers: sheet.answers,
    record,
    window: {
      speeds: [...window.speeds],
      forces: [...window.forces],
      limits: planLimits,
      broken: rows(window.broken),
      friction: rows(window.friction),
      uncertainty: rows(window.uncertainty),
      lambda: window.lambda === null ? null : rows(window.lambda),
    },
  }
}

/** The document as text with a line end. */
export const planText = (planned: PlannedFile, beside: BesidePlan): string =>
  `${JSON.stringify(planDocument(planned, beside))}\n`
