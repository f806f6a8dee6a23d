import { capDepthOfVolume, type SphereOnFlat, scarDiameterOfDepth, wornContact } from '../../contact/index.ts'
import type { Interval, Metre, MetrePerSecond, Newton, Pascal } from '../../terms/index.ts'
import type { SlidHistory } from './slidHistory.ts'

/** The contact when a step was half done. */
export interface PressureStep {
  readonly step: number
  readonly slidingSpeed: MetrePerSecond
  /** Slid since the surfaces were fresh. */
  readonly distance: Metre
  /** Diameter of the worn flat, if wear goes with load and distance. */
  readonly scar: Interval
  /** Mean pressure over the larger of flat and elastic contact; its interval is that of the scar that was read. */
  readonly pressure: Interval
  /** The same if all wear had come at once at the beginning, and if there were none. */
  readonly ifAtOnce: Pascal
  readonly ifFresh: Pascal
  /** Width of the contact that carries the load. */
  readonly width: Metre
  readonly patch: 'elastic' | 'worn'
}

/** What the scars of one contact were at the end, and how far it had slid before the record. */
export interface FinalScar {
  /** Volume of one contact, m³. */
  readonly volume: Interval
  readonly ballRadius: Metre
  readonly sphere: SphereOnFlat
  readonly distanceBefore: Metre
  /** Normal load on one contact. */
  readonly load: Newton
}

/**
 * Pressure over the test from the scar at its end: worn volume grows with ∫W ds from nothing (Archard), the flat follows from the volume, and the
 * pressure is that over the flat once it is wider than the elastic contact. Between all wear at once and none at all lies the truth,
 * whatever the law of wear.
 */
export function pressureHistory(
  final: FinalScar,
  slid: SlidHistory,
  speeds: ReadonlyMap<number, MetrePerSecond>,
): readonly PressureStep[] {
  const { load, sphere, ballRadius } = final
  const before = final.distanceBefore * slid.load
  const whole = before + slid.work
  if (!(whole > 0 && load > 0)) return []
  const pressureAt = (diameter: Metre) => wornContact(load, sphere, { diameter, ballRadius })
  const diameterOf = (volume: number): Metre =>
    scarDiameterOfDepth(capDepthOfVolume(Math.max(0, volume), ballRadius), ballRadius)
  const fresh = pressureAt(1e-12)
  const atOnce = pressureAt(diameterOf(final.volume.value)).meanPressure
  const elasticWidth = Math.sqrt((4 * load) / (Math.PI * fresh.meanPressure))
  return slid.steps.flatMap(({ step, distance, work }): readonly PressureStep[] => {
    const slidingSpeed = speeds.get(step)
    if (slidingSpeed === undefined) return []
    const share = (before + work) / whole
    const [value, low, high] = [final.volume.value, final.volume.low, final.volume.high].map((v) =>
      diameterOf(v * share),
    )
    const [now, most, least] = [value, low, high].map((diameter) => pressureAt(Math.max(1e-12, diameter)))
    return [
      {
        step,
        slidingSpeed,
        distance: final.distanceBefore + distance,
        scar: { value, low, high },
        pressure: { value: now.meanPressure, low: least.meanPressure, high: most.meanPressure },
        ifAtOnce: atOnce,
        ifFresh: fresh.meanPressure,
        width: Math.max(elasticWidth, value),
        patch: now.patch,
      },
    ]
  })
}
