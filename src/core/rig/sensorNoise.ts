import type { Random } from '../numeric/index.ts'

/** Noise of one channel in its SI unit. Undefined parts are zero. */
export interface SensorNoise {
  /** Standard deviation of the part that is new at every sample. */
  readonly white?: number
  /** Standard deviation of the part that remembers, an AR(1) series. */
  readonly correlated?: number
  /** Its correlation from one sample to the next, 0 … under 1. */
  readonly correlation?: number
  /** Step of the converter; readings are rounded to its multiples. */
  readonly resolution?: number
}

/** Makes a reading of a true value. The remembering part begins as if it had always run. */
export function createSensor(noise: SensorNoise | undefined, random: Random): (value: number) => number {
  if (noise === undefined) return (value) => value
  const white = notNegative('white', noise.white ?? 0)
  const correlated = notNegative('correlated', noise.correlated ?? 0)
  const resolution = notNegative('resolution', noise.resolution ?? 0)
  const correlation = noise.correlation ?? 0
  if (!(correlation >= 0 && correlation < 1)) {
    throw new RangeError(`correlation must be from 0 to under 1, got ${correlation}`)
  }
  const fresh = correlated * Math.sqrt(1 - correlation * correlation)
  let memory = correlated > 0 ? correlated * random.normal() : 0
  return (value) => {
    let reading = value
    if (white > 0) reading += white * random.normal()
    if (correlated > 0) {
      reading += memory
      memory = correlation * memory + fresh * random.normal()
    }
    return resolution > 0 ? Math.round(reading / resolution) * resolution : reading
  }
}

function notNegative(name: string, value: number): number {
  if (!(value >= 0)) throw new RangeError(`${name} must be zero or more, got ${value}`)
  return value
}
