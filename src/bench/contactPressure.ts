import {
  type ElasticBody,
  effectiveModulus,
  effectiveRadius,
  hertzContact,
  nominalPressure,
} from '../core/contact/index.ts'
import { fixtureGeometry, normalLoad } from '../core/fixture/index.ts'
import type { FixtureSpec, Metre, Newton, Pascal, Setup, SurfaceSpec } from '../core/terms/index.ts'

/** Pressure of fresh surfaces under the load of a record. */
export interface ContactPressure {
  readonly mean: Pascal
  /** null for flat faces, whose edges have no bound. */
  readonly peak: Pascal | null
  /** Of one contact; null for flat faces. */
  readonly radius: Metre | null
  /** Normal load on one contact. */
  readonly load: Newton
  readonly law: string
  /** Why the number must be taken with care, as sentences. */
  readonly doubts: readonly string[]
}

/**
 * Pressure in the contacts of a fixture: Hertz for balls and domed pins where modulus and Poisson's ratio of both surfaces are
 * known, load over area for flat faces. null where the setup does not tell.
 */
export function contactPressure({ fixture, pair }: Setup, axialForce: Newton): ContactPressure | null {
  if (!(axialForce > 0)) return null
  const geometry = fixtureGeometry(fixture)
  const load = normalLoad(geometry, axialForce)
  const radius = ballRadius(fixture)
  if (radius === null) {
    if (geometry.nominalArea === undefined) return null
    const mean = nominalPressure(geometry.loadFactor * axialForce, geometry.nominalArea)
    return { mean, peak: null, radius: null, load, law: 'nominal: load over area', doubts: [] }
  }
  const [upper, lower] = [bodyOf(pair.upper), bodyOf(pair.lower)]
  if (upper === null || lower === null) return null
  const contact = hertzContact(
    load,
    { radius, effectiveModulus: effectiveModulus(upper, lower) },
    { thickness: pair.lower.thickness ?? pair.upper.thickness },
  )
  return {
    mean: contact.meanPressure,
    peak: contact.peakPressure,
    radius: contact.contactRadius,
    load,
    law: 'Hertz',
    doubts: contact.doubts.map(({ sentence }) => sentence),
  }
}

/** Effective radius of a contact at a point; null for flat faces. */
function ballRadius(fixture: FixtureSpec): Metre | null {
  switch (fixture.kind) {
    case 'ballsOnPlate':
    case 'ballOnPlates':
      return fixture.ballDiameter / 2
    case 'ballOnBalls':
      return effectiveRadius(fixture.ballDiameter / 2, fixture.ballDiameter / 2)
    case 'pinsOnDisc':
      return fixture.endRadius ?? null
    case 'ringOnPlate':
    case 'discOnPlate':
      return null
  }
}

const bodyOf = ({ elasticModulus, poissonRatio }: SurfaceSpec): ElasticBody | null =>
  elasticModulus === undefined || poissonRatio === undefined ? null : { elasticModulus, poissonRatio }
