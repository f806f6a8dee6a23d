import { seriesOf } from '../../core/curve/index.ts'
import { type Random, randomFrom } from '../../core/numeric/index.ts'
import { gasConstant } from '../../core/rig/index.ts'
import { type Life, weibullFit } from '../../core/stats/judging/index.ts'
import type { Bounded, SeriesAxis, SeriesMember } from '../../core/terms/index.ts'
import type { CoverageMark } from '../coverRun.ts'

/** Rows of the table, in order. */
export const seriesGroups = [
  'load exponent at one speed',
  'load exponent over all speeds',
  'intercept of friction force',
  'energy of temperature at one speed',
  'energy of temperature over all speeds',
] as const

/** Rows of the table, in order. */
export const livesGroups = ['shape of lives', 'life of 63 %', 'life of 10 %', 'life of 50 %'] as const

const between = (random: Random, low: number, high: number): number => low + (high - low) * random.uniform()

const mark = (group: string, truth: number, found: Bounded | null | undefined): CoverageMark => ({
  group,
  inside: found == null || found.low === null || found.high === null ? null : found.low <= truth && truth <= found.high,
})

/** Four to seven records, each with a scatter of its own that moves all of its speeds, and points with noise of their own. */
export function coverSeries(seed: number, index: number): CoverageMark[] {
  const random = randomFrom(seed, index)
  const count = 4 + random.integer(4)
  const scatter = between(random, 0.005, 0.05)
  const own = between(random, 0.001, 0.02)
  const made = {
    exponent: between(random, -0.1, 0.5),
    energy: between(random, -2e4, 4e4),
    force: between(random, -0.1, 0.3),
  }
  const record = (axis: SeriesAxis, lnLaw: (place: number) => number): SeriesMember[] =>
    Array.from({ length: count }, (_, i) => {
      const place = axis === 'load' ? 2 ** i : 290 + 12 * i
      const effect = scatter * random.normal()
      const points = [1e-3, 3e-3, 1e-2, 3e-2, 0.1].map((slidingSpeed, k) => ({
        slidingSpeed,
        friction: 0.2 * 0.8 ** k * Math.exp(lnLaw(place) + effect + own * random.normal()),
        ownUncertainty: own,
      }))
      const conditions =
        axis === 'load' ? { axialForce: place, temperature: null } : { axialForce: 5, temperature: place }
      return { name: `${i}`, ...conditions, load: place, viscosity: null, points, forceZero: 0 }
    })
  const load = seriesOf(
    'load',
    record('load', (force) => -made.exponent * Math.log(force)),
  )
  const warm = seriesOf(
    'temperature',
    record('temperature', (kelvin) => made.energy / (gasConstant * kelvin)),
  )
  const sticky = seriesOf(
    'load',
    record('load', (force) => Math.log(1 + made.force / force)),
  )
  return [
    ...load.atSpeeds.map((law) => mark(seriesGroups[0], made.exponent, law)),
    mark(seriesGroups[1], made.exponent, load.overall),
    ...sticky.intercepts.map(({ intercept }, k) => mark(seriesGroups[2], 0.2 * 0.8 ** k * made.force, intercept)),
    ...warm.atSpeeds.map((law) => mark(seriesGroups[3], made.energy, law)),
    mark(seriesGroups[4], made.energy, warm.overall),
  ]
}

/** Six to thirty lives from a Weibull law, watched up to a distance by which a half to all have failed. */
export function coverLives(seed: number, index: number): CoverageMark[] {
  const random = randomFrom(seed, index)
  const count = 6 + random.integer(25)
  const [shape, scale] = [between(random, 0.7, 5), 10]
  const watched = scale * (-Math.log(between(random, 0.02, 0.5))) ** (1 / shape)
  const lives = Array.from({ length: count }, (): Life => {
    const at = scale * (-Math.log(1 - random.uniform())) ** (1 / shape)
    return { at: Math.min(at, watched), failed: at <= watched }
  })
  const fit = weibullFit(lives)
  const quantile = (share: number): number => scale * (-Math.log1p(-share)) ** (1 / shape)
  return [
    mark(livesGroups[0], shape, fit?.shape),
    mark(livesGroups[1], scale, fit?.scale),
    mark(livesGroups[2], quantile(0.1), fit?.quantile(0.1)),
    mark(livesGroups[3], quantile(0.5), fit?.quantile(0.5)),
  ]
}
