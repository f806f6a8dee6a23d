import type { LaggedProducts } from './laggedProducts.ts'

/** One new column as a sum of old ones: pairs of old column and factor. */
export type Combination = readonly (readonly [column: number, factor: number])[]

/** Products of new columns that are sums of the old ones, without another pass over the rows. */
export function mapProducts(products: LaggedProducts, columns: readonly Combination[]): LaggedProducts {
  const size = columns.length
  const same = new Float64Array(size * size)
  const next = new Float64Array(size * size)
  const inner = new Float64Array(size * size)
  for (let a = 0; a < size; a++) {
    for (let b = a; b < size; b++) {
      const at = a * size + b
      for (const [i, x] of columns[a]) {
        for (const [j, y] of columns[b]) {
          const from = i * products.size + j
          same[at] += x * y * products.same[from]
          next[at] += x * y * products.next[from]
          inner[at] += x * y * products.inner[from]
        }
      }
      const mirrored = b * size + a
      same[mirrored] = same[at]
      next[mirrored] = next[at]
      inner[mirrored] = inner[at]
    }
  }
  return { size, rows: products.rows, stretches: products.stretches, same, next, inner }
}
