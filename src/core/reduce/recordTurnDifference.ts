import { fixtureGeometry } from '../fixture/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { Remark } from '../terms/index.ts'
import { type ReducedChannels, type TurnQuantity, turnPieces } from './recordTurnMap.ts'
import { signalSource } from './signals.ts'
import { type TurnDifference, type TurnDifferenceOptions, turnDifference } from './turnDifference.ts'
import { turnSpan } from './turnMap.ts'

/** What changed around the turn in a record, in words as well. */
export interface RecordTurnDifference {
  /** null where the record holds too few turns. */
  readonly difference: TurnDifference | null
  readonly quantity: TurnQuantity
  readonly sentence: string
  readonly remarks: readonly Remark[]
}

/** Late turns of a record less early ones. Throws RangeError for a gap that the record has not. */
export function recordTurnDifference(
  record: ReducedChannels,
  quantity: TurnQuantity,
  options: Partial<TurnDifferenceOptions> = {},
): RecordTurnDifference {
  const source = signalSource(record.channels, record.setup, fixtureGeometry(record.setup.fixture))
  const pieces = turnPieces(record, source, quantity)
  const span = turnSpan(pieces())
  const difference =
    span === undefined
      ? undefined
      : turnDifference(pieces, span, { levelling: quantity === 'friction' ? 'scale' : 'shift', ...options })
  if (difference === undefined) {
    const sentence = 'Late and early turns cannot be compared: that takes three whole turns on either side.'
    return { difference: null, quantity, sentence, remarks: [] }
  }
  return {
    difference,
    quantity,
    sentence: sentenceOf(difference, quantity),
    remarks: remarksOf(difference, quantity),
  }
}

const degrees = (angle: number): string => `${(Math.round((angle * 180) / Math.PI) + 360) % 360}°`

/** A change in the unit of the quantity. */
export function changeInWords(change: number, quantity: TurnQuantity): string {
  switch (quantity) {
    case 'friction':
      return String(Number(change.toPrecision(2)))
    case 'frictionSwing':
      return `${printQuantity(change, 'ratio', { digits: 2 })} of friction`
    case 'axialForce':
      return printQuantity(change, 'force', { digits: 2 })
    case 'gap':
      return printQuantity(change, 'length', { digits: 2 })
  }
}

function sentenceOf({ spot, level, earlyTurns, lateTurns, high, low }: TurnDifference, quantity: TurnQuantity): string {
  const turns = `turns ${lateTurns.from} to ${lateTurns.to} less turns ${earlyTurns.from} to ${earlyTurns.to}`
  const everywhere = `everywhere ${changeInWords(level, quantity)}`
  if (spot === null) {
    const widths = high.map((value, i) => value - low[i]).filter((width) => !Number.isNaN(width))
    const band = widths.reduce((a, b) => a + b, 0) / widths.length / 2
    return `No place of the turn stands out (${turns}; ${everywhere}): a change of more than ${changeInWords(band, quantity)} at one place would have been seen.`
  }
  const onset =
    spot.onset === null
      ? ''
      : ` It begins at turn ${Math.round(spot.onset.value)} (95 % ${Math.round(spot.onset.low)} to ${Math.round(spot.onset.high)}).`
  return (
    `From ${degrees(spot.from)} to ${degrees(spot.to)} of the turn it changed by up to ${changeInWords(spot.change, quantity)} ` +
    `(± ${changeInWords(spot.band, quantity)} for all places together) beyond what changed everywhere (${turns}; ${everywhere}).${onset}`
  )
}

const units = { friction: '', frictionSwing: '', axialForce: 'N', gap: 'm' } as const

function remarksOf(difference: TurnDifference, quantity: TurnQuantity): readonly Remark[] {
  const { spot } = difference
  if (spot === null || !quantity.startsWith('friction')) return []
  return [
    {
      kind: 'wornSpot',
      seen: spot.change,
      limit: spot.band,
      unit: units[quantity],
      sentence: `Friction changed at ${degrees(spot.at)} of the turn by ${changeInWords(spot.change, quantity)} more than elsewhere: a place of the track is not what it was.`,
      next: 'Look at the track there: a coating that wears through, a scratch, debris or a puddle.',
    },
  ]
}
