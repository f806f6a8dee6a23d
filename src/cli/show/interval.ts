import type { Bounded } from '../../core/terms/index.ts'

/** "0.2031 (0.2019 to 0.2044)", an open end named. As many digits as the narrower side of the interval bears. */
export function intervalInWords({ value, low, high }: Bounded, scale = 1): string {
  const ends = [low, high].filter((end) => end !== null)
  const half = Math.min(...ends.map((end) => Math.abs(end - value)).filter((reach) => reach > 0)) * scale
  const digits = Number.isFinite(half) ? Math.max(0, 1 - Math.floor(Math.log10(half))) : undefined
  const print = (at: number | null): string =>
    at === null ? 'open' : digits === undefined ? short(at * scale) : spelled(at * scale, digits)
  return `${print(value)} (${print(low)} to ${print(high)})`
}

/** Numbers too large or small for decimals are rounded to four digits. */
const spelled = (value: number, digits: number): string =>
  digits > 12 ? short(value) : value.toFixed(digits).replace(/^-(0(\.0*)?)$/, '$1')

const short = (value: number): string => String(Number(value.toPrecision(4)))
