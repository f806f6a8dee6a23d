const splitter = 134217729 // 2^27 + 1

/**
 * A running sum of products kept in twice the precision of a double (Ogita, Rump & Oishi 2005, algorithm Dot2, with the
 * exact product of Dekker 1971). Terms must stay below 1e290 in size.
 */
export class CompensatedDot {
  private high = 0
  private low = 0

  add(a: number, b: number): this {
    const product = a * b
    const aHigh = a * splitter - (a * splitter - a)
    const bHigh = b * splitter - (b * splitter - b)
    const aLow = a - aHigh
    const bLow = b - bHigh
    const productLow = aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow)
    const sum = this.high + product
    const part = sum - this.high
    this.low += this.high - (sum - part) + (product - part) + productLow
    this.high = sum
    return this
  }

  get value(): number {
    return this.high + this.low
  }
}
