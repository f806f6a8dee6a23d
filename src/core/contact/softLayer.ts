import { findRoot } from '../numeric/index.ts'
import {
  doubtAbove,
  doubtsFound,
  type Explained,
  type Metre,
  type Newton,
  type Pascal,
  type Ratio,
} from '../terms/index.ts'
import { hertzApproach, hertzLoad } from './hertz.ts'
import { bondedAsPublished, bondedCorrected, seriesStiffening, unbondedAsPublished } from './layerSeries.ts'
import type { LayerTable } from './layerTable.ts'
import { mustBePositive } from './refuse.ts'
import { largeStrain } from './sphereDoubts.ts'

/** A soft layer on a rigid base under a rigid ball. */
export interface SoftLayer {
  readonly ballRadius: Metre
  readonly thickness: Metre
  readonly elasticModulus: Pascal
  /** Solved for the layer's Poisson ratio and for how it lies on its base, see `layerTable`. */
  readonly table: LayerTable
  /** Modulus of the ball, to see whether it counts as rigid. */
  readonly ballModulus?: Pascal
  /** Modulus of what lies under the layer. */
  readonly baseModulus?: Pascal
}

/** How deep one law lets the ball sink. */
export interface LayerAnswer {
  readonly law: string
  readonly source: string
  readonly approach: Metre
}

/** A ball on a soft layer, by the law that fits best and by the others that are in use. */
export interface SoftLayerContact extends Explained {
  readonly approach: Metre
  readonly contactRadius: Metre
  readonly meanPressure: Pascal
  /** χ = √(Rδ)/h. */
  readonly chi: Ratio
  /** Load over that of a layer without a base, at the same approach. */
  readonly stiffening: Ratio
  /** dF/dδ in N/m. */
  readonly stiffness: number
  readonly others: readonly LayerAnswer[]
}

/** χ up to which the corrected series keeps within 0.7 % of the exact answer. */
const seriesLimit = 0.5

interface Law {
  readonly law: string
  readonly source: string
  readonly factor: (chi: Ratio) => Ratio
}

const exact = (table: LayerTable): Law => ({
  law: 'exact small-strain solution of a layer on a rigid base, solved here',
  source: 'integral equation with the layer’s kernel (Hayes et al. 1972, J. Biomech. 5:541; from memory); own solution',
  factor: table.stiffening,
})

const bondedLaws: readonly [corrected: Law, published: Law] = [
  {
    law: 'corrected series for a bonded layer, ν = 0.5',
    source: 'Garcia & Garcia 2018, Biophys. J. 114:2923 (from memory)',
    factor: (chi) => seriesStiffening(chi, bondedCorrected),
  },
  {
    law: 'series for a bonded layer as first published, ν = 0.5',
    source: 'Dimitriadis et al. 2002, Biophys. J. 82:2798, eq. 12',
    factor: (chi) => seriesStiffening(chi, bondedAsPublished),
  },
]

const unbondedLaw: Law = {
  law: 'series for a layer that is not bonded, ν = 0.5, as first published',
  source: 'Dimitriadis et al. 2002, Biophys. J. 82:2798, eq. 11 (χ³ and χ⁴ from memory)',
  factor: (chi) => seriesStiffening(chi, unbondedAsPublished),
}

/**
 * Contact of a ball with a soft layer at a load. For a bonded layer of ν = 0.5 the corrected series is the law up to χ = 0.5;
 * for all else it is the exact solution.
 */
export function softLayerContact(load: Newton, layer: SoftLayer): SoftLayerContact {
  mustBePositive(load, 'load', 'N')
  checkLayer(layer)
  const { table } = layer
  const modulus = layer.elasticModulus / (1 - table.poissonRatio ** 2)
  const chiAt = (approach: Metre): Ratio => Math.sqrt(layer.ballRadius * approach) / layer.thickness
  const loadBy = ({ factor }: Law, approach: Metre): Newton =>
    hertzLoad(approach, layer.ballRadius, modulus) * factor(chiAt(approach))
  const answer = (law: Law): LayerAnswer => {
    const deepest = hertzApproach(load, layer.ballRadius, modulus)
    const { at } = findRoot((approach) => loadBy(law, approach) - load, [0, deepest * (1 + 1e-12)])
    return { law: law.law, source: law.source, approach: at }
  }
  const laws = lawsFor(table, (law) => chiAt(answer(law).approach))
  const [chosen, ...others] = laws.map(answer)
  const { approach } = chosen
  const chi = chiAt(approach)
  const contactRadius = Math.sqrt(layer.ballRadius * approach) * table.widening(chi)
  const step = approach * 1e-4
  return {
    ...chosen,
    contactRadius,
    meanPressure: load / (Math.PI * contactRadius ** 2),
    chi,
    stiffening: laws[0].factor(chi),
    stiffness: (loadBy(laws[0], approach + step) - loadBy(laws[0], approach - step)) / (2 * step),
    others,
    valid:
      'Rigid smooth ball, rigid base, elastic layer at small strain, no friction between ball and layer, no adhesion. ' +
      'Swollen, viscous or torn layers answer otherwise.',
    doubts: doubtsFound(...layerDoubts(layer, { approach, contactRadius, chi }, others)),
  }
}

/** The chosen law first. */
function lawsFor(table: LayerTable, chiBy: (law: Law) => Ratio): readonly Law[] {
  if (table.poissonRatio !== 0.5) return [exact(table)]
  if (table.hold === 'sliding') return [exact(table), unbondedLaw]
  const [corrected, published] = bondedLaws
  return chiBy(corrected) <= seriesLimit ? [corrected, published, exact(table)] : [exact(table), corrected, published]
}

function checkLayer(layer: SoftLayer): void {
  mustBePositive(layer.ballRadius, 'ball radius', 'm')
  mustBePositive(layer.thickness, 'thickness', 'm')
  mustBePositive(layer.elasticModulus, 'elastic modulus', 'Pa')
}

interface Pressed {
  readonly approach: Metre
  readonly contactRadius: Metre
  readonly chi: Ratio
}

const layerDoubts = (layer: SoftLayer, { approach, contactRadius, chi }: Pressed, others: readonly LayerAnswer[]) => [
  largeStrain(contactRadius, layer.ballRadius),
  doubtAbove({
    kind: 'largeStrain',
    seen: approach / layer.thickness,
    limit: 0.1,
    say: (seen, limit) =>
      `The ball sinks to ${seen} of the layer's thickness, over ${limit}: strains are no longer small and the layer stiffens more than this.`,
  }),
  doubtAbove({
    kind: 'beyondLaw',
    seen: chi,
    limit: layer.table.solvedTo,
    say: (seen, limit) =>
      `χ = ${seen} lies beyond the solved table, which ends at ${limit}: the end of it was carried on.`,
  }),
  doubtAbove({
    kind: 'softIndenter',
    seen: Math.max(softness(layer, layer.ballModulus), softness(layer, layer.baseModulus)),
    limit: 0.01,
    say: (seen) => `The layer has ${seen} of the modulus of ball or base, over a hundredth: they give way too.`,
  }),
  doubtAbove({
    kind: 'lawsDiffer',
    seen: Math.max(0, ...others.map((other) => Math.abs(other.approach / approach - 1))),
    limit: 0.01,
    say: (seen) => `Laws in use differ by up to ${seen} of the approach: all are given.`,
  }),
]

const softness = (layer: SoftLayer, against: Pascal | undefined): Ratio => {
  if (against === undefined) return 0
  mustBePositive(against, 'modulus of ball or base', 'Pa')
  return layer.elasticModulus / against
}
