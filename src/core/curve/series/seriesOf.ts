import { fisherFUpper } from '../../stats/index.ts'
import type { Bounded, Remark, Series, SeriesAxis, SeriesLaw, SeriesMember } from '../../terms/index.ts'
import { type SpeedGroup, speedGroups } from './speedGroups.ts'
import { straightLine } from './straightLine.ts'

/** Gas constant, J/(mol·K): exact since 2019 (SI Brochure, 9th edition). */
const gasConstant = 8.31446261815324

/** Records from which on a law has an interval. */
const fewestRecords = 3

/**
 * The law of friction along loads or temperatures: a of µ ∝ F^(−a), or E of ln µ = const + E/(R·T) (Arrhenius). At one speed a
 * straight line through the records; over all speeds that they have in common one through the records' means, so that what
 * a mounting does to all of its speeds is counted once.
 */
export function seriesOf(axis: SeriesAxis, members: readonly SeriesMember[]): Series {
  const usable = members.filter(({ temperature }) => axis === 'load' || temperature !== null)
  const groups = speedGroups(usable)
  const whole = groups.filter(({ found }) => found.length === usable.length)
  const overall = overallLaw(axis, whole)
  const told = {
    axis,
    members: usable,
    atSpeeds: groups.flatMap((group) => lawAt(axis, group) ?? []),
    overall: overall?.law ?? null,
    sameAtAllSpeeds: whole.length < 2 ? null : speedsAlike(axis, whole),
    intercepts: axis === 'load' ? groups.flatMap((group) => interceptAt(group) ?? []) : [],
    scatter: overall?.deviation ?? 0,
  }
  return { ...told, sentences: sentencesOf(told), remarks: remarksOf(usable, whole) }
}

/** x of a member: the law is its slope, with the sign that makes a positive where friction falls with load. */
function placeOf(axis: SeriesAxis, { axialForce, temperature }: SeriesMember, shift = 0): number {
  return axis === 'load' ? -Math.log(axialForce + shift) : 1 / (gasConstant * (temperature ?? Number.NaN))
}

/** ln µ as it would be if the zero of the axial force were wrong by `shift`. */
const lnFriction = (friction: number, { axialForce }: SeriesMember, shift = 0): number =>
  Math.log(friction * (axialForce / (axialForce + shift)))

function lawAt(axis: SeriesAxis, { slidingSpeed, found }: SpeedGroup): SeriesLaw | undefined {
  const fitWith = (shift: number) =>
    straightLine(
      found.map(({ member }) => placeOf(axis, member, shift)),
      found.map(({ member, point }) => lnFriction(point.friction, member, shift)),
    )
  const line = fitWith(0)
  if (line === undefined) return undefined
  const shared = axis === 'load' ? sharedOf(found, (shift) => fitWith(shift)?.slope.value, line.slope.value) : 0
  return { slidingSpeed, records: found.length, ...line.slope, shared }
}

/** By how much the law moves when all axial forces are wrong by one standard uncertainty of their zero. */
function sharedOf(found: SpeedGroup['found'], slopeWith: (shift: number) => number | undefined, slope: number): number {
  const zero = Math.max(...found.map(({ member }) => member.forceZero))
  return zero > 0 ? Math.abs((slopeWith(zero) ?? slope) - slope) : 0
}

function overallLaw(axis: SeriesAxis, whole: readonly SpeedGroup[]): { law: SeriesLaw; deviation: number } | undefined {
  const [first] = whole
  if (first === undefined) return undefined
  const members = first.found.map(({ member }) => member)
  const fitWith = (shift: number) =>
    straightLine(
      members.map((member) => placeOf(axis, member, shift)),
      members.map((member) => meanOf(whole, member, shift)),
    )
  const line = fitWith(0)
  if (line === undefined) return undefined
  const shared = axis === 'load' ? sharedOf(first.found, (shift) => fitWith(shift)?.slope.value, line.slope.value) : 0
  return {
    law: { slidingSpeed: null, records: members.length, ...line.slope, shared },
    deviation: line.deviation,
  }
}

function meanOf(groups: readonly SpeedGroup[], member: SeriesMember, shift: number): number {
  const values = groups.map(({ found }) => found.find((one) => one.member === member)?.point.friction ?? Number.NaN)
  return values.reduce((sum, friction) => sum + lnFriction(friction, member, shift), 0) / values.length
}

