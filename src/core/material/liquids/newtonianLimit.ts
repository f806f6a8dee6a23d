import { type Doubt, doubtAbove, type Pascal } from '../../terms/index.ts'

/**
 * A doubt where the shear stress exceeds that up to which a liquid of this kind keeps its viscosity. The limit is an order of
 * size: the modulus ρRT/M of its molecules.
 */
export const beyondNewtonian = (shearStress: Pascal, limit: Pascal): Doubt | undefined =>
  doubtAbove({
    kind: 'beyondLaw',
    seen: shearStress,
    limit,
    say: (seen, limit) =>
      `A shear stress of ${seen} Pa is over the ${limit} Pa to which this liquid may be taken as Newtonian: it will be thinner.`,
  })
