import type { Metre } from '../terms/index.ts'
import { mustBePositive } from './refuse.ts'

/** A worn track on a level disc: a groove with the round section of the ball that wore it. */
export interface TrackScar {
  readonly trackRadius: Metre
  /** Width of the groove at the surface. */
  readonly width: Metre
  /** Of the ball or dome that wore it. */
  readonly endRadius: Metre
}

/**
 * Volume worn out of a track in m³, V = 2πR(r² asin(d/2r) − (d/4)√(4r² − d²)). ASTM G99, §9 (exact form; from memory). The
 * section is the difference of two nearly equal terms for a narrow groove, so it is summed as a series there. A level disc
 * only: on inclined plates each plate has a spot, not a ring.
 */
export function trackVolume({ trackRadius, width, endRadius }: TrackScar): number {
  checkTrack({ trackRadius, width, endRadius })
  return 2 * Math.PI * trackRadius * endRadius ** 2 * segment(width / (2 * endRadius))
}

/** The same by V = πRd³/(6r). ASTM G99, §9 (approximate form; from memory). */
export function trackVolumeApproximate({ trackRadius, width, endRadius }: TrackScar): number {
  checkTrack({ trackRadius, width, endRadius })
  return (Math.PI * trackRadius * width ** 3) / (6 * endRadius)
}

/** Volume of a track from the area of its section, m², as a profile gives it: V = 2πR·A. */
export function trackVolumeOfSection(section: number, trackRadius: Metre): number {
  mustBePositive(trackRadius, 'track radius', 'm')
  if (!Number.isFinite(section)) throw new RangeError(`section must be finite, got ${section} m²`)
  return 2 * Math.PI * trackRadius * section
}

/** asin x − x√(1 − x²), the area of a segment of the unit circle of half-chord x. */
function segment(x: number): number {
  if (x > 0.5) return Math.asin(x) - x * Math.sqrt(1 - x ** 2)
  // ∫ 2u²/√(1 − u²): terms 2·C(2k,k)/4ᵏ · x^(2k+3)/(2k+3).
  let power = 2 * x ** 3
  let sum = power / 3
  for (let k = 1; power > 1e-17 * sum; k++) {
    power *= (x ** 2 * (2 * k - 1)) / (2 * k)
    sum += power / (2 * k + 3)
  }
  return sum
}

function checkTrack({ trackRadius, width, endRadius }: TrackScar): void {
  mustBePositive(trackRadius, 'track radius', 'm')
  mustBePositive(endRadius, 'end radius', 'm')
  if (!(width >= 0 && width <= 2 * endRadius)) {
    throw new RangeError(`width must be no more than the end's own, ${2 * endRadius} m, got ${width} m`)
  }
}
