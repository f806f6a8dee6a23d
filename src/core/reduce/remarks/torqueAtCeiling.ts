import { printQuantity } from '../../quantity/index.ts'
import type { NewtonMetre, Remark } from '../../terms/index.ts'
import type { StepRows } from '../estimate/stepRows.ts'
import type { SignalSource } from '../signals.ts'

/** Equal extreme readings in a row that look like a clipped signal where no ceiling was given. */
const clippedRun = 5

/** Rows of a step at the ceiling. */
export interface CeilingSeen {
  readonly rows: number
  /** Of them, rows that the friction value was made from. */
  readonly keptRows: number
  readonly level: NewtonMetre
}

/**
 * Rows whose torque stands at the ceiling of the rig, or, where nobody gave one, at one and the same extreme value at
 * least five times running.
 *
 * @param kept first row of the record that friction was made from
 */
export function ceilingSeen(
  { step, torquePeak: peak }: StepRows,
  ceiling: NewtonMetre | undefined,
  { source, kept }: { source: SignalSource; kept: number },
): CeilingSeen {
  const level = ceiling ?? (peak.run >= clippedRun ? peak.size : undefined)
  const seen = { rows: 0, keptRows: 0, level: level ?? Number.NaN }
  const limit = seen.level * (1 - 1e-6)
  if (!(peak.size >= limit)) return seen
  for (const { from, torque } of source.pages(step.from, step.to)) {
    for (let i = 0; i < torque.length; i++) {
      if (!(Math.abs(torque[i]) >= limit)) continue
      seen.rows++
      if (from + i >= kept) seen.keptRows++
    }
  }
  return seen
}

/** Torque at the ceiling, with the number of rows and whether they count. */
export function torqueAtCeiling(seen: CeilingSeen, step: number): Remark | undefined {
  if (seen.rows === 0) return undefined
  const level = printQuantity(seen.level, 'torque', { digits: 3 })
  const kept =
    seen.keptRows === 0
      ? 'all while the speed still settled; the value is made from later rows'
      : `${seen.keptRows} of them among those that the value is made from, so that it is too low`
  return {
    kind: 'torqueAtCeiling',
    seen: seen.rows,
    limit: seen.level,
    unit: 'N·m',
    step,
    sentence: `The torque stood at its ceiling of ${level} in ${seen.rows} rows, ${kept}.`,
    next: 'Lower the axial force or the track radius and measure again.',
  }
}
