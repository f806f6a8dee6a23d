import { gaussLegendre, solveSymmetric } from '../numeric/index.ts'
import type { Ratio } from '../terms/index.ts'
import type { LayerKernel } from './layerKernel.ts'

/** A layer under a rigid, smooth sphere, in units of the layer's thickness h. */
export interface PressedLayer {
  /** χ = √(Rδ)/h. */
  readonly chi: Ratio
  /** Load over that of Hertz at the same approach. */
  readonly stiffening: Ratio
}

/** Widest contact, in thicknesses, for which places of quadrature and kernel are enough. */
export const widestPressed = 8

/**
 * Exact small-strain answer at a contact radius of `radius` thicknesses. The pressure's Hankel transform is written as
 * P(ξ) = ∫₀ᵃ θ(t) cos ξt dt, which makes θ − ∫K θ = δ − t²/R with K = (2/π)∫(1 − L) cos st cos sτ ds (Lebedev & Ufliand
 * 1958; derived anew). θ(a) = 0, as the pressure runs out at the edge, gives the approach; the load is 2π∫θ.
 *
 * @param points of the quadrature across the contact
 */
export function pressedLayer(
  radius: Ratio,
  kernel: LayerKernel,
  points: number = 12 + 4 * Math.ceil(radius),
): PressedLayer {
  if (!(radius > 0 && radius <= widestPressed)) {
    throw new RangeError(`contact radius must be more than 0 and at most ${widestPressed} thicknesses, got ${radius}`)
  }
  const { nodes, weights } = gaussLegendre(points, [0, radius])
  const waves = Array.from([...nodes, radius], (t) => kernel.waveNumbers.map((s) => Math.cos(s * t)))
  const between = (i: number, j: number): number => dot(kernel.strengths, waves[i], waves[j])
  const roots = weights.map(Math.sqrt)
  const matrix = new Float64Array(points ** 2)
  for (let i = 0; i < points; i++) {
    for (let j = 0; j <= i; j++) matrix[i * points + j] = (i === j ? 1 : 0) - roots[i] * roots[j] * between(i, j)
  }
  const toEdge = roots.map((root, i) => root * between(points, i))
  /** Integral over the contact and value at its edge of the answer to one right-hand side. */
  const solve = (push: (t: number) => number): { readonly sum: number; readonly edge: number } => {
    const right = nodes.map((t, i) => roots[i] * push(t))
    const answer = solveSymmetric(matrix, right)
    if (answer === undefined) throw new Error(`layer pressed over ${radius} thicknesses could not be solved`)
    return { sum: total(roots, answer), edge: push(radius) + total(toEdge, answer) }
  }
  const flat = solve(() => 1)
  const round = solve((t) => t * t)
  const chiSquared = round.edge / flat.edge
  const chi = Math.sqrt(chiSquared)
  return { chi, stiffening: (1.5 * (chiSquared * flat.sum - round.sum)) / (chiSquared * chi) }
}

function dot(weights: Float64Array, a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let k = 0; k < weights.length; k++) sum += weights[k] * a[k] * b[k]
  return sum
}

function total(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i]
  return sum
}
