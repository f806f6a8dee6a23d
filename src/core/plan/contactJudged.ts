import { coatingContact, hertzContact, liftOffTilt } from '../contact/index.ts'
import type { Doubt, Newton } from '../terms/index.ts'
import { type ContactAtLoad, contactAt, pressureLimits, usualPoisson } from './plannedContact.ts'
import type { PlanBasis } from './windowAxes.ts'

/** The contact at the planned load, its law, and where that law must not be trusted. */
export interface JudgedContact extends ContactAtLoad {
  readonly law: string
  readonly source: string
  readonly valid: string
  readonly doubts: readonly Doubt[]
  /** One sentence: may Hertz be believed here, and if not, why. */
  readonly hertz: string
}

/** Contact of a plan at a load with all that speaks against its numbers. */
export function judgedContact(basis: PlanBasis, force: Newton): JudgedContact {
  const { contact, question, geometry } = basis
  const at = contactAt(contact, geometry, force)
  if (contact.kind === 'unknown') {
    const hertz = 'Nobody said how stiff both bodies are: no pressure, no indentation and no film is predicted.'
    return { ...at, law: 'none', source: '', valid: '', doubts: [], hertz }
  }
  if (contact.kind === 'flat') return { ...at, ...flatJudged(basis, force) }
  const roughness = Math.hypot(question.pair.upper.roughness ?? 0, question.pair.lower.roughness ?? 0)
  const { peak } = pressureLimits({ ...question, ask: { ...question.ask, mostPressure: undefined } })
  const hertzian = hertzContact(
    at.load,
    { radius: contact.radius, effectiveModulus: contact.modulus },
    {
      ...(roughness > 0 ? { roughness } : {}),
      ...(peak === undefined ? {} : { yieldPressure: peak }),
      ...thinnest(basis),
    },
  )
  const doubts = [...hertzian.doubts, ...coatingDoubts(basis, force)]
  const kinds = new Set(doubts.map(({ kind }) => kind))
  const against = (['beyondLaw', 'largeStrain', 'baseFelt', 'substrateFelt'] as const).filter((kind) => kinds.has(kind))
  const why = {
    beyondLaw: 'the contact would be wider than the ball',
    largeStrain: 'the contact is too wide for small strain',
    baseFelt: 'the layer is too thin and feels its base',
    substrateFelt: 'the contact sinks too deep into the coating',
  }
  return {
    ...at,
    law: hertzian.law,
    source: hertzian.source,
    valid: hertzian.valid,
    doubts,
    hertz:
      against.length === 0
        ? 'Hertz may be used here: the contact is small against the ball and the layer thick against the contact.'
        : `Hertz must not be trusted here: ${against.map((kind) => why[kind]).join(', ')}. Pressure and film are a rough guide.`,
  }
}

/** Thickness of the thinner body where one is a layer or a plate. */
function thinnest({ question: { pair, bears } }: PlanBasis): { thickness?: number } {
  const all = [pair.upper.thickness, pair.lower.thickness, bears.upper.plateThickness, bears.lower.plateThickness]
  const known = all.filter((one) => one !== undefined)
  return known.length === 0 ? {} : { thickness: Math.min(...known) }
}

/** Bückle's rule, for a stiff coating on something else. The substrate's modulus is not in a question, so the coating's stands in. */
function coatingDoubts({ question: { pair }, contact, geometry }: PlanBasis, force: Newton): readonly Doubt[] {
  const { upper, lower } = pair
  if (lower.thickness === undefined || contact.kind !== 'point') return []
  if (upper.elasticModulus === undefined || lower.elasticModulus === undefined) return []
  const coating = { elasticModulus: lower.elasticModulus, poissonRatio: lower.poissonRatio ?? usualPoisson }
  const ball = { elasticModulus: upper.elasticModulus, poissonRatio: upper.poissonRatio ?? usualPoisson }
  const { load } = contactAt(contact, geometry, force)
  const judged = coatingContact(load, {
    radius: contact.radius,
    ball,
    coating,
    substrate: coating,
    thickness: lower.thickness,
  })
  return judged.doubts.filter(({ kind }) => kind === 'substrateFelt')
}

function flatJudged(
  { question, geometry }: PlanBasis,
  force: Newton,
): Pick<JudgedContact, 'law' | 'source' | 'valid' | 'doubts' | 'hertz'> {
  const { pair, fixture } = question
  const words = 'Flat faces: the pressure is load over area, a mean only.'
  const outer =
    fixture.kind === 'ringOnPlate' ? fixture.outerRadius : fixture.kind === 'discOnPlate' ? fixture.radius : null
  const law = { law: 'nominal pressure, load over area', source: 'definition', valid: flatValid, doubts: [] }
  const { elasticModulus, poissonRatio = usualPoisson } = pair.lower
  if (outer === null || elasticModulus === undefined) return { ...law, hertz: `${words} Hertz has no part in it.` }
  const tilt = liftOffTilt(force * geometry.loadFactor, outer, elasticModulus / (1 - poissonRatio ** 2))
  const degrees = Number(((tilt * 180) / Math.PI).toPrecision(2))
  return {
    ...law,
    hertz: `${words} Over a tilt of about ${degrees}° one edge lifts off and the rest carries the load until it is worn in.`,
  }
}

const flatValid =
  'A mean only: at a sharp edge the elastic pressure has no bound, and faces that are not parallel touch at one edge until they are worn in.'
