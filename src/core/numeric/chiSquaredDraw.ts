import type { Random } from './random.ts'

/** One draw of χ² with ν > 0 degrees of freedom, from gamma by Marsaglia & Tsang 2000 (ACM Trans. Math. Softw. 26:363). */
export function chiSquaredDraw(random: Random, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0 && degreesOfFreedom < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`degreesOfFreedom must be over zero and finite, got ${degreesOfFreedom}`)
  }
  const shape = degreesOfFreedom / 2
  // Below shape 1 draw at shape + 1 and scale by a power of a uniform.
  const boost = shape < 1 ? (1 - random.uniform()) ** (1 / shape) : 1
  const d = (shape < 1 ? shape + 1 : shape) - 1 / 3
  const c = 1 / Math.sqrt(9 * d)
  for (;;) {
    const x = random.normal()
    const v = (1 + c * x) ** 3
    if (v > 0 && Math.log(1 - random.uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return 2 * d * v * boost
  }
}
