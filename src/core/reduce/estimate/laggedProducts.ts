/**
 * Cross products of regressors and response at lag zero and one: all that generalised least squares with first-order
 * autoregressive errors needs, at any correlation, without another pass over the rows.
 */
export interface LaggedProducts {
  /** Number of columns; the last is the response. */
  readonly size: number
  readonly rows: number
  /** Stretches that were added up; errors are independent between them. */
  readonly stretches: number
  /** Σ zᵢzⱼ over all rows, row-major. */
  readonly same: Float64Array
  /** Σ (z[t] z[t−1]ᵀ + z[t−1] z[t]ᵀ)/2. */
  readonly next: Float64Array
  /** Σ zᵢzⱼ over the rows that are neither first nor last of a stretch. */
  readonly inner: Float64Array
}

/** Products of one stretch of equally spaced rows; every column has the length of the first. */
export function laggedProducts(columns: readonly Float64Array[]): LaggedProducts {
  const size = columns.length
  const rows = columns[0]?.length ?? 0
  const same = new Float64Array(size * size)
  const next = new Float64Array(size * size)
  const inner = new Float64Array(size * size)
  for (let a = 0; a < size; a++) {
    for (let b = a; b < size; b++) {
      const sums = pairSums(columns[a], columns[b])
      const edges = rows < 2 ? sums.same : columns[a][0] * columns[b][0] + columns[a][rows - 1] * columns[b][rows - 1]
      same[a * size + b] = same[b * size + a] = sums.same
      next[a * size + b] = next[b * size + a] = sums.next
      inner[a * size + b] = inner[b * size + a] = sums.same - edges
    }
  }
  return { size, rows, stretches: 1, same, next, inner }
}

/** Products of stretches taken together. */
export function addProducts(parts: readonly LaggedProducts[]): LaggedProducts {
  const [first] = parts
  if (first === undefined) throw new RangeError('addProducts needs at least one stretch')
  const sum = (pick: (part: LaggedProducts) => Float64Array) =>
    pick(first).map((_, i) => parts.reduce((total, part) => total + pick(part)[i], 0))
  return {
    size: first.size,
    rows: parts.reduce((total, part) => total + part.rows, 0),
    stretches: parts.reduce((total, part) => total + part.stretches, 0),
    same: sum((part) => part.same),
    next: sum((part) => part.next),
    inner: sum((part) => part.inner),
  }
}

/** Products after the rows are whitened for a lag-one correlation (Prais & Winsten 1954), put into `out`. */
export function whitened({ same, next, inner }: LaggedProducts, correlation: number, out: Float64Array): void {
  const [once, twice] = [2 * correlation, correlation * correlation]
  for (let i = 0; i < out.length; i++) out[i] = same[i] - once * next[i] + twice * inner[i]
}

function pairSums(a: Float64Array, b: Float64Array): { same: number; next: number } {
  let same = 0
  let next = 0
  let lastA = 0
  let lastB = 0
  for (let i = 0; i < a.length; i++) {
    const x = a[i]
    const y = b[i]
    same += x * y
    next += x * lastB + y * lastA
    lastA = x
    lastB = y
  }
  return { same, next: next / 2 }
}
