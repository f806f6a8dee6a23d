import { fitCurve } from '../core/curve/index.ts'
import { reduceRecord } from '../core/reduce/index.ts'
import { sampleRun, simulateRecord } from '../core/rig/index.ts'
import type { Reduction } from '../core/terms/index.ts'
import { meansFactor, type TrueFeatures, trueFeatures } from './coverageTruth.ts'
import { curvePoints } from './curvePoints.ts'

/** One interval held against the truth. `group` sorts it, `inside` is null where the program left it open or gave none. */
export interface CoverageMark {
  readonly group: string
  readonly inside: boolean | null
}

/** Simulates, reduces and fits one drawn run, and tells for each interval whether it holds the truth. */
export function coverRun(seed: number, index: number): CoverageMark[] {
  const sample = sampleRun(seed, index)
  const { channels } = simulateRecord(sample.run, sample.seed)
  const reduction = reduceRecord(channels, sample.setup)
  if (!reduction.ok) throw new Error(reduction.problems.map((problem) => problem.what).join(' '))
  const factor = meansFactor(sample.run.disturbances)
  const truthAt = (speed: number) => sample.run.friction.at(speed) * factor
  const marks = pointMarks(reduction.value, truthAt)
  const points = curvePoints(reduction.value.points)
  const curve = fitCurve(points, { draws: 1000, seed: index })
  for (const { slidingSpeed, low, high } of curve.band) {
    marks.push({ group: 'fitted curve', inside: isInside(truthAt(slidingSpeed), low, high) })
  }
  const speeds = points.map((point) => point.slidingSpeed)
  const range = { slowest: Math.min(...speeds), fastest: Math.max(...speeds) }
  const truth: TrueFeatures = trueFeatures(sample, range, factor)
  for (const { name, value, low, high } of curve.features) {
    const is = truth[name]
    if (is === undefined) continue
    const closed = value !== null && low !== null && high !== null
    marks.push({ group: featureGroups[name], inside: closed ? isInside(is, low, high) : null })
  }
  return marks
}

const featureGroups = {
  boundaryLevel: 'boundary level',
  minimumSpeed: 'speed of the minimum',
  minimumFriction: 'friction at the minimum',
  filmSlope: 'slope of the film branch',
  mixedBegins: 'speed where mixed friction begins',
  filmBegins: 'speed where film friction begins',
} as const

function pointMarks({ points }: Reduction, truthAt: (speed: number) => number): CoverageMark[] {
  return points.flatMap((point): CoverageMark[] => {
    if (point.friction === null) return [{ group: 'points', inside: null }]
    const inside = isInside(truthAt(point.slidingSpeed), point.low, point.high)
    const part = point.turns >= 1 ? 'points of a whole turn or more' : 'points of less than a turn'
    return [
      { group: 'points', inside },
      { group: part, inside },
    ]
  })
}

const isInside = (truth: number, low: number | null, high: number | null): boolean =>
  low !== null && high !== null && low <= truth && truth <= high
