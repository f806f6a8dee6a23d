/** A name without what people write differently: capitals, umlauts, accents, spaces, hyphens, points. */
export const foldName = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll('ä', 'ae')
    .replaceAll('ö', 'oe')
    .replaceAll('ü', 'ue')
    .replaceAll('ß', 'ss')
    .normalize('NFKD')
    .replaceAll(/[^\p{Letter}\p{Number}]/gu, '')

/**
 * The names most like a written one, best first: those that share most pairs of neighbouring letters (Dice 1945, Ecology
 * 26:297). Unlike a count of slips this finds "stainless steel" from "steel, stainless". Empty when nothing is like it.
 */
export function likeNames(written: string, names: readonly string[], most = 3): readonly string[] {
  const pairs = pairsIn(foldName(written))
  return names
    .map((name) => ({ name, likeness: likeness(pairs, pairsIn(foldName(name))) }))
    .filter(({ likeness }) => likeness >= leastLikeness)
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, most)
    .map(({ name }) => name)
}

/** Below this two names have little more in common than their length. */
const leastLikeness = 0.4

/** Pairs of neighbours with a mark at both ends, so that a single letter has pairs too. */
const pairsIn = (folded: string): readonly string[] => {
  const letters = [...`^${folded}$`]
  return letters.slice(1).map((letter, i) => letters[i] + letter)
}

function likeness(first: readonly string[], second: readonly string[]): number {
  const left = [...second]
  let shared = 0
  for (const pair of first) {
    const at = left.indexOf(pair)
    if (at < 0) continue
    left.splice(at, 1)
    shared++
  }
  return (2 * shared) / (first.length + second.length)
}
