import { ceramics } from './ceramics.ts'
import { coatings } from './coatings.ts'
import { elastomers } from './elastomers.ts'
import { glasses } from './glasses.ts'
import type { Material } from './material.ts'
import { otherMetals, steels } from './metals.ts'
import { naturalMaterials } from './naturalMaterials.ts'
import { otherPolymers, slidingPolymers } from './polymers.ts'

/** The table of bodies. Names are unique; synonyms may be shared. */
export const materials: readonly Material[] = [
  ...steels,
  ...otherMetals,
  ...ceramics,
  ...glasses,
  ...slidingPolymers,
  ...otherPolymers,
  ...elastomers,
  ...naturalMaterials,
  ...coatings,
]
