import { capDepth, capVolume, capVolumeApproximate } from '../../contact/index.ts'
import { percentileOfSorted, randomFrom } from '../../numeric/index.ts'
import { chiSquaredUpper } from '../../stats/index.ts'
import type { Interval, Metre, Ratio, ScarReading } from '../../terms/index.ts'

/** One worn flat on a ball or dome. Volumes in m³. */
export interface Scar {
  /** Mean of both readings. */
  readonly diameter: Metre
  readonly uncertainty: Metre
  /** Larger over smaller reading. */
  readonly outOfRound: Ratio
  readonly depth: Metre
  /** V = (πh/6)(3d²/4 + h²). */
  readonly volume: Interval
  /** V = πd⁴/(64R). */
  readonly approximate: number
}

/** All scars of a test. */
export interface ScarWear {
  readonly scars: readonly Scar[]
  /** Standard uncertainty of one reading, as it was used. */
  readonly readingUncertainty: Metre
  /** Sum over the scars that were read, m³. */
  readonly volume: Interval
  readonly approximate: number
  /** Standard uncertainty of the sum. */
  readonly uncertainty: number
  /** How unlike the scars are: largest over smallest volume, and the probability of seeing that from alike ones. null for one scar. */
  readonly unlike: { readonly ratio: Ratio; readonly probability: Ratio; readonly shares: readonly Ratio[] } | null
}

/** Standard uncertainty of a reading under a usual microscope where nobody said. Common practice, no source. */
export const usualReadingUncertainty: Metre = 5e-6

const draws = 4000

/**
 * Caps worn off balls of radius `radius`. ASTM G99, §9 (both forms from memory). Volume goes with the fourth power of the diameter, so
 * its interval is not even about it: that of one scar is the interval of its diameter carried over, that of the sum comes from draws
 * (JCGM 101).
 */
export function scarWear(
  readings: readonly ScarReading[],
  { radius, uncertainty = usualReadingUncertainty, seed }: { radius: Metre; uncertainty?: Metre; seed: number },
): ScarWear | undefined {
  if (readings.length === 0) return undefined
  const scars = readings.map((reading) => scarOf(reading, radius, uncertainty))
  const random = randomFrom(seed, 101)
  const sums = Float64Array.from({ length: draws }, () =>
    scars.reduce(
      (sum, { diameter, uncertainty: u }) => sum + capVolume(held(diameter + u * random.normal(), radius), radius),
      0,
    ),
  ).sort()
  const value = scars.reduce((sum, { volume }) => sum + volume.value, 0)
  const mean = sums.reduce((a, b) => a + b, 0) / draws
  return {
    scars,
    readingUncertainty: uncertainty,
    volume:
      scars.length === 1
        ? scars[0].volume
        : { value, low: percentileOfSorted(sums, 0.025), high: percentileOfSorted(sums, 0.975) },
    approximate: scars.reduce((sum, { approximate }) => sum + approximate, 0),
    uncertainty: Math.sqrt(sums.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (draws - 1)),
    unlike: unlikeness(scars),
  }
}

const held = (diameter: Metre, radius: Metre): Metre => Math.min(2 * radius, Math.max(0, diameter))

function scarOf({ along, across }: ScarReading, radius: Metre, reading: Metre): Scar {
  const diameter = (along + across) / 2
  // One reading typed twice is still one reading.
  const uncertainty = along === across ? reading : reading / Math.SQRT2
  const volumeAt = (d: Metre): number => capVolume(held(d, radius), radius)
  return {
    diameter,
    uncertainty,
    outOfRound: Math.max(along, across) / Math.min(along, across),
    depth: capDepth(diameter, radius),
    volume: {
      value: volumeAt(diameter),
      low: volumeAt(diameter - normal95 * uncertainty),
      high: volumeAt(diameter + normal95 * uncertainty),
    },
    approximate: capVolumeApproximate(diameter, radius),
  }
}

const normal95 = 1.959963984540054

/** χ² of the diameters about their weighted mean: could scars of one size have been read so? */
function unlikeness(scars: readonly Scar[]): ScarWear['unlike'] {
  if (scars.length < 2) return null
  const weights = scars.map(({ uncertainty }) => 1 / uncertainty ** 2)
  const total = weights.reduce((a, b) => a + b, 0)
  const mean = scars.reduce((sum, { diameter }, i) => sum + weights[i] * diameter, 0) / total
  const squares = scars.reduce((sum, { diameter }, i) => sum + weights[i] * (diameter - mean) ** 2, 0)
  const volumes = scars.map(({ volume }) => volume.value)
  const sum = volumes.reduce((a, b) => a + b, 0)
  return {
    ratio: Math.max(...volumes) / Math.min(...volumes),
    probability: chiSquaredUpper(squares, scars.length - 1),
    shares: volumes.map((volume) => volume / sum),
  }
}
