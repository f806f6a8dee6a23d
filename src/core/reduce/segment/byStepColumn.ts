/** Rows `from` to `to` that belong together. */
export interface Stretch {
  readonly number: number
  readonly from: number
  readonly to: number
}

const pageRows = 16_384

/** A new stretch wherever the step column changes its value; NaN continues the stretch before it. */
export function byStepColumn(read: (from: number, to: number) => Float64Array, rows: number): Stretch[] {
  const stretches: Stretch[] = []
  let start = 0
  let current = Number.NaN
  for (let from = 0; from < rows; from += pageRows) {
    const page = read(from, Math.min(rows, from + pageRows))
    for (let i = endOfRun(page, 0, current); i < page.length; i = endOfRun(page, i, current)) {
      const value = page[i]
      if (!Number.isNaN(current)) {
        stretches.push({ number: current, from: start, to: from + i })
        start = from + i
      }
      current = value
    }
  }
  if (rows > 0) stretches.push({ number: Number.isNaN(current) ? 1 : current, from: start, to: rows })
  return stretches
}

/** First row from `from` on that holds another number. */
function endOfRun(page: Float64Array, from: number, value: number): number {
  let i = from
  while (i < page.length && (page[i] === value || Number.isNaN(page[i]))) i++
  return i
}
