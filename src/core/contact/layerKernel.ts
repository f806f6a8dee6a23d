import { gaussLegendre } from '../numeric/index.ts'
import type { Ratio } from '../terms/index.ts'
import { mustBePoissonRatio } from './refuse.ts'

/** How a layer lies on its rigid base: stuck to it, or free to slide on it. */
export type LayerHold = 'bonded' | 'sliding'

/**
 * 1 − L(s): by how much a layer gives way less than a half-space to a ripple of wave number s/h. Bonded: L = (2κ sinh 2s − 4s)/
 * (2κ cosh 2s + 1 + κ² + 4s²) with κ = 3 − 4ν (Hayes et al. 1972, J. Biomech. 5:541); sliding: L = (cosh 2s − 1)/(sinh 2s + 2s),
 * whatever ν. Both from memory; written without large exponentials and without the difference to 1.
 */
export function layerCompliance(s: number, poissonRatio: Ratio, hold: LayerHold): number {
  const decay = Math.exp(-2 * s)
  if (hold === 'sliding') {
    if (s < 1e-4) return 1 - s / 2
    return (2 * decay * (2 * s + 1 - decay)) / (1 - decay ** 2 + 4 * s * decay)
  }
  const kappa = 3 - 4 * poissonRatio
  const rest = 1 + kappa ** 2 + 4 * s ** 2
  return (2 * kappa * decay ** 2 + (rest + 4 * s) * decay) / (kappa * (1 + decay ** 2) + rest * decay)
}

/** Values of 1 − L with their places and weights, for integrals over all wave numbers. */
export interface LayerKernel {
  readonly waveNumbers: Float64Array
  /** (2/π)·(1 − L)·weight */
  readonly strengths: Float64Array
}

/** Beyond this wave number 1 − L is under 1e-11. */
const cut = 16
/** Enough for cosines of contacts up to 8 thicknesses wide. */
const places = 192

/** The kernel of a layer, ready for `pressedLayer`. */
export function layerKernel(poissonRatio: Ratio, hold: LayerHold): LayerKernel {
  mustBePoissonRatio(poissonRatio)
  const { nodes, weights } = gaussLegendre(places, [0, cut])
  return {
    waveNumbers: nodes,
    strengths: weights.map((weight, i) => (2 / Math.PI) * weight * layerCompliance(nodes[i], poissonRatio, hold)),
  }
}
