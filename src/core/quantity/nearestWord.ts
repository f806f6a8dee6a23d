/**
 * The candidate that a mistyped word most likely meant: fewest letters added, lost, changed or swapped with their
 * neighbour (optimal string alignment distance), capitals aside. Undefined when none is near: more than one slip per
 * three letters. The first of equals wins.
 */
export function nearestWord(word: string, candidates: readonly string[]): string | undefined {
  let best: string | undefined
  let bestSlips = Number.POSITIVE_INFINITY
  for (const candidate of candidates) {
    const allowed = Math.max(1, Math.floor(Math.min(word.length, candidate.length) / 3))
    if (Math.abs(word.length - candidate.length) > allowed) continue
    const slips = slipsBetween(word.toLowerCase(), candidate.toLowerCase())
    if (slips <= allowed && slips < bestSlips) {
      best = candidate
      bestSlips = slips
    }
  }
  return best
}

function slipsBetween(a: string, b: string): number {
  let beforeLast: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, column) => column)
  for (let row = 1; row <= a.length; row++) {
    const current = [row]
    for (let column = 1; column <= b.length; column++) {
      const changed = last[column - 1] + (a[row - 1] === b[column - 1] ? 0 : 1)
      let least = Math.min(changed, last[column] + 1, current[column - 1] + 1)
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]
      if (swapped) least = Math.min(least, beforeLast[column - 2] + 1)
      current.push(least)
    }
    beforeLast = last
    last = current
  }
  return last[b.length]
}
