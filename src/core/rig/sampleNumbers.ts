import type { Random } from '../numeric/index.ts'

/** Even between the ends. */
export const between = (random: Random, low: number, high: number): number => low + (high - low) * random.uniform()

/** Even in the logarithm between the ends, which must be above zero. */
export const evenInLog = (random: Random, low: number, high: number): number => low * (high / low) ** random.uniform()
