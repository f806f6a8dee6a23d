import { type Unit, unitsOf } from '../../core/quantity/index.ts'
import type { ChannelName } from '../../core/terms/index.ts'
import { type HeadingParts, headingParts } from './headingParts.ts'
import { meaningOf, type WordMatch, type WordMeaning } from './headingWords.ts'
import { channelDimensions } from './vocabulary.ts'

/** What one heading says by itself, before the columns are weighed against each other. */
export type ColumnSense =
  /** Words and unit agree. `second` is set for a clock that begins again at each step. */
  | ({
      readonly kind: 'fits'
      readonly channel: ChannelName
      readonly unit: Unit | undefined
      readonly second: boolean
    } & Said)
  | ({ readonly kind: 'unitMissing'; readonly channels: readonly ChannelName[] } & Said)
  | ({ readonly kind: 'unitUnknown' | 'unitUnfit' | 'unitUnclear'; readonly channels: readonly ChannelName[] } & Said)
  /** No word of ours, but a unit that may tell. */
  | ({ readonly kind: 'unitOnly'; readonly readings: readonly Unit[] } & Said)
  | ({ readonly kind: 'aside' } & Said)

interface Said {
  /** Unit text as it stands, "" without. */
  readonly unitText: string
  readonly reason: string
}

/** Reads a heading, with the text from the row of units below it. */
export function senseOf(heading: string, unitBelow: string): ColumnSense {
  if (heading.trim() === '' && unitBelow.trim() === '')
    return { kind: 'aside', unitText: '', reason: 'it has no heading.' }
  const ways = headingParts(heading, unitBelow).map((parts) => ({ parts, meaning: meaningOf(parts.words) }))
  // F_N is a symbol, not an F in N.
  const symbol = ways.some(({ parts, meaning }) => parts.words === heading.trim() && isSymbol(meaning))
  for (const { parts, meaning } of ways) {
    if (symbol && !parts.sure && parts.unit !== '') continue
    const sense = agree(parts, meaning)
    if (sense !== undefined) return sense
  }
  const spoken = ways.find(({ meaning }) => meaning.matches.length > 0)
  if (spoken !== undefined) return disagree(spoken.parts, spoken.meaning)
  const unit = ways.find(({ parts }) => parts.sure && unitsOf(parts.unit).length > 0)?.parts.unit
  if (unit !== undefined) {
    const readings = unitsOf(unit)
    return { kind: 'unitOnly', readings, unitText: unit, reason: 'no word in the heading names a channel.' }
  }
  return { kind: 'aside', unitText: '', reason: 'neither words nor unit name a channel.' }
}

const isSymbol = ({ matches }: WordMeaning): boolean =>
  matches.some(({ whole, found, term }) => whole && term.symbols.includes(found))

/** Words and unit that fit each other; undefined where they do not. */
function agree(parts: HeadingParts, meaning: WordMeaning): ColumnSense | undefined {
  for (const match of meaning.matches) {
    if (match.channel === 'step') {
      if (!isCount(parts.unit) || meaning.matches.some(({ channel }) => channel === 'time')) continue
      if (meaning.other !== undefined) return asideFor(parts, match, meaning.other)
      return {
        kind: 'fits',
        channel: 'step',
        unit: undefined,
        second: false,
        unitText: '',
        reason: `"${match.found}" is a word for the step, a count.`,
      }
    }
    const fitting = unitsOf(parts.unit).filter(({ dimension }) => dimension === channelDimensions[match.channel])
    if (fitting.length === 0) continue
    if (meaning.other !== undefined) return asideFor(parts, match, meaning.other)
    return agreed(parts, match, { fitting, second: match.channel === 'time' && meaning.stepClock })
  }
  return undefined
}

function agreed(
  parts: HeadingParts,
  match: WordMatch,
  known: { readonly fitting: readonly Unit[]; readonly second: boolean },
): ColumnSense {
  const { fitting, second } = known
  const sure = fitting.length === 1 || match.term.perSecond === undefined
  if (!sure && match.term.perSecond === 'ask') {
    return {
      kind: 'unitUnclear',
      channels: [match.channel],
      unitText: parts.unit,
      reason: `${parts.unit} may mean radians or turns per second.`,
    }
  }
  const turns = fitting.reduce((a, b) => (b.factor > a.factor ? b : a))
  const unit = sure || match.term.perSecond === 'radians' ? fitting[0] : turns
  const read = unit.text === parts.unit ? '' : ` read as ${unit.text}`
  const sense = `"${match.found}" ${match.whole ? 'is a word for' : 'names'} ${plainNames[match.channel]} and "${parts.unit}"${read} is a unit of it`
  return {
    kind: 'fits',
    channel: match.channel,
    unit,
    second,
    unitText: parts.unit,
    reason: second ? `${sense}; the clock of one step.` : `${sense}.`,
  }
}

function disagree(parts: HeadingParts, meaning: WordMeaning): ColumnSense {
  const [match] = meaning.matches
  if (meaning.other !== undefined) return asideFor(parts, match, meaning.other)
  const channels = [...new Set(meaning.matches.map(({ channel }) => channel))]
  const named = `"${match.found}" names ${channels.map((channel) => plainNames[channel]).join(' or ')}`
  const said = { channels, unitText: parts.unit }
  if (parts.unit === '') return { kind: 'unitMissing', ...said, reason: `${named}, but no unit is written.` }
  const readings = unitsOf(parts.unit)
  if (readings.length === 0)
    return { kind: 'unitUnknown', ...said, reason: `${named}, but "${parts.unit}" is no unit we know.` }
  return { kind: 'unitUnfit', ...said, reason: `${named}, but "${parts.unit}" is a unit of ${readings[0].dimension}.` }
}

const asideFor = (parts: HeadingParts, match: WordMatch, other: string): ColumnSense => ({
  kind: 'aside',
  unitText: parts.unit,
  reason: `it speaks of ${plainNames[match.channel]}, but of ${other}.`,
})

const isCount = (unit: string): boolean =>
  unit === '' || unit === '#' || unitsOf(unit).some(({ dimension }) => dimension === 'count')

/** Channels in words. */
export const plainNames: Readonly<Record<ChannelName, string>> = {
  time: 'time',
  step: 'the step',
  angularVelocity: 'angular velocity',
  slidingSpeed: 'sliding speed',
  torque: 'torque',
  frictionForce: 'friction force',
  axialForce: 'axial force',
  angle: 'angle',
  gap: 'gap',
  temperature: 'temperature',
}
