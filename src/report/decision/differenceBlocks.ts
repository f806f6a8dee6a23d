import { fromSi, printQuantity, readableUnit } from '../../core/quantity/index.ts'
import type { Comparison, SampleDifference } from '../../core/terms/index.ts'
import type { ReportBlock } from '../reportContent.ts'
import type { Numbering } from '../sections/numbering.ts'
import { decimals } from '../words/printed.ts'
import type { DecisionInput } from './decisionInput.ts'

/** Each pair with its picture, and the numbers behind it at every third speed. */
export const differenceBlocks = ({ comparison, figures }: DecisionInput, numbers: Numbering): ReportBlock[] => {
  const drawn = figures.filter(({ name }) => name === 'difference')
  return comparison.differences.flatMap((difference, i) => [
    ...(drawn[i] === undefined ? [] : [numbers.figure(drawn[i])]),
    differenceTable(difference, comparison, numbers),
  ])
}

/** An effect in per cent or in friction. */
export const effectText = (value: number, { scale }: Pick<Comparison, 'scale'>): string =>
  scale === 'ratio' ? decimals(100 * value, 1) : decimals(value, 4)

function differenceTable(difference: SampleDifference, comparison: Comparison, numbers: Numbering): ReportBlock {
  const { speeds, scale } = comparison
  const unit = readableUnit(Math.sqrt(speeds[0] * speeds[speeds.length - 1]), 'velocity')
  const places = speeds.map((_, i) => i).filter((i) => i % 3 === 0 || i === speeds.length - 1)
  const size = scale === 'ratio' ? '%' : ''
  const column = (head: string, at: string) => ({ head, unit: at, align: 'point' }) as const
  const { cancelled, notCancelled, factor, degreesOfFreedom, p } = difference
  const shared =
    notCancelled.length > 0
      ? 'Rig or fixture differ, so what either shares does not cancel: it is in the band.'
      : cancelled.length > 0
        ? 'What rig and fixture share cancels.'
        : ''
  return numbers.table({
    caption: `${difference.second} against ${difference.first}${scale === 'ratio' ? ', as a share of friction' : ', friction less friction'}.`,
    columns: [
      column('sliding speed', unit.text),
      column('difference', size),
      column('band from', size),
      column('to', size),
      column('alone from', size),
      column('to', size),
    ],
    rows: places.map((i) => [
      String(Number(fromSi(speeds[i], unit).toPrecision(4))),
      ...[difference.value, difference.low, difference.high, difference.lowAlone, difference.highAlone].map((values) =>
        effectText(values[i], comparison),
      ),
    ]),
    notes: [
      `Band: 95 %, at all speeds${comparison.differences.length > 1 ? ' and for all pairs' : ''} at once, ${factor.toFixed(2)} standard errors with ${Number(degreesOfFreedom.toFixed(1))} degrees of freedom. Alone: 95 % for one speed that was chosen beforehand.`,
      `The chance of so large a difference somewhere, where there is none, is ${p < 0.001 ? 'under 0.001' : p.toFixed(3)}.`,
      shared,
    ].filter((note) => note !== ''),
  })
}

/** Effects at speeds that were named, with Holm's allowance. */
export function speedBlocks({ comparison }: DecisionInput, numbers: Numbering): ReportBlock[] {
  const rows = comparison.differences.flatMap(({ first, second, named }) =>
    named.map((effect) => ({ pair: `${second} against ${first}`, ...effect })),
  )
  if (rows.length === 0) return []
  const size = comparison.scale === 'ratio' ? '%' : ''
  const chance = (p: number): string => (p < 0.001 ? '< 0.001' : p.toFixed(3))
  return [
    numbers.table({
      caption: 'Effects at single speeds, each by a t test of its own.',
      columns: [
        { head: 'pair', unit: '', align: 'left' },
        { head: 'speed', unit: '', align: 'right' },
        { head: 'difference', unit: size, align: 'point' },
        { head: '95 % from', unit: size, align: 'point' },
        { head: 'to', unit: size, align: 'point' },
        { head: 'p', unit: '', align: 'right' },
        { head: 'p by Holm', unit: '', align: 'right' },
      ],
      rows: rows.map(({ pair, slidingSpeed, value, low, high, p, adjusted }) => [
        pair,
        printQuantity(slidingSpeed, 'velocity', { digits: 3 }),
        ...[value, low, high].map((one) => effectText(one, comparison)),
        chance(p),
        chance(adjusted),
      ]),
      notes: ['Holm: p adjusted for all that were asked here.'],
    }),
  ]
}
