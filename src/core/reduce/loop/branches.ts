import type { Channels, Point, Reduction } from '../../terms/index.ts'

/** A trusted point with its place in time and on the path. SI. */
export interface LoopPoint {
  readonly point: Point & {
    readonly friction: number
    readonly ownUncertainty: number
    readonly degreesOfFreedom: number
  }
  /** Middle of its rows. */
  readonly time: number
  /** Distance slid until then. */
  readonly distance: number
}

/** Neighbouring points of one sweep: speeds that all rise or all fall. */
export interface Branch {
  readonly direction: 1 | -1
  readonly points: readonly LoopPoint[]
}

/** Speeds closer than this share are one. */
export const sameSpeed = 0.04

/** The sweeps of a record in their order. A speed that is held twice in a row ends one and begins the next. */
export function branchesOf(channels: Channels, reduction: Reduction): Branch[] {
  const points = placed(channels, reduction)
  const branches: { direction: 1 | -1; points: LoopPoint[] }[] = []
  let points1: LoopPoint[] = []
  let direction: 1 | -1 | 0 = 0
  const close = (): void => {
    if (points1.length > 0 && direction !== 0) branches.push({ direction, points: points1 })
    points1 = []
  }
  for (const one of points) {
    const last = points1[points1.length - 1]
    if (last === undefined) {
      points1.push(one)
      continue
    }
    const change = Math.log(one.point.slidingSpeed / last.point.slidingSpeed)
    const way: 1 | -1 | 0 = Math.abs(change) <= sameSpeed ? 0 : change > 0 ? 1 : -1
    if (way === 0 && direction !== 0) {
      const next: 1 | -1 = direction === 1 ? -1 : 1
      close()
      direction = next
    } else if (direction !== 0 && way !== direction) {
      close()
      direction = way
    } else if (direction === 0) direction = way
    points1.push(one)
  }
  close()
  return branches
}

function placed(channels: Channels, { points, steps }: Reduction): LoopPoint[] {
  let distance = 0
  const placedAt = new Map<number, { time: number; distance: number }>()
  for (const step of steps) {
    if (step.kind === 'blank' || step.to <= step.from) continue
    const point = points.find(({ step: number, rows }) => number === step.number && rows.from === step.from)
    const [begin] = channels.read('time', step.from, step.from + 1)
    const [end] = channels.read('time', step.to - 1, step.to)
    const length = (point?.slidingSpeed ?? 0) * (end - begin)
    placedAt.set(step.from, { time: (begin + end) / 2, distance: distance + length / 2 })
    distance += length
  }
  return points.flatMap((point): LoopPoint[] => {
    const at = placedAt.get(point.rows.from)
    const { friction, ownUncertainty, degreesOfFreedom } = point
    if (at === undefined || !point.trusted || friction === null || ownUncertainty === null) return []
    if (!(ownUncertainty > 0 && friction > 0)) return []
    return [{ point: { ...point, friction, ownUncertainty, degreesOfFreedom: degreesOfFreedom ?? 1e6 }, ...at }]
  })
}
