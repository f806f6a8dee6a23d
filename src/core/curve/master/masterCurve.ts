import { randomFrom } from '../../numeric/index.ts'
import { fisherFUpper, studentTQuantile } from '../../stats/index.ts'
import type { CurveModelName, Interval, Ratio } from '../../terms/index.ts'
import { curveFamily } from '../curveFamily.ts'
import type { CurveMember, Reach } from '../curveMember.ts'
import type { Observations } from '../curvePoint.ts'
import { fitMember, type MemberFit, withScatter } from '../fitMember.ts'
import { endInWords } from '../innerNames.ts'
import { deviance, spreadOf } from '../studentLoss.ts'
import { weighedFits } from '../weighedFits.ts'
import { type FreeShifts, freeShifts } from './freeShifts.ts'
import type { LiquidShift, MasterCurveFit, MasterLiquid } from './masterCurveFit.ts'
import { permutationsOf } from './permutationsOf.ts'

/** Above this probability the null is not refused. */
export const collapseSignificance: Ratio = 0.05

/**
 * Several liquids on one pair: one curve over a Hersey number, and whether viscosity makes them one. The member of the curve family is chosen on the axis with
 * viscosity. Liquids are then moved freely along it; the shift that is left beyond viscosity is 1 where viscosity is all. Needs two liquids or more with three
 * points each; undefined otherwise.
 */
export function masterCurve(
  liquids: readonly MasterLiquid[],
  { seed }: { readonly seed: number },
): MasterCurveFit | undefined {
  if (liquids.length < 2 || liquids.some(({ points }) => points.length < 3)) return undefined
  const observations = together(liquids, () => 0)
  const bySpeed = ({ viscosity }: MasterLiquid): number => -Math.log(viscosity)
  const plain = together(liquids, bySpeed)
  const names = candidates([observations, plain])
  if (names.length === 0) return undefined
  const free = bestFree(liquids, names)
  const { name } = free
  const fit = refit(name, observations)
  const speed = refit(name, plain)
  const residual = {
    viscosity: rootMean(fit.residuals),
    speed: Math.min(rootMean(speed.residuals), ...bestOf(plain).map((one) => rootMean(one.residuals))),
    free: rootMean(free.residuals),
    own: rootMean(observations.own),
  }
  const more = liquids.length - 1
  const fall = Math.max(0, withScatter(fit, free.scatter).loss - free.loss)
  const better = { fall, probability: fisherFUpper(fall / more, [more, free.freedom]) }
  const permutations = permutedOrders(liquids, { name, seed, rms: residual.viscosity })
  const shifts = liquids.map((liquid, i) => shiftOf(liquid, i, { liquids, free, fit }))
  return {
    model: name,
    end: endInWords(fit.end),
    shifts,
    residual,
    explained: 1 - (residual.viscosity / residual.speed) ** 2,
    permutations,
    better,
    collapses: verdictOf({ better, shifts, residual }),
    curve: curveOf(fit),
  }
}

/** Best member on an axis, where there are points enough for one. */
const bestOf = (observations: Observations): readonly MemberFit[] =>
  weighedFits(observations, reachOf(observations))
    .slice(0, 1)
    .map(({ fit }) => fit)

/** Members worth a try: those that do best with viscosities and without, and the one that most pairs of surfaces follow. */
function candidates(axes: readonly Observations[]): readonly CurveModelName[] {
  const best = axes.flatMap((axis) => bestOf(axis).map(({ member }) => member.name))
  const usual: readonly CurveModelName[] = axes[0].lnSpeeds.length > 12 ? ['stribeck'] : []
  return [...new Set([...best, ...usual])]
}

/** The member and the start from which free shifts fit best; a parameter more must lower the loss by two. */
function bestFree(
  liquids: readonly MasterLiquid[],
  names: readonly CurveModelName[],
): FreeShifts & { name: CurveModelName } {
  const belongs = liquidOf(liquids)
  const observations = together(liquids, () => 0)
  const [first] = liquids
  const starts = [() => 0, ({ viscosity }: MasterLiquid) => Math.log(first.viscosity / viscosity)]
  const tried = names.flatMap((name) =>
    starts.map((start) => {
      const fit = refit(name, together(liquids, start))
      const moved = { ...fit, observations }
      return { name, ...freeShifts(moved, { liquidOf: belongs, start: liquids.map(start) }) }
    }),
  )
  const cost = ({ name, scatter, residuals }: (typeof tried)[number]): number =>
    deviance(spreadOf(observations, scatter), residuals) + 2 * curveFamily[name](reachOf(observations)).names.length
  return tried.reduce((best, one) => (cost(one) < cost(best) ? one : best))
}

