import { printQuantity } from '../../core/quantity/index.ts'
import type { CheckDimension, JudgedAnswer } from '../../core/terms/index.ts'

/** What stands in the box of a check: nothing while it is open, else the reading with its sign. */
export function boxText(answer: JudgedAnswer | undefined, dimension: CheckDimension): string {
  if (answer === undefined || answer.value === null) return ''
  const sign = answer.state === 'within' ? '✓ ' : '✗ '
  if (typeof answer.value === 'boolean' || dimension === 'yes') return `${sign}${answer.value === true ? 'yes' : 'no'}`
  return `${sign}${printQuantity(answer.value, dimension, { digits: 4 })}`
}
