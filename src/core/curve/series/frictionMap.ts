import type { SeriesMember } from '../../terms/index.ts'

/** Friction over speed and load, between the data and nowhere else. */
export interface FrictionMap {
  /** Middles of the columns, m/s, and of the rows, N: both even in their logarithm. */
  readonly speeds: readonly number[]
  readonly loads: readonly number[]
  /** Row by row; NaN where no data lie around. */
  readonly friction: Float64Array
  /** Where data are. */
  readonly data: readonly { readonly slidingSpeed: number; readonly load: number; readonly friction: number }[]
}

/**
 * ln µ between neighbours, straight in ln v along a record and in ln F from one record to the next. Nothing is said outside the
 * speeds of a record or beyond the first and last load. Loads are axial forces. Throws RangeError for fewer than two loads.
 */
export function frictionMap(
  members: readonly SeriesMember[],
  { columns = 60, rows = 40 }: { readonly columns?: number; readonly rows?: number } = {},
): FrictionMap {
  const sorted = [...members].sort((a, b) => a.axialForce - b.axialForce)
  if (sorted.length < 2) throw new RangeError(`a map needs two loads, got ${sorted.length}`)
  const data = sorted.flatMap(({ axialForce, points }) =>
    points.map(({ slidingSpeed, friction }) => ({ slidingSpeed, load: axialForce, friction })),
  )
  const speeds = inLog(
    data.map(({ slidingSpeed }) => slidingSpeed),
    columns,
  )
  const loads = inLog(
    sorted.map(({ axialForce }) => axialForce),
    rows,
  )
  const friction = new Float64Array(columns * rows)
  for (const [row, load] of loads.entries()) {
    const above = Math.max(
      1,
      sorted.findIndex(({ axialForce }) => axialForce >= load * (1 - 1e-12)),
    )
    const [low, high] = [sorted[above - 1], sorted[above]]
    const share = Math.log(load / low.axialForce) / Math.log(high.axialForce / low.axialForce)
    for (const [column, speed] of speeds.entries()) {
      const [a, b] = [along(low, speed), along(high, speed)]
      friction[row * columns + column] = Math.exp(share <= 0 ? a : share >= 1 ? b : a + (b - a) * share)
    }
  }
  return { speeds, loads, friction, data }
}

/** ln µ of one record at a speed; NaN outside its speeds. */
function along({ points }: SeriesMember, speed: number): number {
  const sorted = [...points].sort((a, b) => a.slidingSpeed - b.slidingSpeed)
  const last = sorted.length - 1
  const slack = 1 + 1e-9
  if (last < 0 || speed < sorted[0].slidingSpeed / slack || speed > sorted[last].slidingSpeed * slack) return Number.NaN
  const above = Math.max(
    1,
    sorted.findIndex(({ slidingSpeed }) => slidingSpeed >= speed),
  )
  const [low, high] = [sorted[above - 1], sorted[above] ?? sorted[last]]
  const width = Math.log(high.slidingSpeed / low.slidingSpeed)
  const share = width > 0 ? Math.min(1, Math.max(0, Math.log(speed / low.slidingSpeed) / width)) : 0
  return Math.log(low.friction) + share * Math.log(high.friction / low.friction)
}

function inLog(values: readonly number[], count: number): number[] {
  const [low, high] = [Math.min(...values), Math.max(...values)]
  return Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)))
}
