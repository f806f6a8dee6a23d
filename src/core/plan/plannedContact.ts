import {
  effectiveModulus,
  firstYieldPressure,
  hertzApproach,
  hertzPeakPressure,
  hertzRadius,
  nominalPressure,
} from '../contact/index.ts'
import { type FixtureGeometry, normalLoad } from '../fixture/index.ts'
import type { FixtureSpec, Metre, Newton, Pascal, Ratio, SurfaceSpec } from '../terms/index.ts'
import type { PlanQuestion } from './question.ts'

/** How the bodies of a question touch. */
export type PlannedContact =
  | {
      readonly kind: 'point'
      /** Effective radius. */
      readonly radius: Metre
      readonly bodyRadius: Metre
      readonly modulus: Pascal
    }
  | { readonly kind: 'flat'; readonly area: number }
  /** Nobody said how stiff the bodies are. */
  | { readonly kind: 'unknown'; readonly radius: Metre }

/** What the pair bears; undefined where the question does not say. */
export interface PressureLimits {
  readonly peak?: Pascal
  readonly because?: string
  /** Peak pressure at which the edge's tension reaches the strength. */
  readonly edge?: Pascal
  readonly edgeBody?: string
}

/** Contact at one load. */
export interface ContactAtLoad {
  readonly load: Newton
  readonly contactRadius: Metre | null
  readonly peakPressure: Pascal | null
  readonly meanPressure: Pascal | null
  readonly approach: Metre | null
}

/** How the bodies of the question touch. */
export function plannedContact(question: PlanQuestion, geometry: FixtureGeometry): PlannedContact {
  if (geometry.nominalArea !== undefined) return { kind: 'flat', area: geometry.nominalArea }
  const bodyRadius = roundness(question.fixture)
  const radius = question.fixture.kind === 'ballOnBalls' ? bodyRadius / 2 : bodyRadius
  const upper = elastic(question.pair.upper)
  const lower = elastic(question.pair.lower)
  if (upper === undefined || lower === undefined) return { kind: 'unknown', radius }
  return { kind: 'point', radius, bodyRadius, modulus: effectiveModulus(upper, lower) }
}

/** Radius of the round end that touches. */
function roundness(fixture: FixtureSpec): Metre {
  if ('ballDiameter' in fixture) return fixture.ballDiameter / 2
  if (fixture.kind === 'pinsOnDisc' && fixture.endRadius !== undefined) return fixture.endRadius
  throw new RangeError(`fixture must have a round end, got ${fixture.kind}`)
}

const elastic = ({ elasticModulus, poissonRatio }: SurfaceSpec) =>
  elasticModulus === undefined ? undefined : { elasticModulus, poissonRatio: poissonRatio ?? usualPoisson }

/** Poisson ratio of a body for which nobody gave one: that of most metals. E* changes by 10 % over 0.2 to 0.4. */
export const usualPoisson: Ratio = 0.3

/** Contact at an axial force; null where nothing can be said. */
export function contactAt(contact: PlannedContact, geometry: FixtureGeometry, force: Newton): ContactAtLoad {
  const load = normalLoad(geometry, force)
  if (contact.kind === 'unknown') {
    return { load, contactRadius: null, peakPressure: null, meanPressure: null, approach: null }
  }
  if (contact.kind === 'flat') {
    const meanPressure = nominalPressure(geometry.loadFactor * force, contact.area)
    return { load, contactRadius: null, peakPressure: null, meanPressure, approach: null }
  }
  const { radius, modulus } = contact
  const peakPressure = hertzPeakPressure(load, radius, modulus)
  return {
    load,
    contactRadius: hertzRadius(load, radius, modulus),
    peakPressure,
    meanPressure: (2 / 3) * peakPressure,
    approach: hertzApproach(load, radius, modulus),
  }
}

/** Peak pressures that the question forbids: first yield of the weaker body, use, and a crack at the edge. */
export function pressureLimits({ pair, bears, ask }: PlanQuestion): PressureLimits {
  const ends = (['upper', 'lower'] as const).flatMap((side) => {
    const strength = bears[side].yieldStrength
    if (strength === undefined) return []
    // The stress on the axis is known for ν of 0 and more; a body that widens when it is drawn is taken at 0.
    const pressure = firstYieldPressure(strength, Math.max(0, pair[side].poissonRatio ?? usualPoisson))
    return [{ pressure, because: `${pair[side].name} first yields` }]
  })
  if (ask.mostPressure !== undefined) ends.push({ pressure: ask.mostPressure, because: 'the question allows no more' })
  const least = ends.sort((a, b) => a.pressure - b.pressure)[0]
  const edges = (['upper', 'lower'] as const).flatMap((side) => {
    const strength = bears[side].flexuralStrength
    const opening = 1 - 2 * (pair[side].poissonRatio ?? usualPoisson)
    return strength === undefined || opening <= 0 ? [] : [{ edge: (3 * strength) / opening, edgeBody: pair[side].name }]
  })
  const edge = edges.sort((a, b) => a.edge - b.edge)[0]
  return { ...(least === undefined ? {} : { peak: least.pressure, because: least.because }), ...edge }
}
