import type { SignalPage } from './signals.ts'

/** Mean of the numbers that a signal has on these pages; NaN where it has none. */
export function pagedMean(pages: Iterable<SignalPage>, signal: (page: SignalPage) => Float64Array | null): number {
  let sum = 0
  let count = 0
  for (const page of pages) {
    const values = signal(page)
    if (values === null) break
    for (let i = 0; i < values.length; i++) {
      if (Number.isNaN(values[i])) continue
      sum += values[i]
      count++
    }
  }
  return count === 0 ? Number.NaN : sum / count
}
