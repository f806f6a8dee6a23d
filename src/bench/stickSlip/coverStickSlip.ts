import { reduceRecord } from '../../core/reduce/index.ts'
import { recordStickSlip } from '../../core/reduce/questions/index.ts'
import { sampleStickSlip, simulateRecord } from '../../core/rig/index.ts'
import type { CoverageMark } from '../coverRun.ts'

/** Rows of the table, in order. */
export const stickSlipGroups = ['frequency of stick–slip', 'amplitude of stick–slip', 'share of time sticking'] as const

/** One step of virtual stick–slip: which intervals hold what it was made with. */
export function coverStickSlip(seed: number, index: number): CoverageMark[] {
  const { run, setup, truth, seed: own } = sampleStickSlip(seed, index)
  const { channels } = simulateRecord(run, own)
  const reduction = reduceRecord(channels, setup)
  if (!reduction.ok) throw new Error(reduction.problems.map(({ what }) => what).join(' '))
  const [step] = recordStickSlip({ channels, setup, reduction: reduction.value }).steps
  const [frequency, amplitude, stickShare] = (['frequency', 'amplitude', 'stickShare'] as const).map((name) => {
    const found = step?.numbers?.[name]
    return found === undefined ? null : found.low <= truth[name] && truth[name] <= found.high
  })
  return [
    { group: stickSlipGroups[0], inside: frequency },
    { group: stickSlipGroups[1], inside: amplitude },
    { group: stickSlipGroups[2], inside: stickShare },
  ]
}
