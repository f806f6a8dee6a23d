import { monotoneInterpolant } from '../numeric/index.ts'
import type { Ratio } from '../terms/index.ts'
import { type LayerHold, layerKernel } from './layerKernel.ts'
import { pressedLayer, widestPressed } from './pressedLayer.ts'
import { mustNotBeNegative } from './refuse.ts'

/** The exact answer of one kind of layer, tabulated once so that inner loops may ask it often. */
export interface LayerTable {
  readonly poissonRatio: Ratio
  readonly hold: LayerHold
  /** F over Hertz' load at the same approach, at χ = √(Rδ)/h. */
  stiffening(chi: Ratio): Ratio
  /** Contact radius over √(Rδ), which is Hertz' own. */
  widening(chi: Ratio): Ratio
  /** χ up to which the table was solved; beyond it goes on as the power law of its end, as thin layers do. */
  readonly solvedTo: Ratio
}

const knots = 64

/** Solves a layer of a Poisson ratio at contacts up to 8 thicknesses and tabulates it (some 20 ms: keep what you get). */
export function layerTable(poissonRatio: Ratio, hold: LayerHold): LayerTable {
  const kernel = layerKernel(poissonRatio, hold)
  // Closer together where the curve bends most.
  const radii = Array.from({ length: knots }, (_, i) => widestPressed * ((i + 1) / knots) ** 1.5)
  const solved = radii.map((radius) => pressedLayer(radius, kernel))
  const chi = [0, ...solved.map((layer) => layer.chi)]
  const stiffening = alongTable(chi, [0, ...solved.map((layer) => Math.log(layer.stiffening))])
  const widening = alongTable(chi, [0, ...solved.map((layer, i) => Math.log(radii[i] / layer.chi))])
  return {
    poissonRatio,
    hold,
    stiffening: (at) => Math.exp(stiffening(at)),
    widening: (at) => Math.exp(widening(at)),
    solvedTo: chi[knots],
  }
}

/** Between the knots, and in log–log on with the last slope. */
function alongTable(chi: readonly number[], logs: readonly number[]): (at: number) => number {
  const inside = monotoneInterpolant(chi, logs)
  const end = chi[chi.length - 1]
  const slope = (logs[chi.length - 1] - logs[chi.length - 2]) / Math.log(end / chi[chi.length - 2])
  return (at) => {
    mustNotBeNegative(at, 'χ', '')
    return at <= end ? inside(at) : logs[chi.length - 1] + slope * Math.log(at / end)
  }
}
