import { reduceRecord } from '../../core/reduce/index.ts'
import { loopOf, sweepsRunIn } from '../../core/reduce/questions/index.ts'
import { sampleRun, simulateRecord } from '../../core/rig/index.ts'
import type { Reduction, Setup } from '../../core/terms/index.ts'
import type { CoverageMark } from '../coverRun.ts'

/** Rows of the table, in order. */
export const loopGroups = [
  'up less down at one speed',
  'up less down at all speeds at once',
  'area of the loop',
  'change from sweep to sweep, mean over the speeds',
] as const

const [one, all, area, sweeps] = loopGroups

/**
 * A run of the study of curves, up and down and a second time with other noise: there is no loop and no change, so every
 * interval has to hold nothing.
 */
export function coverLoop(seed: number, index: number): CoverageMark[] {
  const sample = sampleRun(seed, index)
  const { speeds } = sample.run.sheet
  if (speeds.kind !== 'range') return []
  const run = { ...sample.run, sheet: { ...sample.run.sheet, speeds: { ...speeds, direction: 'upAndDown' } } } as const
  const [first, second] = [sample.seed, sample.seed + 1].map((own) => {
    const { channels } = simulateRecord(run, own)
    return { channels, reduction: reduced(reduceRecord(channels, sample.setup)) }
  })
  const loop = loopOf({ ...first, setup: sample.setup as Setup })
  const runIn = sweepsRunIn(
    [
      { name: 'first', ...first },
      { name: 'second', ...second },
    ],
    0.05,
  )
  const marks: CoverageMark[] = []
  if (loop.ok) {
    const { pairs, area: found } = loop.value
    for (const { difference } of pairs) marks.push({ group: one, inside: holdsNothing(difference) })
    marks.push({ group: all, inside: pairs.every(({ together }) => holdsNothing(together)) })
    marks.push({ group: area, inside: holdsNothing(found) })
  }
  if (runIn.ok) for (const { mean } of runIn.value.changes) marks.push({ group: sweeps, inside: holdsNothing(mean) })
  return marks
}

function reduced(outcome: ReturnType<typeof reduceRecord>): Reduction {
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

const holdsNothing = ({ low, high }: { low: number | null; high: number | null }): boolean =>
  low !== null && high !== null && low <= 0 && high >= 0
