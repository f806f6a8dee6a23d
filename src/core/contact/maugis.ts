import { findMinimum, findRoot } from '../numeric/index.ts'
import type { Ratio } from '../terms/index.ts'

/** A contact in units of `adhesionScale`. */
export interface ScaledContact {
  readonly contactRadius: Ratio
  readonly approach: Ratio
  /** Radius out to which the surfaces attract each other. */
  readonly reach: Ratio
}

/** λ = 1.157µ of a constant attraction that does the same work with the same peak as a Lennard-Jones force. Johnson & Greenwood 1997. */
export const maugisParameter = (tabor: Ratio): Ratio => 1.157 * tabor

/**
 * Pull-off between DMT and JKR in units of πwR, as a positive number: the lowest load of the curve that `maugisContact`
 * follows. Goes from 2 at λ → 0 to 1.5 at λ → ∞.
 */
export const maugisPullOff = (parameter: Ratio): number => -lowest(parameter).value

/**
 * Contact with a constant attraction σ₀ out to the radius c = ma, where the gap reaches w/σ₀; on the stable branch. Maugis 1992,
 * J. Colloid Interface Sci. 150:243, eqs. for ā, δ̄ and m (from memory; both limits are met and tested).
 *
 * @param load in units of πwR; a pull is negative, more than the contact bears is a RangeError
 */
export function maugisContact(load: number, parameter: Ratio): ScaledContact {
  const pulled = lowest(parameter)
  if (!(load >= pulled.value - 1e-9 && load < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`load must be at least ${pulled.value} and finite in units of πwR, got ${load}`)
  }
  const contactRadius =
    load <= pulled.value
      ? pulled.at
      : findRoot((radius) => stateAt(radius, parameter).load - load, [pulled.at, widest(load)]).at
  const { approach, reach } = stateAt(contactRadius, parameter)
  return { contactRadius, approach, reach }
}

/** JKR's contact is the widest of all at any load that both bear. */
const widest = (load: number): number =>
  Math.cbrt(Math.max(load, -1.5) + 3 + Math.sqrt(6 * Math.max(load, -1.5) + 9)) + 1e-6

/** The end of the stable branch. */
function lowest(parameter: Ratio): { readonly at: number; readonly value: number } {
  if (!(parameter >= 1e-3 && parameter <= 1e3)) {
    throw new RangeError(`Maugis parameter must be from 0.001 to 1000, got ${parameter}`)
  }
  return findMinimum((radius) => stateAt(radius, parameter).load, [1e-6, 1.5], { tolerance: 1e-9 })
}

interface ScaledState {
  readonly load: number
  readonly approach: number
  readonly reach: number
}

function stateAt(radius: number, parameter: Ratio): ScaledState {
  const ring = ringWidth(radius, parameter)
  const chord = Math.sqrt(ring * (ring + 2))
  const angle = Math.atan(chord)
  return {
    load: radius ** 3 - parameter * radius ** 2 * (chord + (1 + ring) ** 2 * angle),
    approach: radius ** 2 - (4 / 3) * parameter * radius * chord,
    reach: radius * (1 + ring),
  }
}

/** m − 1: how far the attraction reaches out, from the condition that the gap there is w/σ₀. Rises without end from zero. */
function ringWidth(radius: number, parameter: Ratio): number {
  const open = (ring: number): number => {
    const chord = Math.sqrt(ring * (ring + 2))
    const angle = Math.atan(chord)
    const flat = chord + ((1 + ring) ** 2 - 2) * angle
    return (parameter * radius ** 2 * flat) / 2 + (4 / 3) * parameter ** 2 * radius * (chord * angle - ring) - 1
  }
  let far = 1
  while (open(far) < 0) far *= 4
  return findRoot(open, [0, far]).at
}
