import { contactStiffness } from '../contact/index.ts'
import { torquePerFriction } from '../fixture/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { JudgedContact } from './contactJudged.ts'
import type { PlannedPoint } from './plannedPoints.ts'
import { partialTurnBias } from './turnBudget.ts'
import type { PlanBasis } from './windowAxes.ts'

const percent = (share: number): string => printQuantity(share, 'ratio', { digits: 2, unit: '%' })

interface Planned {
  readonly contact: JudgedContact
  readonly force: number
  readonly points: readonly PlannedPoint[]
}

/** A share of friction or load below which an error does not bite. Common practice, no source. */
const bites = 0.002

/** What usual errors would do at the planned load, those that bite: force zero, torque zero, run-out, tilt in a part of a turn. */
export function errorWords(basis: PlanBasis, { contact, force, points }: Planned): readonly string[] {
  const { noise, geometry } = basis
  const words: string[] = []
  const zero = noise.forceZero / force
  if (zero > bites) {
    words.push(
      `A force zero off by ${printQuantity(noise.forceZero, 'force', { digits: 2 })} moves all friction values together by ${percent(zero)}; more points do not help.`,
    )
  }
  const least = Math.min(...points.map(({ friction }) => friction.low))
  const torque = least * torquePerFriction(geometry, force)
  const torqueShare = noise.torqueZero / torque
  if (torqueShare > bites) {
    words.push(
      `The least torque to be expected is ${printQuantity(torque, 'torque', { digits: 2 })}; a torque zero off by ${printQuantity(noise.torqueZero, 'torque', { digits: 2 })} is ${percent(torqueShare)} of it.`,
    )
  }
  return [...words, ...runOut(basis, contact, force), ...tiltWords(basis, points)]
}

/** How much of the load a micrometre of run-out would make: hard pairs need force control or a spring. */
function runOut({ contact, geometry }: PlanBasis, { contactRadius }: JudgedContact, force: number): readonly string[] {
  if (contact.kind !== 'point' || contactRadius === null) return []
  const along = (geometry.contacts * contactStiffness(contactRadius, contact.modulus)) / geometry.loadFactor ** 2
  const change = along * 1e-6
  if (change / force < bites) return []
  const need = change / force > 0.05 ? ': hold the force by control or a spring, not the gap' : ''
  return [
    `A micrometre of run-out changes the axial force by ${printQuantity(change, 'force', { digits: 2 })}, ${percent(change / force)} of it${need}.`,
  ]
}

/** The step that a tilt would shift most, where it covers less than a turn. */
function tiltWords({ noise }: PlanBasis, points: readonly PlannedPoint[]): readonly string[] {
  const shift = ({ turns, friction }: PlannedPoint): number =>
    turns < 0.995 ? (partialTurnBias(turns) * Math.tan(noise.tilt)) / friction.value : 0
  const worst = points.reduce<PlannedPoint | undefined>(
    (most, point) => (most === undefined || shift(point) > shift(most) ? point : most),
    undefined,
  )
  if (worst === undefined || shift(worst) < bites) return []
  const degrees = Number(((noise.tilt * 180) / Math.PI).toPrecision(2))
  return [
    `At ${printQuantity(worst.slidingSpeed, 'velocity', { digits: 2 })} a step covers ${Number(worst.turns.toPrecision(2))} of a turn: a plate tilted by ${degrees}° can shift friction there by ${percent(shift(worst))}. Turning backwards as well takes it out.`,
  ]
}
