import { type Dimension, fromSi, readableUnit, unitNamed } from '../../core/quantity/index.ts'

/** Value and range as numbers in the unit that is shown, in plain decimals as screen readers take them. */
interface SpokenRange {
  readonly 'aria-valuenow': number
  readonly 'aria-valuemin': number
  readonly 'aria-valuemax': number | undefined
}

interface Ranged {
  readonly value: number
  readonly least: number
  readonly most: number
  readonly dimension: Dimension
  readonly unit?: string
}

/** Finer than a millionth of the shown unit no range is spoken. */
const decimals = 6

export function spokenRange({ value, least, most, dimension, unit }: Ranged): SpokenRange {
  const shown = unit === undefined ? readableUnit(value, dimension) : unitNamed(unit, dimension)
  const plain = (one: number): number => {
    const rounded = Number(fromSi(one, shown).toFixed(decimals))
    return Math.abs(rounded) < 1e-6 ? 0 : rounded
  }
  return {
    'aria-valuenow': plain(value),
    'aria-valuemin': plain(least),
    'aria-valuemax': Number.isFinite(most) ? plain(most) : undefined,
  }
}