/** F test of one slope for all speeds against one for each, records taken as blocks. */
function speedsAlike(axis: SeriesAxis, whole: readonly SpeedGroup[]): number | null {
  const members = whole[0].found.map(({ member }) => member)
  const [n, speeds] = [members.length, whole.length]
  if (n < fewestRecords) return null
  const x = members.map((member) => placeOf(axis, member))
  const means = members.map((member) => meanOf(whole, member, 0))
  const lines = whole.flatMap(
    ({ found }) =>
      straightLine(
        x,
        members.map((member, i) => {
          const point = found.find((one) => one.member === member)?.point
          return Math.log(point?.friction ?? Number.NaN) - means[i]
        }),
      ) ?? [],
  )
  if (lines.length < speeds) return null
  const between = lines.reduce((sum, { slope, sxx }) => sum + slope.value ** 2 * sxx, 0) / (speeds - 1)
  const within = lines.reduce((sum, { residualSquares }) => sum + residualSquares, 0) / ((n - 2) * (speeds - 1))
  if (!(within > 0)) return null
  return fisherFUpper(between / within, [speeds - 1, (n - 2) * (speeds - 1)])
}

/**
 * Friction force against load, F_f = slope·F + intercept: an intercept is adhesion, or a zero of the axial force that is wrong.
 * Records scatter by a share of their friction, so the line is put through µ against 1/F, where all weigh alike.
 */
function interceptAt({ slidingSpeed, found }: SpeedGroup): Series['intercepts'][number] | undefined {
  const line = straightLine(
    found.map(({ member }) => 1 / member.axialForce),
    found.map(({ point }) => point.friction),
  )
  return line && { slidingSpeed, slope: line.intercept, intercept: line.slope }
}

function sentencesOf({
  axis,
  overall,
  sameAtAllSpeeds,
}: Pick<Series, 'axis' | 'overall' | 'sameAtAllSpeeds'>): string[] {
  if (overall === null) return ['The records have no speed in common, so there is no law over all of them.']
  const sentences = axis === 'load' ? loadSentences(overall) : temperatureSentences(overall)
  if (sameAtAllSpeeds !== null && sameAtAllSpeeds < 0.05) {
    sentences.push(
      `The law changes with the speed (p = ${short(sameAtAllSpeeds)}): take it speed by speed, the one value hides that.`,
    )
  }
  return sentences
}

const short = (value: number): string => (value < 0.001 ? 'under 0.001' : String(Number(value.toPrecision(2))))
const signed = (value: number): string => String(Number(value.toPrecision(4))).replace('-', '−')

const span = ({ low, high }: Bounded, print: (value: number) => string): string =>
  low === null || high === null ? 'no interval from two records' : `95 % from ${print(low)} to ${print(high)}`

/** Exponents that theories name. */
const namedExponents = [
  { value: 0, name: 'friction that does not depend on load (Amontons)' },
  { value: 1 / 3, name: 'a smooth elastic sphere with constant interfacial shear stress' },
] as const

function loadSentences(law: SeriesLaw): string[] {
  const first = `Friction goes with load as F^(−a) with a = ${signed(law.value)} (${span(law, signed)}; ${law.records} records).`
  const { low, high } = law
  if (low === null || high === null) return [first]
  return [
    first,
    ...namedExponents.map(
      ({ value, name }) =>
        `a = ${signed(value)}, ${name}, ${low <= value && value <= high ? 'agrees with that' : 'does not agree with that'}.`,
    ),
  ]
}

function temperatureSentences(law: SeriesLaw): string[] {
  const kilo = (value: number): string => `${signed(value / 1000)} kJ/mol`
  const way = law.value > 0 ? 'falls' : 'rises'
  const first = `Friction ${way} with temperature as exp(E/RT) with E = ${kilo(law.value)} (${span(law, kilo)}; ${law.records} records).`
  const { low, high } = law
  if (low === null || high === null) return [first]
  return low <= 0 && high >= 0 ? [first, 'Whether temperature matters cannot be told from these records.'] : [first]
}

function remarksOf(members: readonly SeriesMember[], whole: readonly SpeedGroup[]): Remark[] {
  const enough = members.length >= fewestRecords && whole.length > 0
  if (enough) return []
  return [
    {
      kind: 'notEnoughPoints',
      seen: members.length,
      limit: fewestRecords,
      unit: '',
      sentence:
        whole.length === 0
          ? 'The records have no speed in common.'
          : `A law with an interval needs ${fewestRecords} records; there are ${members.length}.`,
      next: 'Measure the same speeds at more loads or temperatures.',
    },
  ]
}
