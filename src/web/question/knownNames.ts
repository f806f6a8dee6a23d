import { materials, namedLiquids } from '../../core/material/index.ts'

/** Names of bodies and liquids that the tables know, to choose from. */
export const bodies: readonly string[] = materials.map(({ name }) => name)
export const liquids: readonly string[] = namedLiquids.map(({ name }) => name)
