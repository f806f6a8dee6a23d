import type { FixtureSpec, MetrePerSecond, Newton, Ratio } from '../terms/index.ts'
import { planBasis } from './planBasis.ts'
import { limitsIn, type PlanLimit, planLimits } from './planLimit.ts'
import { logAxis, measurableRun, type PlanWindow, planWindow } from './planWindow.ts'
import type { PlanQuestion } from './question.ts'
import type { PlanBasis } from './windowAxes.ts'

/** What the plan would do, with the room that it had. Words are added by `tradesOf`. */
export interface Suggestion {
  readonly axialForce: Newton
  /** Loads that see as many speeds; null where none sees any. */
  readonly forceSpan: { readonly low: Newton; readonly high: Newton } | null
  /** Whether the question had decided the load. */
  readonly forceGiven: boolean
  /** Limits met when the load is made larger or smaller than the span. */
  readonly aboveSpan: readonly PlanLimit[]
  readonly belowSpan: readonly PlanLimit[]
  readonly slowest: MetrePerSecond
  readonly fastest: MetrePerSecond
  /** Limits met just below the slowest and above the fastest speed; empty where the question ends there. */
  readonly belowSlowest: readonly PlanLimit[]
  readonly aboveFastest: readonly PlanLimit[]
  readonly perDecade: number
  readonly coupling: 'compliant' | 'stiff'
  /** Other counts of balls with the share of the asked speeds that each could see at its best load. */
  readonly bodies: readonly { readonly count: number; readonly share: Ratio; readonly axialForce: Newton | null }[]
  /** False where no speed of the question can be measured at any load. */
  readonly possible: boolean
}

/** Loads and speeds that are looked at. */
const grid = { speeds: 240, forces: 120 } as const

/** Under this load a compliant coupling, above it a stiff one. That there are two is common practice; the number is ours. */
export const compliantUnder: Newton = 10

/** Fewest points per decade that still draw a curve. Common practice, no source. */
export const fewestPerDecade = 5

/** What a suggestion leaves out to be quick. */
export interface SuggestionDepth {
  /** False: no other counts of balls, and no span of loads where the load is given. For pictures that follow a hand. */
  readonly trades: boolean
}

/** Looks for the load that sees most of the asked speeds, stays clear of its limits on both sides, and fits the time. */
export function suggest(question: PlanQuestion, { trades }: SuggestionDepth = { trades: true }): Suggestion {
  const thinned = thinnedOut(question)
  const { window, best, ...force } = chosenForce(planBasis(thinned), trades)
  const line = planWindow(planBasis(thinned), {
    speeds: window.speeds,
    forces: Float64Array.of(force.axialForce),
  })
  const run = measurableRun(line, 0)
  const { slowest, fastest } = run ?? thinned.ask
  const at = (speed: MetrePerSecond): number => line.speeds.indexOf(speed)
  const limitsAt = (i: number): readonly PlanLimit[] =>
    i >= 0 && i < line.speeds.length ? limitsIn(line.broken[i]) : []
  return {
    ...force,
    slowest,
    fastest,
    belowSlowest: run === null ? limitsAt(0) : limitsAt(at(slowest) - 1),
    aboveFastest: run === null ? limitsAt(line.speeds.length - 1) : limitsAt(at(fastest) + 1),
    perDecade: thinned.ask.perDecade,
    coupling: force.axialForce > compliantUnder ? 'stiff' : 'compliant',
    bodies: trades ? otherBodies(thinned, best) : [],
    possible: run !== null,
  }
}

/** Fewer points per decade, down to five, where that lets the whole range of speeds into the time allowed. */
function thinnedOut(question: PlanQuestion): PlanQuestion {
  const { perDecade } = question.ask
  const candidates = [perDecade, 8, 6, fewestPerDecade].filter((one, i) => i === 0 || one < perDecade)
  const withPoints = (count: number): PlanQuestion => ({ ...question, ask: { ...question.ask, perDecade: count } })
  const inTime = (count: number): boolean => {
    const { slowest, leastForce } = question.ask
    const axes = { speeds: Float64Array.of(slowest), forces: Float64Array.of(leastForce) }
    return !limitsIn(planWindow(planBasis(withPoints(count)), axes).broken[0]).includes('time')
  }
  return withPoints(candidates.find(inTime) ?? candidates[candidates.length - 1])
}

