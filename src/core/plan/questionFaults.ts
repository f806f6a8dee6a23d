import { fixtureFaults, fixtureGeometry } from '../fixture/index.ts'
import { flowParameterFaults } from '../material/index.ts'
import { type Dimension, printQuantity } from '../quantity/index.ts'
import type { PlanQuestion } from './question.ts'

/** What is wrong with a question. `stops`: no plan can be made of it. `warns`: a plan can, and says what is lost. */
export interface QuestionFault {
  /** Path of the key, as question files have it. */
  readonly key: string
  readonly weight: 'stops' | 'warns'
  readonly what: string
  /** What would mend it, with the range that is valid. */
  readonly mend: string
}

/** All that is impossible or beyond the rig in a question, everything at once. NaN and infinities are faults. */
export function questionFaults(question: PlanQuestion): readonly QuestionFault[] {
  const impossible = [
    ...fixtureImpossible(question),
    ...numbersImpossible(question),
    ...ordersWrong(question),
    ...rigImpossible(question),
    ...decidingImpossible(question),
  ]
  return impossible.length > 0 ? impossible : beyondRig(question)
}

const said = (value: number, dimension: Dimension): string =>
  Number.isFinite(value) ? printQuantity(value, dimension, { digits: 3 }) : String(value)

const fixtureImpossible = ({ fixture }: PlanQuestion): QuestionFault[] =>
  fixtureFaults(fixture).map(({ key, value, limit, because }) => ({
    key: `fixture.${key}`,
    weight: 'stops',
    what: `fixture.${key} is ${value} (SI), but ${because}.`,
    mend: `The limit is ${limit} (SI): correct it or the values around it.`,
  }))

interface Demand {
  readonly key: string
  readonly value: number | undefined
  readonly dimension: Dimension
  readonly above?: number
  readonly least?: number
  readonly most?: number
}

/** Numbers that must lie in a range by themselves. */
function demandsOf({ pair, liquid, expected, ask, deciding, bears }: PlanQuestion): readonly Demand[] {
  const sides = (['upper', 'lower'] as const).flatMap((side): Demand[] => [
    { key: `pair.${side}.poissonRatio`, value: pair[side].poissonRatio, dimension: 'ratio', above: -1, most: 0.5 },
    { key: `pair.${side}.elasticModulus`, value: pair[side].elasticModulus, dimension: 'pressure', above: 0 },
    { key: `pair.${side}.roughness`, value: pair[side].roughness, dimension: 'length', least: 0 },
    { key: `pair.${side}.thickness`, value: pair[side].thickness, dimension: 'length', above: 0 },
    { key: `bears.${side}.wearRate`, value: bears[side].wearRate, dimension: 'ratio', least: 0 },
    { key: `bears.${side}.yieldStrength`, value: bears[side].yieldStrength, dimension: 'pressure', above: 0 },
    { key: `bears.${side}.flexuralStrength`, value: bears[side].flexuralStrength, dimension: 'pressure', above: 0 },
  ])
  return [
    ...sides,
    { key: 'liquid.viscosity', value: liquid?.viscosity, dimension: 'viscosity', above: 0 },
    { key: 'expected.boundary', value: expected.boundary, dimension: 'ratio', above: 0 },
    { key: 'expected.boundarySpread', value: expected.boundarySpread, dimension: 'ratio', least: 1 },
    { key: 'expected.film', value: expected.film, dimension: 'ratio', above: 0 },
    { key: 'expected.filmSpread', value: expected.filmSpread, dimension: 'ratio', least: 1 },
    { key: 'ask.axialForce', value: ask.axialForce, dimension: 'force', above: 0 },
    { key: 'ask.leastForce', value: ask.leastForce, dimension: 'force', above: 0 },
    { key: 'ask.mostForce', value: ask.mostForce, dimension: 'force', above: 0 },
    { key: 'ask.slowest', value: ask.slowest, dimension: 'velocity', above: 0 },
    { key: 'ask.fastest', value: ask.fastest, dimension: 'velocity', above: 0 },
    { key: 'ask.uncertainty', value: ask.uncertainty, dimension: 'ratio', above: 0, most: 1 },
    { key: 'ask.perDecade', value: ask.perDecade, dimension: 'ratio', above: 0, most: 1000 },
    { key: 'ask.turns', value: ask.turns, dimension: 'ratio', above: 0 },
    { key: 'ask.leastDwell', value: ask.leastDwell, dimension: 'time', above: 0 },
    { key: 'ask.mostDwell', value: ask.mostDwell, dimension: 'time', above: 0 },
    { key: 'ask.mostTime', value: ask.mostTime, dimension: 'time', above: 0 },
    { key: 'ask.mostDistance', value: ask.mostDistance, dimension: 'length', above: 0 },
    { key: 'ask.conditioningDistance', value: ask.conditioningDistance, dimension: 'length', least: 0 },
    { key: 'ask.scarShare', value: ask.scarShare, dimension: 'ratio', above: 0 },
    { key: 'ask.indentationShare', value: ask.indentationShare, dimension: 'ratio', above: 0 },
    { key: 'deciding.difference', value: deciding.difference, dimension: 'ratio', above: 0 },
    { key: 'deciding.margin', value: deciding.margin, dimension: 'ratio', above: 0 },
    { key: 'deciding.repeatability', value: deciding.repeatability, dimension: 'ratio', above: 0 },
  ]
}

