import type { Plan, PlannedPoint } from '../../../core/plan/index.ts'
import { printQuantity } from '../../../core/quantity/index.ts'
import type { OrderedSheet } from '../../../core/terms/index.ts'
import type {
  FixtureFigureData,
  FrictionWindowData,
  LoadWindowData,
  PredictionData,
  RunInTimeData,
} from '../../../figure/index.ts'
import { figureLimits, type LivePlan, loadWindowOf } from './livePlan.ts'

const force = (value: number): string => printQuantity(value, 'force', { digits: 3 })

/** The way back meets the same speeds. */
const oneWay = (points: readonly PlannedPoint[]): readonly PlannedPoint[] =>
  points.filter(({ direction }) => direction === points[0]?.direction)

/** Data of the fixture's picture. */
export function fixtureData({ outline, contact, suggestion }: LivePlan): FixtureFigureData {
  const radius = contact.contactRadius
  return {
    title: 'The fixture, to scale',
    caption: `under ${force(suggestion.axialForce)}${radius === null ? '' : `; one contact is ${printQuantity(2 * radius, 'length', { digits: 3 })} across`}`,
    outline,
    axialForce: suggestion.axialForce,
    ...(radius === null ? {} : { contactRadius: radius }),
  }
}

/** Data of the window over speed and load. */
export function loadWindowData(plan: LivePlan): LoadWindowData {
  const { suggestion, points } = plan
  const { window, cells } = loadWindowOf(plan)
  return {
    title: 'Where friction can be measured',
    caption: 'free where the paper is clean; a letter says what forbids the rest',
    speeds: window.speeds,
    loads: window.forces,
    cells,
    limits: figureLimits,
    planned: {
      load: suggestion.axialForce,
      steps: oneWay(points).map((point) => point.slidingSpeed),
    },
  }
}

/** What both pictures of friction over speed share. */
function expectation({ line, points }: LivePlan): Omit<FrictionWindowData, 'borders' | 'title'> {
  return {
    speeds: line.speeds,
    friction: line.friction,
    low: line.frictionLow,
    high: line.frictionHigh,
    steps: oneWay(points).map(({ slidingSpeed, friction, uncertainty, direction }) => ({
      slidingSpeed,
      friction: friction.value,
      uncertainty: uncertainty.total,
      direction,
    })),
  }
}

/** Data of the window over speed and friction, at the planned load. */
export function frictionWindowData(plan: LivePlan): FrictionWindowData {
  const { limits, line, suggestion } = plan
  const flat = (value: number): Float64Array => new Float64Array(line.speeds.length).fill(value)
  const named = { torqueFloor: 'f', torqueCeiling: 'M', turns: 't', uncertainty: 'u' } as const
  const word = (sign: string): { readonly sign: string; readonly words: string } =>
    figureLimits.find((limit) => limit.sign === sign) ?? { sign, words: '' }
  return {
    ...expectation(plan),
    title: `Which friction can be measured at ${force(suggestion.axialForce)}`,
    caption: 'hatched: too small or too large to be measured as surely as wanted',
    borders: [
      { ...word(named.torqueFloor), at: flat(limits.floor), forbids: 'below' },
      { ...word(named.turns), at: limits.tilt, forbids: 'below' },
      { ...word(named.uncertainty), at: limits.unsure, forbids: 'below' },
      { ...word(named.torqueCeiling), at: flat(limits.ceiling), forbids: 'above' },
    ],
  }
}

/** Data of the predicted curve. */
export function predictionData(plan: LivePlan, full: Plan | null): PredictionData {
  return {
    ...expectation(plan),
    title: 'The curve as expected',
    caption: 'a guess with its band, and what the data will say of it',
    mixedFrom: full?.regime.mixedFrom ?? null,
    fullFilmFrom: full?.regime.fullFilmFrom ?? null,
  }
}

/** Data of the run in time. */
export function runInTimeData(sheet: OrderedSheet): RunInTimeData {
  const parts = sheet.parts.map(({ name, heading, entries }) => ({
    key: name,
    name: heading,
    duration: entries.reduce((sum, { duration }) => sum + duration, 0),
  }))
  const sweep = parts.findIndex(({ key }) => key === 'sweep')
  return {
    title: 'One record in time',
    caption: 'the parts of the run sheet, and the speed of each step',
    parts,
    sweepFrom: parts.slice(0, Math.max(0, sweep)).reduce((sum, { duration }) => sum + duration, 0),
    steps: sheet.sweep,
    distance: sheet.totals.distance,
  }
}
