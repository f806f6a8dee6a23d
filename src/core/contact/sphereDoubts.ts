import { type Doubt, doubtAbove, doubtBelow, type Metre } from '../terms/index.ts'
import { mustBePositive } from './refuse.ts'

/**
 * Contact radius against the radius of the sphere; laws of small strain ask for a ≪ R. Limit 0.1: common practice, no source. A
 * contact wider than the ball is none at all.
 */
export const largeStrain = (contactRadius: Metre, radius: Metre): Doubt | undefined =>
  doubtAbove({
    kind: 'beyondLaw',
    seen: contactRadius / radius,
    limit: 1,
    say: (seen) =>
      `The contact radius would be ${seen} of the radius: there is no such contact, and these numbers mean nothing.`,
  }) ??
  doubtAbove({
    kind: 'largeStrain',
    seen: contactRadius / radius,
    limit: 0.1,
    say: (seen, limit) =>
      `The contact radius is ${seen} of the radius, over ${limit}: strains are no longer small and the law is a rough guide.`,
  })

/** A plate or layer thinner than about 5 to 10 contact radii feels what it lies on. Common practice, no source. */
export function baseFelt(contactRadius: Metre, thickness: Metre | undefined): Doubt | undefined {
  if (thickness === undefined) return undefined
  mustBePositive(thickness, 'thickness', 'm')
  if (contactRadius === 0) return undefined
  return doubtBelow({
    kind: 'baseFelt',
    seen: thickness / contactRadius,
    limit: 10,
    say: (seen) =>
      `The body is ${seen} contact radii thick; under about 5 to 10 it feels what it lies on, so contact and approach ` +
      'differ from those of a thick body.',
  })
}
