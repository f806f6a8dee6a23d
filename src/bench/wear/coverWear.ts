import { reduceRecord } from '../../core/reduce/index.ts'
import { recordWear } from '../../core/reduce/questions/index.ts'
import { sampleWear, simulateRecord } from '../../core/rig/index.ts'
import type { Interval } from '../../core/terms/index.ts'
import type { CoverageMark } from '../coverRun.ts'

/** Rows of the table, in order. */
export const wearGroups = [
  'worn volume of one ball',
  'worn volume of three balls',
  'specific wear rate of the balls',
  'worn volume of the track',
  'depth of wear by the gap',
] as const

/** One virtual worn test: which intervals hold what it was made with. */
export function coverWear(seed: number, index: number): CoverageMark[] {
  const { run, setup, truth, seed: own } = sampleWear(seed, index)
  const { channels } = simulateRecord(run, own)
  const reduction = reduceRecord(channels, setup)
  if (!reduction.ok) throw new Error(reduction.problems.map(({ what }) => what).join(' '))
  const wear = recordWear({ channels, setup, reduction: reduction.value }, undefined)
  // Alike loads only: then a third of the whole is the truth of one ball.
  const one = truth.unlike < 1.0001 ? wear.balls?.scars[0].volume : null
  const marks: readonly (readonly [string, Interval | null | undefined, number])[] = [
    [wearGroups[1], wear.balls?.volume, truth.ballVolume],
    [wearGroups[2], wear.rates.find(({ of }) => of === 'balls')?.rate, truth.rate],
    [wearGroups[3], wear.track?.volume, truth.trackVolume],
    [wearGroups[4], wear.gap?.depth, truth.depth],
    ...(one === null ? [] : [[wearGroups[0], one, truth.ballVolume / 3] as const]),
  ]
  return marks.map(([group, found, is]) => ({
    group,
    inside: found == null ? null : found.low <= is && is <= found.high,
  }))
}
