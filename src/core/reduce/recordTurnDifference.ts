import { fixtureGeometry } from '../fixture/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { Remark, Step } from '../terms/index.ts'
import { type ReducedChannels, type TurnQuantity, turnPieces } from './recordTurnMap.ts'
import { signalSource } from './signals.ts'
import {
  type TurnDifference,
  type TurnDifferenceOptions,
  turnDifference,
  turnDifferenceDefaults,
} from './turnDifference.ts'
import { type TurnSpan, turnSpan } from './turnMap.ts'

/** What changed around the turn in a record, in words as well. */
export interface RecordTurnDifference {
  /** null where the record holds too few turns. */
  readonly difference: TurnDifference | null
  readonly quantity: TurnQuantity
  readonly sentence: string
  readonly remarks: readonly Remark[]
}

/** Late turns of a record less early ones, within the steps at one speed that turn furthest. Throws RangeError for a gap that the record has not. */
export function recordTurnDifference(
  record: ReducedChannels,
  quantity: TurnQuantity,
  options: Partial<TurnDifferenceOptions> = {},
): RecordTurnDifference {
  const source = signalSource(record.channels, record.setup, fixtureGeometry(record.setup.fixture))
  const part = { ...record, reduction: { ...record.reduction, steps: atOneSpeed(record.reduction.steps) } }
  const pieces = turnPieces(part, source, quantity)
  const span = turnSpan(pieces())
  const levelling = quantity === 'friction' ? 'scale' : 'shift'
  const usual = { columns: placesFor(part, span), levelling } as const
  const dense = samplesPerTurn(part, span) >= 2 * fewestPlaces || rowsOf(part) >= 90 * fewestPlaces
  const difference = span === undefined || !dense ? undefined : turnDifference(pieces, span, { ...usual, ...options })
  if (difference === undefined) {
    const sentence =
      'Late and early turns cannot be compared: that takes three whole turns on either side, and samples at most places of them.'
    return { difference: null, quantity, sentence, remarks: [] }
  }
  return {
    difference,
    quantity,
    sentence: sentenceOf(difference, quantity),
    remarks: remarksOf(difference, quantity),
  }
}

/** Speeds this much apart are one. */
const sameSpeed = 0.02

/** The stretch of neighbouring steps at one speed that turns furthest: in a sweep late turns are other speeds, and not another track. */
function atOneSpeed(steps: readonly Step[]): readonly Step[] {
  const groups: Step[][] = []
  for (const step of steps.filter(({ kind }) => kind === 'slide')) {
    const group = groups[groups.length - 1]
    const alike = group !== undefined && Math.abs(step.target / group[0].target - 1) < sameSpeed
    if (alike) group.push(step)
    else groups.push([step])
  }
  const path = (group: readonly Step[]): number =>
    group.reduce((sum, { target, from, to }) => sum + Math.abs(target) * (to - from), 0)
  return groups.reduce<readonly Step[]>((most, one) => (path(one) > path(most) ? one : most), [])
}

const fewestPlaces = 8

/** Mean number of rows in a turn; 0 without one. Few are made up for by many turns. */
function samplesPerTurn(part: ReducedChannels, span: TurnSpan | undefined): number {
  if (span === undefined) return 0
  return rowsOf(part) / (span.to - span.from)
}

const rowsOf = ({ reduction }: ReducedChannels): number =>
  reduction.steps.reduce((sum, { from, to }) => sum + to - from, 0)

/** As many places as there are pairs of samples in a turn, 8 to 36. */
const placesFor = (part: ReducedChannels, span: TurnSpan | undefined): number =>
  Math.min(turnDifferenceDefaults.columns, Math.max(fewestPlaces, Math.floor(samplesPerTurn(part, span) / 2)))

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
