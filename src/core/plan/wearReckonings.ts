import { plannedBallWear, plannedFlatWear, wornContact } from '../contact/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { Metre } from '../terms/index.ts'
import type { JudgedContact } from './contactJudged.ts'
import { type Reckoning, reckoned } from './reckoning.ts'
import type { PlanBasis } from './windowAxes.ts'

const length = (value: number): string => printQuantity(value, 'length', { digits: 2 })
const pressure = (value: number): string => printQuantity(value, 'pressure', { digits: 2 })

/** Wear of both bodies over the planned distance, and what a flat on the ball does to the pressure. */
export function wearReckonings(
  { question: { bears, pair }, contact, geometry }: PlanBasis,
  { load, contactRadius }: JudgedContact,
  distance: Metre,
): readonly Reckoning[] {
  if (contact.kind !== 'point' || contactRadius === null) return []
  const upper = bears.upper.wearRate ?? 0
  const lower = bears.lower.wearRate ?? 0
  const reckonings: Reckoning[] = []
  if (upper > 0) {
    const sliding = { specificRate: upper, load, distance }
    const whole = (2 / 3) * Math.PI * contact.bodyRadius ** 3
    if (upper * load * distance >= whole) {
      // More than half the ball: no cap law holds, and the window forbids the load long before.
      return [gone(pair.upper.name)]
    }
    const ball = plannedBallWear(sliding, { radius: contact.bodyRadius, contactRadius })
    const scar = ball.scarDiameter ?? 0
    reckonings.push(reckoned('wear', `${pair.upper.name}: a flat of ${length(scar)} after ${length(distance)}.`, ball))
    if (scar > 0) {
      const worn = wornContact(
        load,
        { radius: contact.radius, effectiveModulus: contact.modulus },
        { diameter: Math.min(scar, 2 * contact.bodyRadius), ballRadius: contact.bodyRadius },
      )
      const sentence =
        worn.patch === 'worn'
          ? `The mean pressure falls from ${pressure(worn.freshPressure)} to ${pressure(worn.meanPressure)} by then.`
          : `The flat stays smaller than the elastic contact, so the mean pressure stays at ${pressure(worn.meanPressure)}.`
      reckonings.push(reckoned('wornFlat', sentence, worn))
    }
  }
  if (lower > 0) {
    // Every contact passes over the whole track.
    const track = 2 * Math.PI * geometry.lever * 2 * contactRadius
    const flat = plannedFlatWear({ specificRate: lower, load: load * geometry.contacts, distance }, track)
    reckonings.push(
      reckoned('wear', `${pair.lower.name}: a track ${length(flat.depth)} deep after ${length(distance)}.`, flat),
    )
  }
  return reckonings
}

const gone = (name: string): Reckoning => ({
  name: 'wear',
  sentence: `${name}: more than half of it would be worn away over the planned distance.`,
  law: 'Archard',
  source: 'Archard 1953, J. Appl. Phys. 24:981 (from memory)',
  valid: 'Wear in proportion to load and distance.',
  doubts: ['Check the wear rate: it is in mm³/(N·m).'],
})
