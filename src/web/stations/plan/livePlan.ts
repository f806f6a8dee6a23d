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
  /** With the points per decade that were planned; what windows are drawn from. */
  readonly asked: PlanBasis
  /** One line of the window at the planned load. */
  readonly line: PlanWindow
  readonly limits: FrictionLimits
}

/** Cells of the window; fine enough that its borders look smooth, quick enough for a frame. */
const grid = { speeds: 180, loads: 100, line: 140 } as const

/** Pictures reach so far beyond what was asked for, so that the limits are seen. */
const margin = 2

/** Limits as the figures name them. */
export const figureLimits = planLimits.map((limit) => planLimitWords[limit])

const places: ReadonlyMap<string, number> = new Map(planLimits.map((limit, index) => [limit, index]))

/** The live part of a plan; null for a question that cannot be planned. */
export function livePlan(question: PlanQuestion): LivePlan | null {
  if (questionFaults(question).some(({ weight }) => weight === 'stops')) return null
  const basis = planBasis(question)
  const suggestion = suggest(question, { trades: false })
  const { slowest, fastest } = question.ask
  const { axialForce } = suggestion
  const asked = planBasis({ ...question, ask: { ...question.ask, perDecade: suggestion.perDecade } })
  const fine = logAxis(slowest / margin, fastest * margin, grid.line)
  return {
    basis,
    suggestion,
    points: suggestion.possible ? plannedPoints(basis, suggestion) : [],
    contact: judgedContact(basis, axialForce),
    outline: fixtureOutline(question.fixture),
    asked,
    line: planWindow(asked, { speeds: fine, forces: Float64Array.of(axialForce) }),
    limits: frictionLimits(asked, axialForce, fine),
  }
}

/** Speed × load. */
export interface LoadWindow {
  readonly window: PlanWindow
  /** The cells of the window as the figure takes them: 0, or one more than the place in `planLimits`. */
  readonly cells: Uint8Array
}

/** The window of a live plan over speed and load; worked out only where it is seen. */
export function loadWindowOf({ asked, suggestion: { axialForce } }: LivePlan): LoadWindow {
  const { slowest, fastest, leastForce, mostForce } = asked.question.ask
  const window = planWindow(asked, {
    speeds: logAxis(slowest / margin, fastest * margin, grid.speeds),
    forces: logAxis(Math.min(leastForce, axialForce) / margin, Math.max(mostForce, axialForce) * margin, grid.loads),
  })
  return { window, cells: cellsOf(window.broken) }
}

const cellOf = new Map<number, number>()

/** The hardest limit of each cell; masks repeat, so each is looked up once. */
function cellsOf(broken: Uint16Array): Uint8Array {
  const cells = new Uint8Array(broken.length)
  for (let k = 0; k < broken.length; k++) {
    const mask = broken[k]
    if (mask === 0) continue
    let cell = cellOf.get(mask)
    if (cell === undefined) {
      cell = 1 + (places.get(hardestLimit(mask) ?? '') ?? 0)
      cellOf.set(mask, cell)
    }
    cells[k] = cell
  }
  return cells
}
