import type { Comparison, ReplicateCurve, SampleCurve } from '../../core/terms/index.ts'
import type { ReportBlock } from '../reportContent.ts'
import type { Numbering } from '../sections/numbering.ts'
import type { DecisionInput } from './decisionInput.ts'
import { effectText } from './differenceBlocks.ts'

/** How far replicates scatter, each sample and all together. */
export function scatterBlocks({ comparison }: DecisionInput, numbers: Numbering): ReportBlock[] {
  const { samples, repeatability, scatter } = comparison
  const rows = [
    ...samples.map(({ sample, used, repeatability: own }) => ({ sample, used: String(used), own })),
    ...(samples.length < 2 ? [] : [{ sample: 'together', used: '', own: repeatability }]),
  ]
  const percent = (share: number): string => (100 * share).toFixed(1)
  const column = (head: string, unit: string) => ({ head, unit, align: 'right' }) as const
  return [
    numbers.table({
      caption:
        'Repeatability: standard deviation between true replicates as a share of friction, pooled over the speeds.',
      columns: [
        { head: 'sample', unit: '', align: 'left' },
        column('replicates', ''),
        column('s_r', '%'),
        column('95 % from', '%'),
        column('to', '%'),
        column('least', '%'),
        column('most', '%'),
        column('limit r', '%'),
      ],
      rows: rows.map(({ sample, used, own }) => [
        sample,
        used,
        ...(own === null
          ? ['–', '–', '–', '–', '–', '–']
          : [own.pooled, own.low, own.high, Math.min(...own.profile), Math.max(...own.profile), own.limit].map(
              percent,
            )),
      ]),
      notes: [
        'Least and most along the speeds. Two results of one lab that differ by less than r = 2.8 s_r are not different (ISO 5725-6).',
        ...(scatter?.sentence == null ? [] : [scatter.sentence]),
      ],
    }),
  ]
}

/** Every replicate with what stands out, and who took it out and why. */
export function replicateBlocks({ comparison, figures }: DecisionInput, numbers: Numbering): ReportBlock[] {
  const rows = comparison.samples.flatMap((sample) => sample.replicates.map((one) => rowOf(one, sample, comparison)))
  return [
    ...figures.filter(({ name }) => name === 'replicates').map((figure) => numbers.figure(figure)),
    numbers.table({
      caption: 'Replicates: mean deviation from the mean of the sample, and the largest of Mandel’s h over the speeds.',
      columns: [
        { head: 'sample', unit: '', align: 'left' },
        { head: 'record', unit: '', align: 'left' },
        { head: 'off the mean', unit: comparison.scale === 'ratio' ? '%' : '', align: 'point' },
        { head: 'h', unit: '', align: 'point' },
        { head: 'what stands out', unit: '', align: 'left' },
      ],
      rows,
      notes: ['What stands out stays in until a person takes it out, with a reason.'],
    }),
  ]
}

function rowOf(one: ReplicateCurve, { sample, mean }: SampleCurve, comparison: Comparison): string[] {
  const off = one.friction
    .map((value, i) => (comparison.scale === 'ratio' ? value / mean[i] - 1 : value - mean[i]))
    .filter(Number.isFinite)
  const level = off.reduce((sum, value) => sum + value, 0) / off.length
  const most = one.h.length === 0 ? '–' : Math.max(...one.h.map(Math.abs)).toFixed(2)
  const words =
    one.removed === null
      ? one.flags.map(({ sentence }) => sentence).join(' ')
      : `Taken out by ${one.removed.by}: ${one.removed.why}`
  return [sample, one.name, effectText(level, comparison), most, words]
}
