import type { OwnThing } from './ownThing.ts'

/**
 * A body or a liquid as a paper of the lab holds it: a material as the core has it, a liquid as its recipe, with other names, note
 * and flow curve beside it. `ownFromPapers` reads it back.
 */
export function ownContent(thing: OwnThing): unknown {
  if (thing.kind === 'material') return thing.material
  const { liquid, note, flow } = thing
  return {
    ...liquid.recipe,
    name: liquid.name,
    synonyms: liquid.synonyms,
    ...(note === undefined ? {} : { note }),
    ...(flow === undefined ? {} : { flow }),
  }
}
