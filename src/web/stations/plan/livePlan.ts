import { fixtureOutline } from '../../../core/fixture/index.ts'
import {
  type FrictionLimits,
  frictionLimits,
  hardestLimit,
  type JudgedContact,
  judgedContact,
  logAxis,
  type PlanBasis,
  type PlannedPoint,
  type PlanQuestion,
  type PlanWindow,
  planBasis,
  planLimits,
  planLimitWords,
  plannedPoints,
  planWindow,
  questionFaults,
  type Suggestion,
  suggest,
} from '../../../core/plan/index.ts'
import type { FixtureOutline } from '../../../core/terms/index.ts'

/** What pictures need of a plan: everything that can be worked out within a frame while a hand moves. */
export interface LivePlan {
  readonly basis: PlanBasis
  readonly suggestion: Suggestion
  readonly points: readonly PlannedPoint[]
  readonly contact: JudgedContact
  readonly outline: FixtureOutline
  /** Speed × load. */
  readonly window: PlanWindow
  /** The cells of the window as the figure takes them: 0, or one more than the place in `planLimits`. */
  readonly cells: Uint8Array
  /** One line of the window at the planned load, finer. */
  readonly line: PlanWindow
  readonly limits: FrictionLimits
}

/** Cells of the window; fine enough that its borders look smooth, quick enough for a frame. */
const grid = { speeds: 200, loads: 110, line: 160 } as const

/** Pictures reach so far beyond what was asked for, so that the limits are seen. */
const margin = 2

/** Limits as the figures name them. */
export const figureLimits = planLimits.map((limit) => planLimitWords[limit])

const places: ReadonlyMap<string, number> = new Map(planLimits.map((limit, index) => [limit, index]))

/** The live part of a plan; null for a question that cannot be planned. */
export function livePlan(question: PlanQuestion): LivePlan | null {
  if (questionFaults(question).some(({ weight }) => weight === 'stops')) return null
  const basis = planBasis(question)
  const suggestion = suggest(question)
  const { slowest, fastest, leastForce, mostForce } = question.ask
  const { axialForce } = suggestion
  const asked = planBasis({ ...question, ask: { ...question.ask, perDecade: suggestion.perDecade } })
  const speeds = logAxis(slowest / margin, fastest * margin, grid.speeds)
  const window = planWindow(asked, {
    speeds,
    forces: logAxis(Math.min(leastForce, axialForce) / margin, Math.max(mostForce, axialForce) * margin, grid.loads),
  })
  const fine = logAxis(slowest / margin, fastest * margin, grid.line)
  return {
    basis,
    suggestion,
    points: suggestion.possible ? plannedPoints(basis, suggestion) : [],
    contact: judgedContact(basis, axialForce),
    outline: fixtureOutline(question.fixture),
    window,
    cells: cellsOf(window.broken),
    line: planWindow(asked, { speeds: fine, forces: Float64Array.of(axialForce) }),
    limits: frictionLimits(asked, axialForce, fine),
  }
}

const cellOf = new Map<number, number>()

/** The hardest limit of each cell; masks repeat, so each is looked up once. */
function cellsOf(broken: Uint16Array): Uint8Array {
  return Uint8Array.from(broken, (mask) => {
    const known = cellOf.get(mask)
    if (known !== undefined) return known
    const limit = hardestLimit(mask)
    const cell = limit === undefined ? 0 : 1 + (places.get(limit) ?? 0)
    cellOf.set(mask, cell)
    return cell
  })
}
