import { type FlashTemperature, flashTemperature } from '../contact/index.ts'
import { findMaterial, heatNumbers } from '../material/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { Kelvin, MetrePerSecond } from '../terms/index.ts'
import { contactAt } from './plannedContact.ts'
import type { PlannedPoint } from './plannedPoints.ts'
import type { Suggestion } from './suggestion.ts'
import type { PlanBasis } from './windowAxes.ts'

/** How much hotter than the bodies the contact may get at the fastest step. */
export interface FlashAtFastest {
  readonly slidingSpeed: MetrePerSecond
  /** At the upper end of the predicted friction. */
  readonly rise: Kelvin
  readonly law: string
  readonly source: string
  readonly valid: string
  readonly doubts: FlashTemperature['doubts']
  readonly sentence: string
}

/** Rise over which a viscosity or a polymer is no longer what it was: 5 K (common practice, no source). */
const warm: Kelvin = 5

/** Flash temperature of the plan; null for flat faces and where the table does not know how both bodies take up heat. */
export function flashAtFastest(
  basis: PlanBasis,
  suggestion: Suggestion,
  points: readonly PlannedPoint[],
): FlashAtFastest | null {
  const { question, contact, geometry } = basis
  const { lower } = question.pair
  const [resting, moving] = (['upper', 'lower'] as const).map((side) => {
    const found = findMaterial(question.pair[side].name)
    return question.heat?.[side] ?? (found.ok ? heatNumbers(found.value) : undefined)
  })
  const fastest = points.find(({ slidingSpeed }) => slidingSpeed === suggestion.fastest)
  const { contactRadius, load } = contactAt(contact, geometry, suggestion.axialForce)
  if (resting === undefined || moving === undefined || fastest === undefined || contactRadius === null) return null
  const { slidingSpeed } = fastest
  const heat = { friction: fastest.friction.high, load, slidingSpeed, contactRadius, resting, moving }
  const flash = flashTemperature(lower.thickness === undefined ? heat : { ...heat, thickness: lower.thickness })
  const { rise } = flash.maximum
  const hot = rise > warm ? 'the liquid there is thinner and a polymer softer than planned' : 'too little to matter'
  return {
    slidingSpeed,
    rise,
    law: flash.law,
    source: flash.source,
    valid: flash.valid,
    doubts: flash.doubts,
    sentence: `The contact may get ${printQuantity(rise, 'temperatureDifference', { digits: 2 })} hotter than the bodies at ${printQuantity(slidingSpeed, 'velocity', { digits: 2 })}: ${hot}.`,
  }
}
