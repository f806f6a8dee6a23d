import { studentTQuantile } from '../stats/index.ts'
import { type MetrePerSecond, type Ratio, sharedSources } from '../terms/index.ts'
import type { Replicate } from './replicate.ts'
import { type CurveOverSpeed, curveThrough } from './replicateCurve.ts'
import { speedGrid } from './speedGrid.ts'

/** Two single numbers at one speed, the second against the first. */
export interface HeldNumber {
  readonly slidingSpeed: MetrePerSecond
  readonly first: number
  readonly second: number
  /** Ratio less one with its 95 % interval. */
  readonly difference: Ratio
  readonly low: Ratio
  readonly high: Ratio
  /** |difference| over its expanded uncertainty, the E_n number of ISO 13528: over 1 the numbers disagree. */
  readonly en: number
}

/** What counts in the difference of two numbers. */
export interface HeldSetting {
  /** One rig and one fixture: what they share cancels. */
  readonly cancels: boolean
  /** Standard deviation between mountings; null where nobody knows it, and then only own and shared parts count. */
  readonly repeatability: Ratio | null
  /** Where it is known from a round, the standard deviation between laboratories, for two rigs. */
  readonly betweenLaboratories: Ratio | null
  readonly at: readonly MetrePerSecond[]
}

/** Two records at the speeds that both have; empty where there are none. */
export function heldNumbers(first: Replicate, second: Replicate, setting: HeldSetting): readonly HeldNumber[] {
  const curves = [curveThrough(first.points), curveThrough(second.points)] as const
  const slowest = Math.max(curves[0].slowest, curves[1].slowest)
  const fastest = Math.min(curves[0].fastest, curves[1].fastest)
  const inside = (speed: number): boolean => speed >= slowest / 1.02 && speed <= fastest * 1.02
  const wanted = setting.at.length > 0 ? setting.at.filter(inside) : fastest < slowest ? [] : fewOf(slowest, fastest)
  return wanted.map((speed) => heldAt(curves, speed, setting))
}

/** The ends and some speeds between: a glance, not a comparison over all speeds. */
function fewOf(slowest: number, fastest: number): readonly number[] {
  const grid = speedGrid(slowest, fastest)
  const stride = Math.max(1, Math.round((grid.length - 1) / 6))
  return grid.filter((_, i) => i % stride === 0)
}

function heldAt(
  [first, second]: readonly [CurveOverSpeed, CurveOverSpeed],
  speed: MetrePerSecond,
  { cancels, repeatability, betweenLaboratories }: HeldSetting,
): HeldNumber {
  const log = second.lnFriction(speed) - first.lnFriction(speed)
  const scatter = (curve: CurveOverSpeed): number => Math.max(curve.own(speed), repeatability ?? 0)
  const shared = (curve: CurveOverSpeed): number =>
    cancels ? 0 : Math.hypot(...sharedSources.map((source) => curve.shared(source, speed)))
  const between = cancels ? 0 : Math.SQRT2 * (betweenLaboratories ?? 0)
  const u = Math.hypot(scatter(first), scatter(second), shared(first), shared(second), between)
  const half = studentTQuantile(0.975, Number.POSITIVE_INFINITY) * u
  return {
    slidingSpeed: speed,
    first: Math.exp(first.lnFriction(speed)),
    second: Math.exp(second.lnFriction(speed)),
    difference: Math.expm1(log),
    low: Math.expm1(log - half),
    high: Math.expm1(log + half),
    en: half > 0 ? Math.abs(log) / half : log === 0 ? 0 : Number.POSITIVE_INFINITY,
  }
}
