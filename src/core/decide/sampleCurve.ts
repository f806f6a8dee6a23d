import { percentileOfSorted, randomFrom } from '../numeric/index.ts'
import { curveScatter, maxTDraws } from '../stats/judging/index.ts'
import { type MetrePerSecond, type SampleCurve, sharedSources } from '../terms/index.ts'
import type { CompareOptions } from './decideDefaults.ts'
import { repeatabilityOf } from './repeatabilityOf.ts'
import { replicateFlags } from './replicateFlags.ts'
import { inFriction, inScale } from './scale.ts'
import type { JudgedReplicate } from './usedReplicates.ts'

interface Sampled {
  readonly name: string
  readonly replicates: readonly JudgedReplicate[]
  readonly speeds: readonly MetrePerSecond[]
}

/** Mean, band and scatter of the replicates of one sample on the grid, with what stands out. */
export function sampleCurve({ name, replicates, speeds }: Sampled, options: CompareOptions): SampleCurve {
  const used = replicates.filter(({ removed }) => removed === null)
  const curves = used.map(({ curve }) => inScale(curve, speeds, options.scale))
  const band = bandOf(curves, options)
  const h = curves.map((curve) => hOf(curve, band))
  const flags = replicateFlags({ names: used.map(({ replicate }) => replicate.name), curves, h, speeds })
  const mean = Array.from(band.mean, (value) => inFriction(value, options.scale))
  const ln = used.map(({ curve }) => inScale(curve, speeds, 'ratio'))
  return {
    sample: name,
    replicates: replicates.map((one) => {
      const place = used.indexOf(one)
      return {
        ...drawn(one, speeds),
        h: place < 0 ? [] : h[place],
        flags: place < 0 ? [] : flags[place],
      }
    }),
    used: used.length,
    mean,
    low: band.half === null ? null : ends(band.mean, band.half, -1).map((value) => inFriction(value, options.scale)),
    high: band.half === null ? null : ends(band.mean, band.half, 1).map((value) => inFriction(value, options.scale)),
    own: speeds.map((speed, i) => (mean[i] * Math.hypot(...used.map(({ curve }) => curve.own(speed)))) / used.length),
    shared: speeds.map(
      (speed, i) => mean[i] * Math.hypot(...sharedSources.map((source) => sharedOf(used, source, speed))),
    ),
    repeatability: used.length < 2 ? null : repeatabilityOf(curveScatter([ln])),
  }
}

/** A source of all replicates together: it does not shrink by their number. */
export const sharedOf = (
  used: readonly JudgedReplicate[],
  source: (typeof sharedSources)[number],
  speed: MetrePerSecond,
): number => used.reduce((sum, { curve }) => sum + curve.shared(source, speed), 0) / used.length

function drawn({ replicate, curve, removed }: JudgedReplicate, speeds: readonly MetrePerSecond[]) {
  const held = speeds.filter((speed) => speed >= curve.slowest / 1.02 && speed <= curve.fastest * 1.02)
  // A replicate that was taken out may end before the others do.
  const inside = (speed: number): boolean => held.includes(speed)
  const friction = speeds.map((speed) => (inside(speed) ? Math.exp(curve.lnFriction(speed)) : Number.NaN))
  const own = speeds.map((speed, i) => friction[i] * curve.own(speed))
  return { record: replicate.record, name: replicate.name, removed, friction, own }
}

interface Band {
  readonly mean: Float64Array
  readonly deviation: Float64Array | null
  readonly half: Float64Array | null
}

function bandOf(curves: readonly Float64Array[], { draws, seed }: CompareOptions): Band {
  if (curves.length < 2) return { mean: curves[0], deviation: null, half: null }
  const scatter = curveScatter([curves])
  const largest = maxTDraws(scatter, { contrasts: [[1]], draws, random: randomFrom(seed) })
  const factor = percentileOfSorted(largest, 0.95) / Math.sqrt(curves.length)
  return { mean: scatter.means[0], deviation: scatter.deviation, half: scatter.deviation.map((d) => d * factor) }
}

const ends = (mean: Float64Array, half: Float64Array, sign: 1 | -1): number[] =>
  Array.from(mean, (value, i) => value + sign * half[i])

function hOf(curve: Float64Array, { mean, deviation }: Band): number[] {
  if (deviation === null) return []
  return Array.from(curve, (value, i) => (deviation[i] > 0 ? (value - mean[i]) / deviation[i] : 0))
}
