import { type ElasticBody, effectiveModulus, effectiveRadius, type SphereOnFlat } from '../../core/contact/index.ts'
import { findMaterial } from '../../core/material/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import { endRadiusOf } from '../../core/reduce/questions/index.ts'
import type { Setup, SurfaceSpec } from '../../core/terms/index.ts'

/** The fresh elastic contact of a setup, and what was taken from the tables of bodies for it. */
export interface FreshContact {
  /** undefined for flat faces and for bodies that neither setup nor tables know. */
  readonly sphere: SphereOnFlat | undefined
  readonly taken: readonly string[]
}

/** Moduli of the setup first, those of the tables by the names of the bodies where it has none. */
export function sphereOf({ fixture, pair }: Setup): FreshContact {
  const own = endRadiusOf(fixture)
  if (own === null) return { sphere: undefined, taken: [] }
  const radius = fixture.kind === 'ballOnBalls' ? effectiveRadius(own, own) : own
  const taken: string[] = []
  const [upper, lower] = [bodyOf(pair.upper, taken), bodyOf(pair.lower, taken)]
  if (upper === undefined || lower === undefined) return { sphere: undefined, taken }
  return { sphere: { radius, effectiveModulus: effectiveModulus(upper, lower) }, taken }
}

function bodyOf({ name, elasticModulus, poissonRatio }: SurfaceSpec, taken: string[]): ElasticBody | undefined {
  if (elasticModulus !== undefined && poissonRatio !== undefined) return { elasticModulus, poissonRatio }
  const found = findMaterial(name)
  if (!found.ok) return undefined
  const { value, source } = found.value.elasticModulus
  taken.push(`${found.value.name}: modulus ${printQuantity(value, 'pressure', { digits: 3 })} (${source}).`)
  return {
    elasticModulus: elasticModulus ?? value,
    poissonRatio: poissonRatio ?? found.value.poissonRatio.value,
  }
}
