import { capVolume } from '../../contact/index.ts'
import { studentTQuantile } from '../../stats/index.ts'
import type { Interval, Metre, Point, Ratio } from '../../terms/index.ts'
import type { FinalScar, PressureStep } from './pressureHistory.ts'
import type { SlidHistory } from './slidHistory.ts'

/** Did wear move the pressure, and with it the regimes, while the curve was drawn? */
export interface MovedByWear {
  /**
   * `no`: even the upper end of the scar is no wider than the elastic contact. `little`: pressure changed, surely by less than the
   * limit. `yes`: by more. `cannotTell`: the interval of the scar allows both, or nothing was read.
   */
  readonly verdict: 'no' | 'little' | 'yes' | 'cannotTell'
  /** Pressure of the last step over that of the first, by load and distance. */
  readonly pressure: Interval | null
  /** Pressure of the fresh contact over that at the end. */
  readonly fall: Ratio | null
  /** Factor on the speed of a regime boundary from the first to the last step, if it keeps to ηv/(pL) and to ηv/p. */
  readonly boundary: { readonly byWidth: Ratio; readonly byPressure: Ratio } | null
  /** First step whose flat is wider than the elastic contact; null where none is. */
  readonly wornFrom: number | null
  /** Distance after which the flat is as wide as the elastic contact, at the rate that was seen. */
  readonly elasticFor: Metre | null
  /** Running in before the sweep that would keep the change of pressure within the limit. */
  readonly runInFor: Metre | null
  /** Friction of later over earlier steps at equal speed; null where no speed comes twice. */
  readonly repeats: { readonly pairs: number; readonly ratio: Interval } | null
}

/** Change of pressure over a sweep that is let pass. Ours. */
export const pressureLimit: Ratio = 0.1

/** The answer from the pressure history; without one, from repeated speeds alone. */
export function movedByWear(
  history: readonly PressureStep[],
  final: FinalScar | undefined,
  { slid, points }: { readonly slid: SlidHistory; readonly points: readonly Point[] },
): MovedByWear {
  const repeats = repeatedSpeeds(points)
  const first = history[0]
  const last = history[history.length - 1]
  if (first === undefined || last === undefined || final === undefined) {
    const nothing = { pressure: null, fall: null, boundary: null, wornFrom: null, elasticFor: null, runInFor: null }
    return { verdict: 'cannotTell', ...nothing, repeats }
  }
  const pressure = {
    value: last.pressure.value / first.pressure.value,
    low: last.pressure.low / first.pressure.low,
    high: last.pressure.high / first.pressure.high,
  }
  const ends = { low: Math.min(pressure.low, pressure.high), high: Math.max(pressure.low, pressure.high) }
  const elastic = Math.sqrt((4 * final.load) / (Math.PI * last.ifFresh))
  const rate = final.volume.value / (final.distanceBefore + slid.distance)
  return {
    verdict: verdictOf(last, elastic, ends),
    pressure: { value: pressure.value, ...ends },
    fall: last.ifFresh / last.pressure.value,
    boundary: { byWidth: first.width / last.width, byPressure: pressure.value },
    wornFrom: history.find(({ patch }) => patch === 'worn')?.step ?? null,
    elasticFor: rate > 0 ? capVolume(elastic, final.ballRadius) / rate : null,
    runInFor: rate > 0 ? runIn(slid.distance) : null,
    repeats,
  }
}

function verdictOf(
  last: PressureStep,
  elastic: Metre,
  ends: { readonly low: number; readonly high: number },
): MovedByWear['verdict'] {
  if (last.scar.high <= elastic) return 'no'
  if (ends.high < 1 - pressureLimit) return 'yes'
  return ends.low >= 1 - pressureLimit ? 'little' : 'cannotTell'
}

/** V ∝ s makes d ∝ s^¼ and p ∝ s^−½: (s₀/(s₀ + S))^½ = 1 − limit. */
const runIn = (sweep: Metre): Metre => (sweep * (1 - pressureLimit) ** 2) / (1 - (1 - pressureLimit) ** 2)

/** Later over earlier friction at speeds within 1 % of each other; scatter between the pairs counts, and own uncertainty where it is larger. */
function repeatedSpeeds(points: readonly Point[]): MovedByWear['repeats'] {
  const usable = points.filter(
    ({ friction, ownUncertainty }) => friction !== null && friction > 0 && ownUncertainty !== null,
  )
  const pairs = usable.flatMap((late, i) => {
    const early = usable.slice(0, i).find((one) => Math.abs(one.slidingSpeed / late.slidingSpeed - 1) < 0.01)
    if (early?.friction == null || late.friction === null) return []
    const relative = ({ friction, ownUncertainty }: Point): number => (ownUncertainty ?? 0) / (friction ?? Number.NaN)
    return [{ log: Math.log(late.friction / early.friction), variance: relative(early) ** 2 + relative(late) ** 2 }]
  })
  if (pairs.length === 0) return null
  const mean = pairs.reduce((sum, { log }) => sum + log, 0) / pairs.length
  const own = Math.sqrt(pairs.reduce((sum, { variance }) => sum + variance, 0)) / pairs.length
  const scatter =
    pairs.length < 3
      ? 0
      : Math.sqrt(pairs.reduce((sum, { log }) => sum + (log - mean) ** 2, 0) / (pairs.length - 1) / pairs.length)
  const half = Math.max(1.96 * own, pairs.length < 3 ? 0 : studentTQuantile(0.975, pairs.length - 1) * scatter)
  return {
    pairs: pairs.length,
    ratio: { value: Math.exp(mean), low: Math.exp(mean - half), high: Math.exp(mean + half) },
  }
}
