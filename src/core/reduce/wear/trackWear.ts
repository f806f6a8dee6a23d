import { trackVolume, trackVolumeApproximate, trackVolumeOfSection } from '../../contact/index.ts'
import { studentTQuantile } from '../../stats/index.ts'
import type { Interval, Metre } from '../../terms/index.ts'

/** What a track lost, m³, by its profiles or by its width. */
export interface TrackWear {
  readonly from: 'sections' | 'width'
  readonly volume: Interval
  readonly uncertainty: number
  /** By the width: V = πRd³/(6r); null from profiles, which need no form. */
  readonly approximate: number | null
  /** Mean area of the profiles, m²; null from the width. */
  readonly section: number | null
}

const normal95 = 1.959963984540054

/**
 * Volume of a track from areas of profiles across it: mean area × 2πR. With two profiles or more their scatter counts (Student's t);
 * a stated uncertainty of one reading counts where it is larger, and alone for a single profile.
 */
export function trackWearOfSections(
  sections: readonly number[],
  trackRadius: Metre,
  readingUncertainty: number | undefined,
): TrackWear | undefined {
  if (sections.length === 0) return undefined
  const count = sections.length
  const section = sections.reduce((a, b) => a + b, 0) / count
  const scatter =
    count < 2 ? 0 : Math.sqrt(sections.reduce((sum, area) => sum + (area - section) ** 2, 0) / (count - 1) / count)
  const reading = (readingUncertainty ?? 0) / Math.sqrt(count)
  const half = Math.max(count < 2 ? 0 : studentTQuantile(0.975, count - 1) * scatter, normal95 * reading)
  const per = trackVolumeOfSection(1, trackRadius)
  return {
    from: 'sections',
    volume: { value: per * section, low: per * (section - half), high: per * (section + half) },
    uncertainty: per * Math.max(scatter, reading),
    approximate: null,
    section,
  }
}

/** Volume of a track that a ball wore to its own shape, from the width alone. ASTM G99, §9 (from memory). */
export function trackWearOfWidth(
  { width, uncertainty }: { readonly width: Metre; readonly uncertainty: Metre },
  { trackRadius, endRadius }: { readonly trackRadius: Metre; readonly endRadius: Metre },
): TrackWear {
  const at = (wide: Metre): number =>
    trackVolume({ trackRadius, endRadius, width: Math.min(2 * endRadius, Math.max(0, wide)) })
  const [value, low, high] = [width, width - normal95 * uncertainty, width + normal95 * uncertainty].map(at)
  return {
    from: 'width',
    volume: { value, low, high },
    uncertainty: (high - low) / (2 * normal95),
    approximate: trackVolumeApproximate({ trackRadius, endRadius, width }),
    section: null,
  }
}
