import type { Reduction } from '../../core/terms/index.ts'
import { grouped, measured, printed } from '../words/printed.ts'
import type { SectionOf } from './sectionOf.ts'

/** What was taken off, value by value, with standard uncertainties. */
export const zeroesSection: SectionOf = ({ reduction }, numbers) => ({
  heading: 'Zeroes and blanks',
  blocks: [
    numbers.table({
      caption: 'What was taken off before any division, with standard uncertainties.',
      columns: [
        { head: 'correction', unit: '', align: 'left' },
        { head: 'value', unit: '', align: 'left' },
        { head: 'from', unit: '', align: 'left' },
      ],
      rows: [...forceRows(reduction), ...torqueRows(reduction)],
      notes: [],
    }),
  ],
})

const stretches = {
  blank: 'without contact on one side of the sliding',
  blankBeforeAndAfter: 'without contact before and after the sliding',
} as const

function forceRows({ forceZero: zero }: Reduction): string[][] {
  if (zero.from === 'none') return [['zero of the axial force', 'nothing taken off', 'no stretch without contact']]
  const from = `${grouped(zero.rows)} rows ${stretches[zero.from]}`
  const drift =
    zero.slope === 0
      ? `none clear; ± ${printed(60 * zero.slopeUncertainty, 'force', 2)} a minute`
      : `${measured(60 * zero.slope, 60 * zero.slopeUncertainty, 'force')} a minute`
  return [
    ['zero of the axial force', measured(zero.level, zero.levelUncertainty, 'force'), from],
    ['its drift', drift, `the same, about ${printed(zero.at, 'time')} into the record`],
  ]
}

function torqueRows({ torqueBlank: blank }: Reduction): string[][] {
  if (blank.from === 'none') return [['torque without contact', 'nothing taken off', 'no stretch without contact']]
  const [level, , slope] = blank.covariance.map((variance) => Math.sqrt(Math.max(0, variance)))
  const from = `${grouped(blank.rows)} rows without contact`
  const rows = [['torque without contact', measured(blank.level, level, 'torque'), from]]
  if (blank.perSpeed !== 0) {
    rows.push(['its growth with speed', `${measured(blank.perSpeed, slope, 'torque')} for every rad/s`, 'the same'])
  }
  for (const { order, cosine, sine } of blank.turn) {
    rows.push([`what repeats ${order}× a turn`, `amplitude ${printed(Math.hypot(cosine, sine), 'torque')}`, 'the same'])
  }
  return rows
}
