/**
 * Letters for things in their order: two that share a letter cannot be told apart, two that share none can. Insert and absorb of
 * Piepho 2004 (J. Comput. Graph. Stat. 13:456). `told` says whether two, by their index, differ.
 */
export function compactLetters(count: number, told: (first: number, second: number) => boolean): string[] {
  let columns: ReadonlySet<number>[] = [new Set(Array.from({ length: count }, (_, i) => i))]
  for (let first = 0; first < count; first++) {
    for (let second = first + 1; second < count; second++) {
      if (told(first, second)) columns = absorbed(columns.flatMap((column) => split(column, first, second)))
    }
  }
  const firstOf = (column: ReadonlySet<number>): number => Math.min(...column)
  const lastOf = (column: ReadonlySet<number>): number => Math.max(...column)
  const ordered = columns.toSorted((a, b) => firstOf(a) - firstOf(b) || lastOf(a) - lastOf(b))
  return Array.from({ length: count }, (_, i) =>
    ordered.map((column, letter) => (column.has(i) ? letterAt(letter) : '')).join(''),
  )
}

function split(column: ReadonlySet<number>, first: number, second: number): ReadonlySet<number>[] {
  if (!column.has(first) || !column.has(second)) return [column]
  const without = (one: number): Set<number> => new Set([...column].filter((i) => i !== one))
  return [without(second), without(first)]
}

/** Without those that lie inside another. */
function absorbed(columns: readonly ReadonlySet<number>[]): ReadonlySet<number>[] {
  return columns.filter(
    (column, at) =>
      !columns.some(
        (other, place) =>
          place !== at && [...column].every((i) => other.has(i)) && (column.size < other.size || place < at),
      ),
  )
}

/** a to z, then a1, b1 … */
const letterAt = (place: number): string =>
  String.fromCharCode(97 + (place % 26)) + (place < 26 ? '' : String(Math.floor(place / 26)))
