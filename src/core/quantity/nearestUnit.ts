import type { Dimension } from './dimension.ts'
import { dimensions } from './dimension.ts'
import { nearestWord } from './nearestWord.ts'
import { unitsFor } from './readableUnits.ts'

/** The unit that an unknown text most likely meant, within one dimension or among all. */
export function nearestUnit(text: string, dimension?: Dimension): string | undefined {
  const candidates = dimension === undefined ? dimensions.flatMap(unitsFor) : unitsFor(dimension)
  const word = text.trim().replace(/^[[({](.*)[\])}]$/, '$1')
  return nearestWord(word, candidates) ?? candidates.find((name) => bare(name) === bare(word))
}

const bare = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-zµ°%‰]/g, '')
    .replace(/^u/, 'µ')