/** All points as one series; `move` shifts a liquid along the logarithm of the axis. */
function together(
  liquids: readonly MasterLiquid[],
  move: (liquid: MasterLiquid, index: number) => number,
): Observations {
  const all = liquids.flatMap((liquid, index) => liquid.points.map((point) => ({ point, by: move(liquid, index) })))
  return {
    lnSpeeds: Float64Array.from(all, ({ point, by }) => Math.log(point.hersey) + by),
    lnFriction: Float64Array.from(all, ({ point }) => Math.log(point.friction)),
    own: Float64Array.from(all, ({ point }) => Math.max(1e-7, point.ownUncertainty / point.friction)),
    freedom: Float64Array.from(all, ({ point }) => Math.max(1.5, Math.min(1e9, point.degreesOfFreedom))),
  }
}

const liquidOf = (liquids: readonly MasterLiquid[]): readonly number[] =>
  liquids.flatMap(({ points }, index) => points.map(() => index))

function reachOf({ lnSpeeds, lnFriction }: Observations): Reach {
  return {
    lnSlowest: Math.min(...lnSpeeds),
    lnFastest: Math.max(...lnSpeeds),
    lnLeast: Math.min(...lnFriction),
    lnMost: Math.max(...lnFriction),
  }
}

const refit = (name: CurveModelName, observations: Observations): MemberFit =>
  fitMember(curveFamily[name](reachOf(observations)), observations)

const rootMean = (values: Float64Array): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length)

interface Permuting {
  readonly name: CurveModelName
  readonly seed: number
  readonly rms: number
}

/** How many orders of the viscosities do as well as the right one; the right one counts among them. */
function permutedOrders(
  liquids: readonly MasterLiquid[],
  { name, seed, rms }: Permuting,
): MasterCurveFit['permutations'] {
  const orders = permutationsOf(liquids.length, randomFrom(seed, 55))
  const asGood = orders.filter((order) => {
    const moved = together(
      liquids,
      ({ viscosity }, index) => Math.log(liquids[order[index]].viscosity) - Math.log(viscosity),
    )
    return rootMean(refit(name, moved).residuals) <= rms * (1 + 1e-6)
  }).length
  return { orders: orders.length + 1, asGood: asGood + 1, probability: (asGood + 1) / (orders.length + 1) }
}

interface Shifting {
  readonly liquids: readonly MasterLiquid[]
  readonly free: FreeShifts
  readonly fit: MemberFit
}

function shiftOf(liquid: MasterLiquid, index: number, { liquids, free, fit }: Shifting): LiquidShift {
  const t = studentTQuantile(0.975, free.freedom)
  const [first] = liquids
  const own = t * free.uncertainties[index]
  const known = index === 0 ? 0 : Math.hypot(liquid.viscosityUncertainty, first.viscosityUncertainty)
  const ratio = Math.log(liquid.viscosity / first.viscosity)
  return {
    name: liquid.name,
    points: liquid.points.length,
    viscosity: liquid.viscosity,
    beyond: exponential(free.shifts[index], own),
    beyondWithViscosity: exponential(free.shifts[index], Math.hypot(own, 1.96 * known)),
    whole: exponential(free.shifts[index] + ratio, own),
    level: levelOf(liquids, index, fit),
  }
}

const exponential = (value: number, half: number): Interval => ({
  value: Math.exp(value),
  low: Math.exp(value - half),
  high: Math.exp(value + half),
})

function levelOf(liquids: readonly MasterLiquid[], index: number, { residuals }: MemberFit): Interval {
  const belongs = liquidOf(liquids)
  const own = Array.from(residuals).filter((_, i) => belongs[i] === index)
  const value = own.reduce((a, b) => a + b, 0) / own.length
  const spread = Math.sqrt(own.reduce((sum, r) => sum + (r - value) ** 2, 0) / (own.length - 1) / own.length)
  const half = studentTQuantile(0.975, own.length - 1) * spread
  return { value, low: value - half, high: value + half }
}

/** A collapse is refused where free shifts do better and no uncertainty of the viscosities explains it. */
function verdictOf({
  better,
  shifts,
  residual,
}: Pick<MasterCurveFit, 'better' | 'shifts' | 'residual'>): MasterCurveFit['collapses'] {
  const off = shifts.slice(1).some(({ beyondWithViscosity: { low, high } }) => low > 1 || high < 1)
  if (better.probability < collapseSignificance && off) return 'no'
  return residual.viscosity < residual.speed ? 'yes' : 'cannotTell'
}

const places = 80

function curveOf({ member, parameters, observations }: MemberFit): MasterCurveFit['curve'] {
  const { lnSlowest, lnFastest } = reachOf(observations)
  const lnSpeeds = Float64Array.from(
    { length: places },
    (_, i) => lnSlowest + (i / (places - 1)) * (lnFastest - lnSlowest),
  )
  const lnFriction = new Float64Array(places)
  const drawn: CurveMember = member
  drawn.evaluate(parameters, { lnSpeeds, lnFriction })
  return Array.from(lnSpeeds, (x, i) => ({ hersey: Math.exp(x), friction: Math.exp(lnFriction[i]) }))
}
