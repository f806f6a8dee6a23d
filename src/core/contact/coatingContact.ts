import { doubtAbove, doubtsFound, type Explained, type Metre, type Newton, type Ratio } from '../terms/index.ts'
import { type ElasticBody, effectiveModulus } from './elasticBody.ts'
import { hertzApproach, hertzRadius } from './hertz.ts'
import { mustBePositive } from './refuse.ts'

/** A ball on a coated plate. */
export interface CoatedPlate {
  /** Effective radius. */
  readonly radius: Metre
  readonly ball: ElasticBody
  readonly coating: ElasticBody
  readonly substrate: ElasticBody
  readonly thickness: Metre
}

/** What the coating alone and the substrate alone would give; the truth lies between. */
export interface CoatingContact extends Explained {
  /** As if the whole plate were coating. */
  readonly coatingAlone: { readonly contactRadius: Metre; readonly approach: Metre }
  /** As if there were no coating. */
  readonly substrateAlone: { readonly contactRadius: Metre; readonly approach: Metre }
  /** Indentation by the coating's own modulus over its thickness: Bückle's number. */
  readonly depthShare: Ratio
}

/** Largest indentation, as a share of the thickness, at which the coating still answers for itself. */
export const buckleLimit: Ratio = 0.1

/** How much of a coated plate's answer is the coating's. */
export function coatingContact(load: Newton, plate: CoatedPlate): CoatingContact {
  mustBePositive(plate.thickness, 'thickness', 'm')
  const alone = (body: ElasticBody) => {
    const modulus = effectiveModulus(plate.ball, body)
    return {
      contactRadius: hertzRadius(load, plate.radius, modulus),
      approach: hertzApproach(load, plate.radius, modulus),
    }
  }
  const coatingAlone = alone(plate.coating)
  const depthShare = coatingAlone.approach / plate.thickness
  return {
    coatingAlone,
    substrateAlone: alone(plate.substrate),
    depthShare,
    law: 'Bückle’s rule: a coating answers for itself down to a tenth of its thickness',
    source: 'common practice, no source; contacts after Hertz',
    valid:
      'A rule of thumb from hardness testing. An elastic contact feels the substrate earlier than a plastic dent does: look ' +
      'at the contact radius against the thickness as well.',
    doubts: doubtsFound(
      doubtAbove({
        kind: 'substrateFelt',
        seen: depthShare,
        limit: buckleLimit,
        say: (seen) =>
          `The indentation is ${seen} of the coating's thickness, over a tenth: the substrate speaks, and a hard coating may break through.`,
      }),
      doubtAbove({
        kind: 'baseFelt',
        seen: coatingAlone.contactRadius / plate.thickness,
        limit: 0.1,
        say: (seen) =>
          `The contact radius is ${seen} of the coating's thickness, over a tenth: stiffness and stress are a mixture of coating and substrate.`,
      }),
    ),
  }
}
