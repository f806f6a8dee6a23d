import type { StepRows } from './stepRows.ts'

/** Speed and plain friction of a step, for the slope of the curve through its neighbours. */
export interface PlainPoint {
  readonly speed: number
  readonly friction: number
}

/** Slopes steeper than this are noise or a transition that two points cannot follow. */
const steepest = 2

/**
 * d ln µ/d ln v at each step from its neighbours in the order of the record; 0 where none can be had.
 */
export function localSlopes(points: readonly (PlainPoint | undefined)[]): number[] {
  return points.map((point, i) => {
    if (point === undefined) return 0
    const near = [points[i - 1], points[i + 1]].filter((one) => one !== undefined && isApart(one, point))
    const ends = near.length === 2 ? near : near.length === 1 ? [near[0], point] : []
    const [a, b] = ends
    if (a === undefined || b === undefined || !(a.friction > 0 && b.friction > 0) || !isApart(a, b)) return 0
    const slope = Math.log(a.friction / b.friction) / Math.log(a.speed / b.speed)
    return Number.isFinite(slope) ? Math.max(-steepest, Math.min(steepest, slope)) : 0
  })
}

const isApart = (a: PlainPoint, b: PlainPoint): boolean => Math.abs(Math.log(a.speed / b.speed)) > 0.05

/**
 * Tangential force of each row as it would have been at the step's own speed: while the speed settles, friction still
 * follows the curve, and without this the rest of the way would count as bias and as correlation.
 *
 * @param slope d ln µ/d ln v of the curve there
 * @param speed that the rows are referred to, rad/s
 */
export function atOneSpeed(rows: StepRows, slope: number, speed: number): StepRows {
  if (slope === 0 || !(speed > 0)) return rows
  const tangential = rows.tangential.map((value, i) =>
    rows.speed[i] > speed / 2 && rows.speed[i] < speed * 2 ? value * (speed / rows.speed[i]) ** slope : value,
  )
  return { ...rows, tangential }
}
