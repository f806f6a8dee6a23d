import type { LaggedProducts } from './laggedProducts.ts'

/** One new column as a sum of old ones: pairs of old column and factor. */
export type Combination = readonly (readonly [column: number, factor: number])[]

/** Products of new columns that are sums of the old ones, without another pass over the rows. */
export function mapProducts(products: LaggedProducts, columns: readonly Combination[]): LaggedProducts {
  const size = columns.length
  const map = (matrix: Float64Array): Float64Array => {
    const out = new Float64Array(size * size)
    for (let a = 0; a < size; a++) {
      for (let b = a; b < size; b++) {
        let sum = 0
        for (const [i, x] of columns[a]) for (const [j, y] of columns[b]) sum += x * y * matrix[i * products.size + j]
        out[a * size + b] = out[b * size + a] = sum
      }
    }
    return out
  }
  return {
    size,
    rows: products.rows,
    stretches: products.stretches,
    same: map(products.same),
    next: map(products.next),
    inner: map(products.inner),
  }
}
