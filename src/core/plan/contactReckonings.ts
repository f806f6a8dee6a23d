import {
  adhesiveContact,
  coatingContact,
  edgeTensionOf,
  firstYield,
  type SphereOnFlat,
  type YieldingBody,
} from '../contact/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { JudgedContact } from './contactJudged.ts'
import type { LayerBeside } from './layerBeside.ts'
import { usualPoisson } from './plannedContact.ts'
import { type Reckoning, reckoned } from './reckoning.ts'
import type { PlanBasis } from './windowAxes.ts'

const length = (value: number): string => printQuantity(value, 'length', { digits: 2 })
const force = (value: number): string => printQuantity(value, 'force', { digits: 2 })
const pressure = (value: number): string => printQuantity(value, 'pressure', { digits: 2 })
const percent = (value: number): string => printQuantity(value, 'ratio', { digits: 2, unit: '%' })

interface PlannedParts {
  readonly contact: JudgedContact
  readonly layer: LayerBeside | null
}

/** Contact, layer, coating, adhesion, yield and edge, as far as the question says enough for them. */
export function contactReckonings(basis: PlanBasis, { contact, layer }: PlannedParts): readonly Reckoning[] {
  const { load, contactRadius, peakPressure, meanPressure, approach } = contact
  if (contact.law === 'none') return []
  const own: Reckoning = {
    name: 'contact',
    sentence:
      peakPressure === null || contactRadius === null || approach === null
        ? `${force(load)} on one face, ${pressure(meanPressure ?? 0)} in the mean.`
        : `${force(load)} on one contact: radius ${length(contactRadius)}, peak pressure ${pressure(peakPressure)}, sinks in ${length(approach)}.`,
    law: contact.law,
    source: contact.source,
    valid: contact.valid,
    doubts: contact.doubts.map(({ sentence }) => sentence),
  }
  if (basis.contact.kind !== 'point') return [own]
  const sphere = { radius: basis.contact.radius, effectiveModulus: basis.contact.modulus }
  return [
    own,
    ...(layer === null ? [] : [reckoned('layer', layer.sentence, layer.contact)]),
    ...coating(basis, { sphere, load, soft: layer !== null }),
    ...adhesion(basis, sphere, load),
    ...strength(basis, sphere, load),
  ]
}

/** A stiff coating by both ends: as if all were coating, as if none were there. What lies below is not in a question, so only the first is a number. */
function coating(
  { question: { pair } }: PlanBasis,
  { sphere, load, soft }: { readonly sphere: SphereOnFlat; readonly load: number; readonly soft: boolean },
): readonly Reckoning[] {
  const { upper, lower } = pair
  const { thickness, elasticModulus } = lower
  if (soft || thickness === undefined || elasticModulus === undefined || upper.elasticModulus === undefined) return []
  const body = { elasticModulus, poissonRatio: lower.poissonRatio ?? usualPoisson }
  const ball = { elasticModulus: upper.elasticModulus, poissonRatio: upper.poissonRatio ?? usualPoisson }
  const judged = coatingContact(load, { radius: sphere.radius, ball, coating: body, substrate: body, thickness })
  const sentence = `As if all were coating it sinks in by ${percent(judged.depthShare)} of the thickness; on a stiffer base it sinks in less, on a softer one more.`
  return [reckoned('coating', sentence, judged)]
}

/** Usual work of adhesion of clean dry surfaces, J/m²; in a liquid far less. Common practice, no source. */
const dryAdhesion = 0.05

/** Adhesion of a dry pair at a usual work of adhesion, to see whether it could matter. */
function adhesion({ question }: PlanBasis, sphere: SphereOnFlat, load: number): readonly Reckoning[] {
  if (question.liquid !== undefined) return []
  const { upper, lower } = question.pair
  const roughness = Math.hypot(upper.roughness ?? 0, lower.roughness ?? 0)
  const sticky = adhesiveContact(
    load,
    { ...sphere, workOfAdhesion: dryAdhesion },
    {
      ...(roughness > 0 ? { roughness } : {}),
      ...(lower.thickness === undefined ? {} : { thickness: lower.thickness }),
    },
  )
  const regime = { jkr: 'JKR', dmt: 'DMT', between: 'between DMT and JKR' }[sticky.regime]
  const share = sticky.pullOff / load
  const weight =
    share < 0.05 ? 'it does not matter here' : 'it adds to the load where the surfaces are clean and smooth'
  const sentence =
    `Smooth and clean at 50 mJ/m² the contact would hold with ${force(sticky.pullOff)} (Tabor parameter ${Number(sticky.tabor.toPrecision(2))}, ${regime}; ` +
    `JKR ${force(sticky.jkr.pullOff)}, DMT ${force(sticky.dmt.pullOff)}), ${percent(share)} of the load: ${weight}.`
  return [reckoned('adhesion', sentence, sticky)]
}

/** First yield of what dents, tension at the edge of what cracks. */
function strength({ question: { pair, bears } }: PlanBasis, sphere: SphereOnFlat, load: number): readonly Reckoning[] {
  const sides = ['upper', 'lower'] as const
  const dents = sides.flatMap((side): YieldingBody[] => {
    const { yieldStrength } = bears[side]
    const poissonRatio = Math.max(0, pair[side].poissonRatio ?? usualPoisson)
    return yieldStrength === undefined ? [] : [{ name: pair[side].name, yieldStrength, poissonRatio }]
  })
  const cracks = sides.flatMap((side): Reckoning[] => {
    const { flexuralStrength } = bears[side]
    if (flexuralStrength === undefined) return []
    const { name, poissonRatio = usualPoisson } = pair[side]
    const edge = edgeTensionOf(load, sphere, {
      name,
      strength: flexuralStrength,
      poissonRatio: Math.max(-0.99, poissonRatio),
    })
    return [
      reckoned(
        'edgeTension',
        `${name}: ${pressure(edge.tension)} at the edge, ${percent(edge.share)} of its strength in bending.`,
        edge,
      ),
    ]
  })
  if (dents.length === 0) return cracks
  const first = firstYield(load, sphere, dents)
  const sentence = `${first.body} first yields at a peak pressure of ${pressure(first.yieldPressure)}, which ${force(first.yieldLoad)} on one contact makes; here it is ${percent(first.share)} of that.`
  return [reckoned('yield', sentence, first), ...cracks]
}
