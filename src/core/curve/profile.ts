import { ConstrainedFit } from './constrainedFit.ts'
import { CurveAt } from './curveAt.ts'
import { type CurveQuantity, smoothQuantity } from './curveQuantity.ts'
import type { MemberFit } from './fitMember.ts'

/**
 * The signed root of the rise in loss along a quantity, sign(g − ĝ) √(loss(g) − least loss): standard normal at the truth,
 * to first order (Wilks 1938). Knots rise in g.
 */
export interface SignedRoot {
  readonly at: readonly number[]
  readonly root: readonly number[]
  /** True where the parameters' bounds, not the data, keep the quantity from going further down or up. */
  readonly stuckLow: boolean
  readonly stuckHigh: boolean
}

/** How far a profile is followed. */
export interface ProfileReach {
  readonly low: number
  readonly high: number
  /** Size of the root at which it may end. */
  readonly root: number
}

const mostTries = 20
/** Knots further apart in the root than this are not joined up. */
const longestLeap = 1.5

/** Follows the profile of a quantity from the fit both ways until its root is large enough or its reach ends. */
export function profile(fit: MemberFit, quantity: CurveQuantity, reach: ProfileReach): SignedRoot {
  const constrained = new ConstrainedFit(fit)
  const best = quantity.value(fit.parameters)
  const guess = constrained.uncertainty(quantity)
  const widest = (reach.high - reach.low) / 4
  const step = guess > 1e-9 * widest ? Math.min(guess, widest) : widest / 10
  const solve = (parameters: Float64Array, target: number): Solved => {
    const loss = constrained.solve(parameters, { quantity, target, stiffness: 30 / step })
    return { place: quantity.value(parameters), loss }
  }
  return follow({ fit, solve, reach, best, step })
}

/**
 * Profile of the speed of least friction. Held is the slope at a speed, to zero, which also works where the fit itself has
 * its least friction at an end of the data.
 */
export function leastSpeedProfile(fit: MemberFit, best: number, reach: ProfileReach): SignedRoot {
  const constrained = new ConstrainedFit(fit)
  const solve = (parameters: Float64Array, target: number): Solved => {
    const quantity = smoothQuantity((moved) => new CurveAt(fit.member, moved).slope(target))
    const stiffness = 100 / Math.max(1e-6, constrained.uncertainty(quantity))
    return { place: target, loss: constrained.solve(parameters, { quantity, target: 0, stiffness }) }
  }
  return follow({ fit, solve, reach, best, step: (reach.high - reach.low) / 20 })
}

interface Solved {
  /** Value that the quantity has come to. */
  readonly place: number
  readonly loss: number
}

interface Job {
  readonly fit: MemberFit
  /** Re-fits in place with the quantity held at a target. */
  readonly solve: (parameters: Float64Array, target: number) => Solved
  readonly reach: ProfileReach
  /** Value at the fit; may lie outside the reach, even at infinity. */
  readonly best: number
  readonly step: number
}

interface Side {
  readonly at: number[]
  readonly root: number[]
  readonly stuck: boolean
}

function follow(job: Job): SignedRoot {
  const { fit, reach, best } = job
  if (best > reach.low && best < reach.high) {
    const start = { parameters: fit.parameters, place: best, size: 0 }
    const down = side(job, start, -1)
    const up = side(job, start, 1)
    return {
      at: [...down.at.toReversed(), best, ...up.at],
      root: [...down.root.toReversed().map((r) => -r), 0, ...up.root],
      stuckLow: down.stuck,
      stuckHigh: up.stuck,
    }
  }
  const parameters = fit.parameters.slice()
  const edge = best >= reach.high ? reach.high : reach.low
  const { place, loss } = job.solve(parameters, edge)
  const size = Math.sqrt(Math.max(0, loss - fit.loss))
  const inward = side(job, { parameters, place, size }, edge === reach.high ? -1 : 1)
  if (edge === reach.low) {
    return { at: [place, ...inward.at], root: [size, ...inward.root], stuckLow: true, stuckHigh: inward.stuck }
  }
  return {
    at: [...inward.at.toReversed(), place],
    root: [...inward.root.toReversed().map((r) => -r), -size],
    stuckLow: inward.stuck,
    stuckHigh: true,
  }
}

interface SideStart {
  readonly parameters: Float64Array
  readonly place: number
  readonly size: number
}

function side(job: Job, start: SideStart, way: 1 | -1): Side {
  const { fit, reach, solve } = job
  const end = way > 0 ? reach.high : reach.low
  const at: number[] = []
  const root: number[] = []
  const parameters = start.parameters.slice()
  const before = parameters.slice()
  let { place, size } = start
  let step = job.step
  for (let tries = 0; tries < mostTries && size < reach.root && (end - place) * way > 0; tries++) {
    const wanted = Math.min(step, Math.abs(end - place))
    before.set(parameters)
    const solved = solve(parameters, place + way * wanted)
    const moved = (solved.place - place) * way
    if (!(moved > 0.02 * wanted)) return { at, root, stuck: true }
    const risen = Math.max(size, Math.sqrt(Math.max(0, solved.loss - fit.loss)))
    if (risen - size > longestLeap && tries < mostTries - 2) {
      parameters.set(before)
      step = wanted / (risen - size)
      continue
    }
    place = solved.place
    size = risen
    at.push(place)
    root.push(risen)
    const last = root.length > 1 ? risen - root[root.length - 2] : risen - start.size
    step = Math.min(3 * step, Math.max(step / 3, moved / Math.max(0.2, last)))
  }
  return { at, root, stuck: false }
}
