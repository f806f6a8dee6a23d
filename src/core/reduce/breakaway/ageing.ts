import { linearLeastSquares } from '../../numeric/index.ts'
import { printQuantity } from '../../quantity/index.ts'
import type { Ageing, Bounded } from '../../terms/index.ts'
import { type HeldFit, SeparableProfile } from '../profile/separableProfile.ts'

/** One start as the ageing law sees it. */
export interface AgedStart {
  readonly dwell: number
  readonly staticFriction: number
  readonly uncertainty: number
}

/** Starts and different dwells that a law with three parameters needs. */
const fewest = { starts: 5, dwells: 3 } as const

/** Dwells that differ by less than this share count as one. */
const sameDwell = 0.05

/**
 * µ_s = µ₀ + β·ln(1 + t/τ) through the starts that moved, each weighed by its own uncertainty and a scatter between starts
 * that is found along the way (Mandel & Paule 1982); intervals from the profile over τ. The logarithmic law is that of
 * rest time in rock and metal friction (Dieterich 1972, from memory). Or why there is none.
 */
export function ageingOf(starts: readonly AgedStart[]): Ageing | string {
  const aged = starts.filter(({ dwell }) => dwell > 0)
  const dwells = differentDwells(aged.map(({ dwell }) => dwell))
  if (aged.length < fewest.starts || dwells.length < fewest.dwells) {
    return `An ageing law needs ${fewest.starts} starts that moved after ${fewest.dwells} different dwells; there are ${aged.length} after ${dwells.length}.`
  }
  const times = logGrid(dwells[0] / 30, dwells[dwells.length - 1], 80)
  let scatter = 0
  let fits = fitsAt(aged, times, scatter)
  const freedom = aged.length - 3
  // The scatter that makes χ² equal to its freedom, by halving.
  if (leastOf(fits) > freedom) {
    let [low, high] = [0, spreadOf(aged)]
    for (let i = 0; i < 40; i++) {
      scatter = (low + high) / 2
      fits = fitsAt(aged, times, scatter)
      if (leastOf(fits) > freedom) low = scatter
      else high = scatter
    }
  }
  const profile = new SeparableProfile(fits, freedom)
  const slope = profile.combination(() => [0, 1])
  const level = profile.combination(() => [1, 0])
  const grows = (slope.low ?? 0) > 0 ? 'yes' : (slope.high ?? 0) < 0 ? 'no' : 'cannotTell'
  return {
    level,
    slope,
    time: profile.held(0),
    scatter,
    starts: aged.length,
    grows,
    sentence: sentenceOf(slope, grows, [dwells[0], dwells[dwells.length - 1]]),
  }
}

function fitsAt(starts: readonly AgedStart[], times: readonly number[], scatter: number): HeldFit[] {
  const weights = starts.map(({ uncertainty }) => 1 / Math.max(Math.hypot(uncertainty, scatter), 1e-12))
  return times.map((time) => {
    const grown = starts.map(({ dwell }, i) => weights[i] * Math.log1p(dwell / time))
    const response = starts.map(({ staticFriction }, i) => weights[i] * staticFriction)
    const { coefficients, residualSumOfSquares, inverseGram } = linearLeastSquares([weights, grown], response)
    return { at: [time], squares: residualSumOfSquares, coefficients, gram: inverseGram }
  })
}

const leastOf = (fits: readonly HeldFit[]): number => Math.min(...fits.map(({ squares }) => squares))

function spreadOf(starts: readonly AgedStart[]): number {
  const values = starts.map(({ staticFriction }) => staticFriction)
  return 10 * (Math.max(...values) - Math.min(...values)) + 1e-9
}

function differentDwells(dwells: readonly number[]): number[] {
  const sorted = [...dwells].sort((a, b) => a - b)
  return sorted.filter((dwell, i) => i === 0 || dwell > sorted[i - 1] * (1 + sameDwell))
}

const logGrid = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)))

function sentenceOf(slope: Bounded, grows: Ageing['grows'], [short, long]: readonly [number, number]): string {
  const perDecade = (value: number | null): string =>
    value === null ? 'open' : printQuantity(value * Math.LN10, 'ratio', { digits: 2, unit: '1' })
  const seen = `${perDecade(slope.value)} per decade of rest (95 % from ${perDecade(slope.low)} to ${perDecade(slope.high)})`
  const over = `from ${printQuantity(short, 'time', { digits: 2 })} to ${printQuantity(long, 'time', { digits: 2 })}`
  switch (grows) {
    case 'yes':
      return `Static friction grows with the time at rest: by ${seen}, ${over}.`
    case 'no':
      return `Static friction falls with the time at rest: by ${seen}, ${over}.`
    case 'cannotTell':
      return `Whether static friction grows with the time at rest cannot be told: ${seen}, ${over}.`
  }
}
