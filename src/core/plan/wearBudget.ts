import type { Metre, Newton } from '../terms/index.ts'
import { contactAt } from './plannedContact.ts'
import { type PlanBasis, wearDistance } from './windowAxes.ts'

/** How many records one set of balls bears. */
export interface WearBudget {
  readonly runsPerBallSet: number
  /** Distance after which the scar is as wide as the question allows; null where no rate was given. */
  readonly distance: Metre | null
  readonly perRecord: Metre
  /** By what the number was decided. */
  readonly from: 'wearRate' | 'noRate'
}

/** Records per ball set: as many as keep the scar within what is allowed; one where nobody knows the rate, or where it does not last that long. */
export function wearBudget(basis: PlanBasis, force: Newton, perRecord: Metre): WearBudget {
  if (!(perRecord > 0)) throw new RangeError(`distance of a record must be more than zero, got ${perRecord} m`)
  const { contact, geometry } = basis
  const distance = wearDistance(force, contactAt(contact, geometry, force), basis)
  if (!Number.isFinite(distance)) return { runsPerBallSet: 1, distance: null, perRecord, from: 'noRate' }
  return { runsPerBallSet: Math.max(1, Math.floor(distance / perRecord)), distance, perRecord, from: 'wearRate' }
}
