import { type ComparedSystem, comparability } from '../../core/decide/index.ts'
import type { Caution } from './compared.ts'

/**
 * What makes samples hard to compare though their curves can be: other loads, bodies, liquids, temperatures. Each sample stands for
 * itself by its first record; a rig of its own is told by the comparison itself.
 */
export function cautionsOf(systems: ReadonlyMap<string, ComparedSystem>): Caution[] {
  const named = [...systems]
  return named.flatMap(([second, other], b) =>
    named.slice(0, b).flatMap(([first, one]): Caution[] => {
      const { differences, verdict } = comparability(one, other)
      const told = differences.filter(
        ({ weight, what }) => (weight === 'refuses' || weight === 'shifts') && what !== 'rig',
      )
      if (told.length === 0) return []
      const head =
        verdict === 'refused'
          ? `${second} and ${first} are not the same kind of thing, so their difference answers no question about the samples.`
          : `${second} against ${first}:`
      return [{ samples: [first, second], sentence: `${head} ${told.map(({ sentence }) => sentence).join(' ')}` }]
    }),
  )
}
