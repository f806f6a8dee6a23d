import type { Section } from '../setup/keyKinds.ts'
import { bodyKeys } from './bodyKeys.ts'
import { liquidKeys } from './liquidKeys.ts'

/** A file of one's own body or liquid: one of the two. */
export const ownKeys: Section = {
  is: 'section',
  about: 'A body or a liquid of your own.',
  keys: { body: bodyKeys, liquid: liquidKeys },
}
