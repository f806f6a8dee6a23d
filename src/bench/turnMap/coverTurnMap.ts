import { recordTurnDifference, reduceRecord } from '../../core/reduce/index.ts'
import { type SampledTurnSpot, sampleTurnSpot, simulateRecord } from '../../core/rig/index.ts'
import type { CoverageMark } from '../coverRun.ts'

/** Rows of the table, in order. */
export const turnMapGroups = [
  'late less early turns, all places together',
  'late less early turns, nothing grows',
  'turn at which a spot begins',
] as const

/** One virtual step of many turns: whether the band holds all places, and the interval of the onset the turn where the spot begins. */
export function coverTurnMap(seed: number, index: number): CoverageMark[] {
  const sample = sampleTurnSpot(seed, index)
  const found = differenceOf(sample, 'run')
  const truth = differenceOf(sample, 'quiet')
  if (found === null || truth === null) return [{ group: turnMapGroups[0], inside: null }]
  // A place in whose middle no sample fell on either side is not counted.
  const inside = found.local.every((_, c) => {
    const is = truth.local[c]
    return Number.isNaN(found.low[c]) || Number.isNaN(is) || (found.low[c] <= is && is <= found.high[c])
  })
  const onset = found.spot?.onset
  return [
    { group: turnMapGroups[0], inside },
    ...(sample.spot ? [] : [{ group: turnMapGroups[1], inside: found.spot === null }]),
    ...(sample.spot && found.spot !== null
      ? [
          {
            group: turnMapGroups[2],
            inside: onset == null ? null : onset.low <= sample.onset && sample.onset <= onset.high,
          },
        ]
      : []),
  ]
}

function differenceOf(sample: SampledTurnSpot, which: 'run' | 'quiet') {
  const { channels } = simulateRecord(sample[which], sample.seed)
  const reduction = reduceRecord(channels, sample.setup)
  if (!reduction.ok) throw new Error(reduction.problems.map(({ what }) => what).join(' '))
  return recordTurnDifference({ channels, setup: sample.setup, reduction: reduction.value }, 'friction').difference
}
