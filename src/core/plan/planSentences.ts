import { printQuantity } from '../quantity/index.ts'
import { type PlanLimit, planLimitWords } from './planLimit.ts'
import type { Suggestion } from './suggestion.ts'
import { type StepDwell, sweepTime, turnTime } from './turnBudget.ts'
import type { PlanBasis } from './windowAxes.ts'

const speed = (value: number): string => printQuantity(value, 'velocity', { digits: 2 })
const force = (value: number): string => printQuantity(value, 'force', { digits: 2 })

/** A time as people say it: 40 s, 7.6 min, 1.3 h. */
export function spokenTime(seconds: number): string {
  if (!(seconds >= 0 && seconds < Number.POSITIVE_INFINITY))
    throw new RangeError(`time must be finite, got ${seconds} s`)
  const two = (value: number): number => Number(value.toPrecision(2))
  if (seconds < 90) return `${two(seconds)} s`
  if (seconds < 3600) return `${two(seconds / 60)} min`
  const hours = seconds / 3600
  return `${hours < 10 ? two(hours) : Number(hours.toFixed(1))} h`
}

const listed = (limits: readonly PlanLimit[]): string => limits.map((limit) => planLimitWords[limit].words).join('; ')

/** From which speed up may the curve be believed: hard question 2 before the test. */
export function believableWords(suggestion: Suggestion): string {
  const { possible, slowest, fastest, belowSlowest, aboveFastest, axialForce, forceSpan } = suggestion
  if (!possible) {
    const met = [...new Set([...belowSlowest, ...aboveFastest])]
    if (forceSpan !== null) {
      const { low, high } = forceSpan
      return `No speed of the question can be measured at ${force(axialForce)}: ${listed(met)}. Loads from ${force(low)} to ${force(high)} see some.`
    }
    return `No speed of the question can be measured at any load that comes into question: ${listed(met)}.`
  }
  const end = (limits: readonly PlanLimit[]): string =>
    limits.length === 0 ? 'the end of the question' : listed(limits)
  return (
    `At ${force(axialForce)} expect to believe the curve from ${speed(slowest)} (limited by: ${end(belowSlowest)}) ` +
    `to ${speed(fastest)} (limited by: ${end(aboveFastest)}).`
  )
}

/** What the suggestion gave up for what, one sentence each. */
export function tradeWords(suggestion: Suggestion, { question, geometry }: PlanBasis): readonly string[] {
  const { ask } = question
  const { forceSpan, perDecade, coupling, bodies, axialForce } = suggestion
  const words: string[] = []
  if (forceSpan !== null) {
    const { low, high } = forceSpan
    const ends = [
      suggestion.belowSpan.length > 0 ? `less meets: ${listed(suggestion.belowSpan)}` : '',
      suggestion.aboveSpan.length > 0 ? `more meets: ${listed(suggestion.aboveSpan)}` : '',
    ].filter((text) => text !== '')
    const chosen = suggestion.forceGiven
      ? 'The question decides the load'
      : `${force(axialForce)} stays clear of both ends`
    words.push(
      `Loads from ${force(low)} to ${force(high)} see the most speeds${ends.length > 0 ? ` (${ends.join('; ')})` : ''}. ${chosen}.`,
    )
    if (suggestion.forceGiven && (axialForce < low || axialForce > high)) {
      words.push(`${force(axialForce)} lies outside these loads: some speeds are lost that another load would see.`)
    }
  }
  if (perDecade < ask.perDecade) {
    words.push(
      `${perDecade} points per decade instead of ${ask.perDecade}: with more the sweep would not fit into ${spokenTime(ask.mostTime)}.`,
    )
  }
  if (suggestion.slowest > ask.slowest * 1.02) {
    words.push(`Speeds under ${speed(suggestion.slowest)} are given up: ${listed(suggestion.belowSlowest)}.`)
  }
  if (suggestion.fastest < ask.fastest / 1.02) {
    words.push(`Speeds over ${speed(suggestion.fastest)} are given up: ${listed(suggestion.aboveFastest)}.`)
  }
  words.push(
    coupling === 'stiff'
      ? 'A stiff (steel) coupling, for this load is high; aligning the faces is then up to the mounting (common practice).'
      : 'A compliant (aluminium) coupling: it aligns the faces and shares the load evenly, and would give way under a high load (common practice).',
  )
  return [...words, ...bodyWords(bodies), ...loneWords(question.fixture, geometry.tiltingArm)]
}

function bodyWords(bodies: Suggestion['bodies']): readonly string[] {
  const [own, ...others] = bodies
  if (own === undefined) return []
  const percent = (share: number): string => printQuantity(share, 'ratio', { digits: 2, unit: '%' })
  return others.map(({ count, share, axialForce }) => {
    const seen = axialForce === null ? 'none of them' : `${percent(share)} of them at ${force(axialForce)}`
    const gain =
      count === 1
        ? 'One ball carries the whole load alone, at a higher pressure, and tilts the shaft'
        : 'Three balls share the load and do not tilt the shaft'
    return `${own.count === 1 ? 'One ball sees' : `${own.count} balls see`} ${percent(own.share)} of the speeds asked for, ${count === 1 ? 'one ball' : `${count} balls`} ${seen}. ${gain}.`
  })
}

const loneWords = (fixture: { readonly kind: string }, arm: number): readonly string[] =>
  arm > 0
    ? [
        `A lone body on a ${fixture.kind === 'pinsOnDisc' ? 'disc' : 'plate'} tilts the shaft by load times ${printQuantity(arm, 'length', { digits: 3 })}: ask the rig’s manual what it bears.`,
      ]
    : []

/** What whole turns cost, where that bites: one sentence for each decade down to the slowest speed asked for. */
export function turnBudgetWords({ question, geometry }: PlanBasis): readonly string[] {
  const { ask } = question
  const { lever } = geometry
  const whole: StepDwell = { turns: 1, least: 0, most: Number.POSITIVE_INFINITY }
  if (!(turnTime(ask.slowest, lever) > ask.leastDwell)) return []
  const decades = [1e-5, 1e-4, 1e-3, 1e-2].filter((one) => one > ask.slowest * 1.01 && one < ask.fastest)
  return [ask.slowest, ...decades]
    .filter((slowest) => turnTime(slowest, lever) > ask.leastDwell)
    .map((slowest) => {
      const seconds = sweepTime({ slowest, fastest: ask.fastest, perDecade: ask.perDecade }, lever, whole)
      return `One whole turn per point down to ${speed(slowest)} takes ${spokenTime(seconds)} at ${ask.perDecade} points per decade, one way.`
    })
}
