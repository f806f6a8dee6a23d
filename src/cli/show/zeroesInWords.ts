import { printMeasured, printQuantity } from '../../core/quantity/index.ts'
import type { Reduction } from '../../core/terms/index.ts'

/** Which zeroes and blanks were taken off, and from where. */
export function zeroesInWords({ forceZero, torqueBlank }: Reduction): string {
  return [forceSentence(forceZero), torqueSentence(torqueBlank)].join(' ')
}

function forceSentence(zero: Reduction['forceZero']): string {
  if (zero.from === 'none') return 'Axial force: no stretch without contact, nothing taken off.'
  const from = zero.from === 'blank' ? 'a stretch without contact' : 'stretches without contact before and after'
  const level = printMeasured(zero.level, zero.levelUncertainty, 'force')
  const slope =
    zero.slope === 0 ? '' : `, drifting by ${printQuantity(zero.slope * 60, 'force', { digits: 2 })} a minute`
  return `Axial force: zero ${level}${slope}, from ${from} (${zero.rows} rows), taken off.`
}

function torqueSentence(blank: Reduction['torqueBlank']): string {
  if (blank.from === 'none') return 'Torque: no blank, nothing taken off.'
  const level = printMeasured(blank.level, Math.sqrt(Math.max(0, blank.covariance[0])), 'torque')
  const turns = blank.turn.length === 0 ? '' : ' and what repeats every turn'
  return `Torque: blank ${level}${perSpeed(blank.perSpeed)}${turns}, from ${blank.rows} rows without contact, taken off.`
}

const perSpeed = (value: number): string =>
  value === 0 ? '' : `, growing by ${printQuantity(value, 'torque', { digits: 2 })} for every rad/s`
