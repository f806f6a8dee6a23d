import type { Random } from '../numeric/index.ts'
import type { CurveScatter } from './curveScatter.ts'
import { RandomFrame } from './randomFrame.ts'

/** Weights of the samples' means, one a sample: (−1, 1) is the second less the first, (1) the mean of a single one. */
export type Contrast = readonly number[]

/** Which differences are judged together, and how many draws make the distribution. */
export interface MaxTDrawing {
  readonly contrasts: readonly Contrast[]
  readonly draws: number
  readonly random: Random
}

/**
 * Largest |t| over all places and contrasts that chance alone brings, as draws in rising order, where all samples share one
 * covariance over the grid, whatever that is. With normal replicates the means and the residual curves may be turned in the
 * space of the replicates without a change of their distribution (rotation tests: Langsrud 2005, Stat. Comput. 15:53). At each
 * place the ν residuals are a direction in that space, and |t| exceeds c where the direction of the mean comes close enough to it:
 * the chance is the volume of a tube around the path of directions (Hotelling 1939; Naiman 1986, Ann. Statist. 14:896). The path is
 * taken from the residuals, whose length is right on the average for any ν (Taylor & Worsley 2007, JASA 102:913), so that three
 * replicates do. Exact where all places move together: then it is Student's t. How well it holds elsewhere:
 * docs/decisions/simultaneous-band.md.
 */
export function maxTDraws(scatter: CurveScatter, { contrasts, draws, random }: MaxTDrawing): Float64Array {
  if (!(Number.isInteger(draws) && draws >= 40)) throw new RangeError(`draws must be 40 or more, got ${draws}`)
  const { counts, places, degreesOfFreedom } = scatter
  const loads = loadsOf(contrasts.map((contrast) => unitWeights(contrast, counts)))
  const frame = new RandomFrame(counts, loads[0].length)
  const directions = directionsOf(scatter)
  const parts = new Float64Array(frame.rank)
  const largest = new Float64Array(draws)
  for (let draw = 0; draw < draws; draw++) {
    frame.draw(random)
    let most = 0
    for (let i = 0; i < places; i++) {
      const left = 1 - frame.along(directions, i * frame.replicates, parts)
      for (const load of loads) {
        let along = 0
        for (let f = 0; f < parts.length; f++) along += load[f] * parts[f]
        const square = (along * along) / left
        if (square > most) most = square
      }
    }
    largest[draw] = Math.sqrt(degreesOfFreedom * most)
  }
  return largest.sort()
}

/** Residuals at each place as a direction, place after place; zeros where nothing scatters. */
function directionsOf({ places, residuals, deviation, degreesOfFreedom }: CurveScatter): Float64Array {
  const count = residuals.length
  const directions = new Float64Array(places * count)
  for (let i = 0; i < places; i++) {
    const length = deviation[i] * Math.sqrt(degreesOfFreedom)
    for (let k = 0; k < count; k++) directions[i * count + k] = length > 0 ? residuals[k][i] / length : 0
  }
  return directions
}

/** A contrast in units of the standard deviation of each mean, of length one. */
function unitWeights(contrast: Contrast, counts: readonly number[]): number[] {
  const weights = contrast.map((weight, s) => weight / Math.sqrt(counts[s]))
  const length = Math.hypot(...weights)
  if (!(contrast.length === counts.length && length > 0)) {
    throw new RangeError(`a contrast needs ${counts.length} weights that are not all zero, got ${contrast}`)
  }
  return weights.map((weight) => weight / length)
}

/** Coordinates of the contrasts in a basis of the space that they span (Gram and Schmidt). */
function loadsOf(weights: readonly (readonly number[])[]): number[][] {
  const basis: number[][] = []
  const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, i) => sum + value * b[i], 0)
  for (const weight of weights) {
    let rest = [...weight]
    for (const one of basis) {
      const share = dot(rest, one)
      rest = rest.map((value, i) => value - share * one[i])
    }
    const length = Math.hypot(...rest)
    if (length > 1e-9) basis.push(rest.map((value) => value / length))
  }
  if (basis.length === 0) throw new RangeError('maxT needs a contrast, got none')
  return weights.map((weight) => basis.map((one) => dot(weight, one)))
}
