import { boundedLeastSquares } from '../boundedLeastSquares.ts'
import { withCentralDifferences } from '../centralDifferences.ts'
import { extraScatter } from '../extraScatter.ts'
import type { MemberFit } from '../fitMember.ts'
import { spreadOf, takeRoots } from '../studentLoss.ts'

/** Liquids moved freely along the logarithm of the axis, the first one held. */
export interface FreeShifts {
  /** ln of the factor of each liquid; 0 for the first. */
  readonly shifts: readonly number[]
  readonly uncertainties: readonly number[]
  /** ln µ observed less fitted. */
  readonly residuals: Float64Array
  readonly rms: number
  /** Sum of losses; differences of it at the same scatter follow χ². */
  readonly loss: number
  readonly scatter: number
  /** Points less parameters, shifts counted. */
  readonly freedom: number
}

/** No liquid is moved by more than e^this. */
const farthest = 9
const rounds = 6
const searching = { gradient: 1e-4, fall: 1e-5, step: 1e-5, iterations: 30, polish: false } as const
const settling = { gradient: 1e-7, fall: 1e-9, step: 1e-8, iterations: 200 } as const

/** Steps by which a liquid is moved in the search for the right valley. */
const jumps = [-2.8, -1.4, -0.7, -0.35, 0.35, 0.7, 1.4, 2.8] as const

/** To which liquid each point belongs, and where their shifts begin. */
export interface FreeStart {
  readonly liquidOf: readonly number[]
  readonly start: readonly number[]
}

/**
 * The member fitted together with a shift for each liquid but the first, with the loss of the curve fit: own uncertainties that are estimates
 * themselves, and a scatter beyond them that brings the weighted squares down to points less parameters. `fit` gives the member's start.
 */
export function freeShifts(fit: MemberFit, { liquidOf, start: begin }: FreeStart): FreeShifts {
  const { member, observations } = fit
  const liquids = begin.length
  const inner = member.names.length
  const count = inner + liquids - 1
  const freedom = Math.max(1, observations.lnSpeeds.length - count)
  const start = Float64Array.from([...fit.parameters, ...begin.slice(1)])
  let scatter = Math.max(fit.scatter, 0.02)
  let found = solve(fit, { liquidOf, liquids, scatter, start, rules: searching })
  for (let pass = 0; pass < 3; pass++) {
    const moved = solve(fit, {
      liquidOf,
      liquids,
      scatter,
      start: jumped(fit, { liquidOf, liquids, scatter, start: found.parameters }),
      rules: searching,
    })
    if (!(moved.loss < found.loss - 1e-9)) break
    found = moved
  }
  for (let round = 0; round < rounds; round++) {
    const next = extraScatter(observations, found.residuals, freedom)
    if (round > 0 && Math.abs(next - scatter) <= 1e-3 * scatter) break
    scatter = next
    found = solve(fit, { liquidOf, liquids, scatter, start: found.parameters })
  }
  const at = (i: number): number => (inner + i - 1) * count + inner + i - 1
  const each = Array.from({ length: liquids }, (_, i) => i)
  return {
    shifts: each.map((i) => (i === 0 ? 0 : found.parameters[inner + i - 1])),
    uncertainties: each.map((i) => (i === 0 ? 0 : Math.sqrt(found.inverseGram[at(i)]))),
    residuals: found.residuals,
    rms: Math.sqrt(found.residuals.reduce((sum, r) => sum + r * r, 0) / found.residuals.length),
    loss: found.loss,
    scatter,
    freedom,
  }
}

/** Each liquid in turn moved by the jump that brings its points nearest to the curve as it stands. */
function jumped({ member, observations }: MemberFit, { liquidOf, liquids, start }: Solving): Float64Array {
  const { lnSpeeds, lnFriction } = observations
  const inner = member.names.length
  const parameters = start.slice()
  const moved = new Float64Array(lnSpeeds.length)
  const fitted = new Float64Array(lnSpeeds.length)
  const distance = (liquid: number, shift: number): number => {
    for (let i = 0; i < moved.length; i++) moved[i] = lnSpeeds[i] + shift
    member.evaluate(parameters.subarray(0, inner), { lnSpeeds: moved, lnFriction: fitted })
    return lnFriction.reduce((sum, value, i) => sum + (liquidOf[i] === liquid ? (value - fitted[i]) ** 2 : 0), 0)
  }
  for (let liquid = 1; liquid < liquids; liquid++) {
    const at = inner + liquid - 1
    const here = parameters[at]
    const best = [0, ...jumps].map((jump) => ({ shift: here + jump, squares: distance(liquid, here + jump) }))
    parameters[at] = best.reduce((least, one) => (one.squares < least.squares ? one : least)).shift
  }
  return parameters
}

interface Solving {
  readonly liquidOf: readonly number[]
  readonly liquids: number
  readonly scatter: number
  readonly start: Float64Array
  readonly rules?: typeof searching | typeof settling
}

function solve({ member, observations }: MemberFit, { liquidOf, liquids, scatter, start, rules = settling }: Solving) {
  const { lnSpeeds, lnFriction } = observations
  const spread = spreadOf(observations, scatter)
  const rows = lnSpeeds.length
  const inner = member.names.length
  const moved = new Float64Array(rows)
  const fitted = new Float64Array(rows)
  const look = (parameters: Float64Array): void => {
    for (let i = 0; i < rows; i++) {
      const liquid = liquidOf[i]
      moved[i] = lnSpeeds[i] + (liquid === 0 ? 0 : parameters[inner + liquid - 1])
    }
    member.evaluate(parameters.subarray(0, inner), { lnSpeeds: moved, lnFriction: fitted })
  }
  const names = [...member.names, ...Array.from({ length: liquids - 1 }, (_, i) => `shift ${i + 2}`)]
  const beside = new Array<number>(liquids - 1).fill(farthest)
  const bare = {
    rows,
    names,
    lower: Float64Array.from([...member.lower, ...beside.map((one) => -one)]),
    upper: Float64Array.from([...member.upper, ...beside]),
    evaluate(parameters: Float64Array, residuals: Float64Array) {
      look(parameters)
      for (let i = 0; i < rows; i++) residuals[i] = lnFriction[i] - fitted[i]
      takeRoots(spread, residuals)
    },
  }
  const problem = withCentralDifferences(
    bare,
    names.map(() => 1),
  )
  const { parameters, inverseGram, sumOfSquares } = boundedLeastSquares(problem, start, rules)
  look(parameters)
  const residuals = lnFriction.map((value, i) => value - fitted[i])
  return { parameters, inverseGram, residuals, loss: sumOfSquares }
}