function numbersImpossible(question: PlanQuestion): QuestionFault[] {
  const faults: QuestionFault[] = []
  for (const { key, value, dimension, above, least, most } of demandsOf(question)) {
    if (value === undefined) continue
    const holds =
      Number.isFinite(value) &&
      (above === undefined || value > above) &&
      (least === undefined || value >= least) &&
      (most === undefined || value <= most)
    if (holds) continue
    const ends = [
      above === undefined ? '' : `more than ${above}`,
      least === undefined ? '' : `at least ${least}`,
      most === undefined ? '' : `at most ${most}`,
    ].filter((end) => end !== '')
    const what = `${key} is ${said(value, dimension)}, which cannot be.`
    faults.push({ key, weight: 'stops', what, mend: `Give a value of ${ends.join(' and ')} (SI).` })
  }
  return faults
}

/** Pairs of which the first may not be larger. */
function ordersWrong({ ask, pair, bears }: PlanQuestion): QuestionFault[] {
  const orders: readonly (readonly [string, number, string, number, Dimension])[] = [
    ['ask.slowest', ask.slowest, 'ask.fastest', ask.fastest, 'velocity'],
    ['ask.leastForce', ask.leastForce, 'ask.mostForce', ask.mostForce, 'force'],
    ['ask.leastDwell', ask.leastDwell, 'ask.mostDwell', ask.mostDwell, 'time'],
  ]
  const wrong = orders
    .filter(([, low, , high]) => low > high)
    .map(
      ([key, low, other, high, dimension]): QuestionFault => ({
        key,
        weight: 'stops',
        what: `${key} is ${said(low, dimension)}, but ${other} is ${said(high, dimension)}.`,
        mend: `Give at most ${said(high, dimension)}, or a larger ${other}.`,
      }),
    )
  const layers = (['upper', 'lower'] as const).flatMap((side): QuestionFault[] => {
    const coating = pair[side].thickness
    const plate = bears[side].plateThickness
    if (coating === undefined || plate === undefined || coating < plate) return []
    return [
      {
        key: `pair.${side}.thickness`,
        weight: 'stops',
        what: `The coating is ${said(coating, 'length')} thick, the plate below it ${said(plate, 'length')}.`,
        mend: `Give a coating thinner than ${said(plate, 'length')}, or leave the thickness out if the body is solid.`,
      },
    ]
  })
  return [...wrong, ...layers]
}

function rigImpossible({ rig }: PlanQuestion): QuestionFault[] {
  const { floor, ceiling } = rig.torque
  if (floor === undefined || ceiling === undefined || floor < ceiling) return []
  const what = `The torque floor, ${said(floor, 'torque')}, is not under the ceiling, ${said(ceiling, 'torque')}.`
  return [{ key: 'rig.torque.floor', weight: 'stops', what, mend: `Give less than ${said(ceiling, 'torque')}.` }]
}

function decidingImpossible({ deciding, flow }: PlanQuestion): QuestionFault[] {
  const faults: QuestionFault[] = []
  const add = (key: string, what: string, mend: string) => faults.push({ key, weight: 'stops', what, mend })
  if (deciding.samples.length === 0)
    add('deciding.samples', 'No sample is named.', 'Name one or more, with commas between them.')
  const fewest = deciding.checkStandard === undefined ? 1 : 3
  if (!(deciding.runsPerDay >= fewest)) {
    add(
      'deciding.runsPerDay',
      `A day of ${deciding.runsPerDay} runs has no room for a sample${fewest === 3 ? ' between two check standards' : ''}.`,
      `Give at least ${fewest}.`,
    )
  }
  for (const fault of flow === undefined ? [] : flowParameterFaults(flow.law, flow.parameters)) {
    add(
      'liquid',
      `The flow law of the liquid has a wrong parameter: ${fault}.`,
      'Take them from a fit: "kufe material --keep".',
    )
  }
  return faults
}

/** What the rig cannot do; the window shows the same, cell by cell. */
function beyondRig({ rig, ask, fixture }: PlanQuestion): QuestionFault[] {
  const { lever } = fixtureGeometry(fixture)
  const { floor = 0, ceiling = Number.POSITIVE_INFINITY } = rig.angularVelocity
  const faults: QuestionFault[] = []
  const add = (key: string, what: string, mend: string) => faults.push({ key, weight: 'warns', what, mend })
  if (ask.fastest > ceiling * lever) {
    const most = said(ceiling * lever, 'velocity')
    add(
      'ask.fastest',
      `The rig reaches ${most} on this lever, less than the ${said(ask.fastest, 'velocity')} asked for.`,
      `Ask for at most ${most}.`,
    )
  }
  if (ask.slowest < floor * lever) {
    const least = said(floor * lever, 'velocity')
    add(
      'ask.slowest',
      `The rig turns no slower than ${least} on this lever; ${said(ask.slowest, 'velocity')} was asked for.`,
      `Ask for at least ${least}.`,
    )
  }
  const most = rig.axialForce.ceiling ?? Number.POSITIVE_INFINITY
  const least = rig.axialForce.floor ?? 0
  const force = ask.axialForce
  if (force !== undefined && (force > most || force < least)) {
    const range = `${said(least, 'force')} to ${Number.isFinite(most) ? said(most, 'force') : 'any force'}`
    add('ask.axialForce', `The rig holds ${range}, not ${said(force, 'force')}.`, `Ask for ${range}.`)
  }
  if (force === undefined && (ask.mostForce > most || ask.leastForce < least)) {
    const key = ask.mostForce > most ? 'ask.mostForce' : 'ask.leastForce'
    const range = `${said(least, 'force')} to ${Number.isFinite(most) ? said(most, 'force') : 'any force'}`
    add(
      key,
      `The rig holds ${range}; ${said(ask.leastForce, 'force')} to ${said(ask.mostForce, 'force')} were asked for.`,
      'Loads beyond it are shown and never suggested.',
    )
  }
  return faults
}