interface ChosenForce extends Pick<Suggestion, 'axialForce' | 'forceSpan' | 'forceGiven' | 'aboveSpan' | 'belowSpan'> {
  readonly window: PlanWindow
  /** Share of the asked speeds that the best load sees. */
  readonly best: Ratio
}

function chosenForce(basis: PlanBasis, trades = true): ChosenForce {
  const { ask } = basis.question
  const given = trades ? undefined : ask.axialForce
  const window = planWindow(basis, {
    speeds: ask.slowest === ask.fastest ? Float64Array.of(ask.slowest) : logAxis(ask.slowest, ask.fastest, grid.speeds),
    forces:
      given !== undefined || ask.leastForce === ask.mostForce
        ? Float64Array.of(given ?? ask.leastForce)
        : logAxis(ask.leastForce, ask.mostForce, grid.forces),
  })
  const { forces } = window
  const counts = Array.from(forces, (_, j) => measurableRun(window, j)?.count ?? 0)
  const most = Math.max(...counts)
  const best = most / window.speeds.length
  const forceGiven = ask.axialForce !== undefined
  const nothing = { forceSpan: null, aboveSpan: [], belowSpan: [] }
  if (given !== undefined) return { axialForce: given, forceGiven, ...nothing, window, best }
  if (most === 0)
    return {
      axialForce: ask.axialForce ?? Math.sqrt(ask.leastForce * ask.mostForce),
      forceGiven,
      ...nothing,
      window,
      best,
    }
  const good = (j: number): boolean => counts[j] >= 0.98 * most
  const { from, to } = longestRun(counts.map((_, j) => good(j)))
  const forceSpan = { low: forces[from], high: forces[to] }
  return {
    axialForce: ask.axialForce ?? roundWithin(forceSpan),
    forceSpan,
    forceGiven,
    aboveSpan: newLimits(window, to, to + 1),
    belowSpan: newLimits(window, from, from - 1),
    window,
    best,
  }
}

function longestRun(good: readonly boolean[]): { readonly from: number; readonly to: number } {
  let best = { from: 0, to: -1 }
  let from = 0
  for (let j = 0; j <= good.length; j++) {
    if (good[j] === true) continue
    if (j - 1 - from > best.to - best.from) best = { from, to: j - 1 }
    from = j + 1
  }
  return best
}

/** Limits that stand at load `beyond` at speeds where load `within` is free. */
function newLimits({ speeds, forces, broken }: PlanWindow, within: number, beyond: number): readonly PlanLimit[] {
  if (beyond < 0 || beyond >= forces.length) return []
  let mask = 0
  for (let i = 0; i < speeds.length; i++) {
    if (broken[within * speeds.length + i] === 0) mask |= broken[beyond * speeds.length + i]
  }
  return planLimits.filter((limit) => limitsIn(mask).includes(limit))
}

/** The roundest number near the middle of a span. */
export function roundWithin({ low, high }: { readonly low: number; readonly high: number }): number {
  const middle = Math.sqrt(low * high)
  const power = 10 ** Math.floor(Math.log10(middle))
  for (const mantissas of [
    [1, 2, 5, 10],
    [1, 1.5, 2, 3, 4, 5, 6, 8, 10],
  ]) {
    const rounded = mantissas
      .map((mantissa) => Number((mantissa * power).toPrecision(3)))
      .filter((one) => one >= low && one <= high)
    const nearest = rounded.sort((a, b) => Math.abs(Math.log(a / middle)) - Math.abs(Math.log(b / middle)))[0]
    if (nearest !== undefined && Math.abs(Math.log(nearest / middle)) < 0.35) return nearest
  }
  return Math.min(high, Math.max(low, Number(middle.toPrecision(2))))
}

/** One ball against three on the same track, where the fixture is one that leaves the choice. */
function otherBodies(question: PlanQuestion, share: Ratio): Suggestion['bodies'] {
  const { fixture } = question
  if (fixture.kind !== 'ballsOnPlate') return []
  const counts = [1, 3].filter((count) => count !== fixture.balls)
  const others = counts.flatMap((balls) => {
    const other: FixtureSpec = { ...fixture, balls }
    const room = balls === 1 ? 2 : 2 * Math.sin(Math.PI / balls)
    if (!(fixture.ballDiameter < room * fixture.trackRadius)) return []
    const chosen = chosenForce(planBasis({ ...question, fixture: other }))
    return [{ count: balls, share: chosen.best, axialForce: chosen.best > 0 ? chosen.axialForce : null }]
  })
  return [{ count: fixture.balls, share, axialForce: null }, ...others]
}
