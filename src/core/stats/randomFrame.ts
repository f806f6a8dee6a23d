import type { Random } from '../numeric/index.ts'

/**
 * Directions at right angles to each other, uniform in the space of residuals and contrasts: `rank` of them. Of each only the part
 * among the residuals is kept, as one number a replicate whose sum over a sample is zero.
 */
export class RandomFrame {
  readonly rank: number
  readonly replicates: number
  private readonly counts: readonly number[]
  /** Row after row: a number a replicate, then one for each dimension of the contrasts. */
  private readonly rows: Float64Array
  private readonly width: number

  constructor(counts: readonly number[], rank: number) {
    this.counts = counts
    this.rank = rank
    this.replicates = counts.reduce((sum, count) => sum + count, 0)
    this.width = this.replicates + rank
    this.rows = new Float64Array(rank * this.width)
  }

  draw(random: Random): void {
    random.fillNormal(this.rows)
    for (let f = 0; f < this.rank; f++) {
      this.centre(f)
      for (let g = 0; g < f; g++) this.subtract(f, g, this.dot(f, g))
      const length = Math.sqrt(this.dot(f, f))
      for (let k = f * this.width; k < (f + 1) * this.width; k++) this.rows[k] /= length
    }
  }

  /** Parts of the direction that begins at `from` along each of the frame; answers the sum of their squares. */
  along(directions: Float64Array, from: number, parts: Float64Array): number {
    const { rows, width, replicates, rank } = this
    let squares = 0
    for (let f = 0; f < rank; f++) {
      const row = f * width
      let sum = 0
      for (let k = 0; k < replicates; k++) sum += rows[row + k] * directions[from + k]
      parts[f] = sum
      squares += sum * sum
    }
    return squares
  }

  private centre(f: number): void {
    let from = f * this.width
    for (const count of this.counts) {
      let sum = 0
      for (let k = from; k < from + count; k++) sum += this.rows[k]
      for (let k = from; k < from + count; k++) this.rows[k] -= sum / count
      from += count
    }
  }

  private dot(f: number, g: number): number {
    let sum = 0
    for (let k = 0; k < this.width; k++) sum += this.rows[f * this.width + k] * this.rows[g * this.width + k]
    return sum
  }

  private subtract(f: number, g: number, share: number): void {
    for (let k = 0; k < this.width; k++) this.rows[f * this.width + k] -= share * this.rows[g * this.width + k]
  }
}
