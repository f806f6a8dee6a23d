import { layerTable, type SoftLayerContact, softLayerContact } from '../contact/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { Newton } from '../terms/index.ts'
import { contactAt, usualPoisson } from './plannedContact.ts'
import { softBelow } from './predictedFriction.ts'
import type { PlanBasis } from './windowAxes.ts'

/** A soft layer under the ball by its own law, beside what Hertz says of a thick body. */
export interface LayerBeside {
  readonly contact: SoftLayerContact
  /** Both laws in one sentence. */
  readonly sentence: string
}

/**
 * The lower body as a layer bonded to a rigid base, where it is softer than plastics and the ball at least ten times stiffer; else null.
 * Throws nothing for a question that passed its checks.
 */
export function layerBeside(basis: PlanBasis, force: Newton): LayerBeside | null {
  const { question, contact, geometry } = basis
  const { upper, lower } = question.pair
  if (contact.kind !== 'point' || lower.thickness === undefined || lower.elasticModulus === undefined) return null
  if (!(lower.elasticModulus < softBelow && (upper.elasticModulus ?? 0) >= 10 * lower.elasticModulus)) return null
  const poissonRatio = lower.poissonRatio ?? usualPoisson
  if (!(poissonRatio >= 0)) return null
  const hertz = contactAt(contact, geometry, force)
  const layer = softLayerContact(hertz.load, {
    ballRadius: contact.radius,
    thickness: lower.thickness,
    elasticModulus: lower.elasticModulus,
    table: layerTable(poissonRatio, 'bonded'),
    ballModulus: upper.elasticModulus,
  })
  const length = (value: number | null): string =>
    value === null ? 'unknown' : printQuantity(value, 'length', { digits: 2 })
  const pressure = (value: number | null): string =>
    value === null ? 'unknown' : printQuantity(value, 'pressure', { digits: 2 })
  return {
    contact: layer,
    sentence:
      `As a layer bonded to a rigid base (${layer.law}): contact radius ${length(layer.contactRadius)}, mean pressure ` +
      `${pressure(layer.meanPressure)}, sinks in ${length(layer.approach)}. Hertz, for a thick body: ${length(hertz.contactRadius)}, ` +
      `${pressure(hertz.meanPressure)}, ${length(hertz.approach)}.`,
  }
}
