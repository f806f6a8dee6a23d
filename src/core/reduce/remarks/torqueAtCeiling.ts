import { printQuantity } from '../../quantity/index.ts'
import type { NewtonMetre, Remark } from '../../terms/index.ts'

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
 * @param torque raw torque of a step, N·m
 * @param keptFrom first row that friction was made from
 */
export function ceilingSeen(torque: Float64Array, keptFrom: number, ceiling: NewtonMetre | undefined): CeilingSeen {
  const level = ceiling ?? clippedLevel(torque)
  let rows = 0
  let keptRows = 0
  if (level !== undefined) {
    const limit = level * (1 - 1e-6)
    for (let i = 0; i < torque.length; i++) {
      if (!(Math.abs(torque[i]) >= limit)) continue
      rows++
      if (i >= keptFrom) keptRows++
    }
  }
  return { rows, keptRows, level: level ?? Number.NaN }
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

function clippedLevel(torque: Float64Array): number | undefined {
  let largest = 0
  for (const value of torque) largest = Math.max(largest, Math.abs(value))
  if (largest === 0) return undefined
  let run = 0
  for (const value of torque) {
    run = Math.abs(value) === largest ? run + 1 : 0
    if (run >= clippedRun) return largest
  }
  return undefined
}
