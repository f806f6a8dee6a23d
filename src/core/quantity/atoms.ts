import type { Exponents } from './dimension.ts'

/**
 * Units without an operator in them. Factors to SI: SI Brochure, 9th edition (2019), tables 2, 4, 5, 7 and 8;
 * inch, foot, pound and kilogram-force are exact by definition (international yard and pound, 1959;
 * standard acceleration of free fall 9.80665 m/s², 3rd CGPM 1901).
 */
export interface Atom {
  /** Symbols as written; upper and lower case differ. The first is the one that we print. */
  readonly symbols: readonly string[]
  /** Words, in any case. */
  readonly words?: readonly string[]
  readonly exponents: Exponents
  readonly factor: number
  /** Added after the factor when the unit stands alone: zero point of a temperature scale. */
  readonly offset?: number
  /** Prefixes that people put before the symbols. */
  readonly prefixes?: string
  /** Too short to mean anything alone (the r of r/min). */
  readonly onlyInCompounds?: boolean
}

const standardGravity = 9.80665
const pound = 0.45359237
const inch = 0.0254
const turn = 2 * Math.PI

/** The units that we know. */
export const atoms: readonly Atom[] = [
  {
    symbols: ['s'],
    words: ['sec', 'secs', 'second', 'seconds', 'sek', 'sekunde', 'sekunden'],
    exponents: [0, 0, 1, 0, 0],
    factor: 1,
    prefixes: 'mµn',
  },
  { symbols: [], words: ['msec'], exponents: [0, 0, 1, 0, 0], factor: 1e-3 },
  { symbols: ['min'], words: ['mins', 'minute', 'minutes', 'minuten'], exponents: [0, 0, 1, 0, 0], factor: 60 },
  {
    symbols: ['h'],
    words: ['hr', 'hrs', 'hour', 'hours', 'std', 'stunde', 'stunden'],
    exponents: [0, 0, 1, 0, 0],
    factor: 3600,
  },
  {
    symbols: ['m'],
    words: ['metre', 'metres', 'meter', 'meters'],
    exponents: [1, 0, 0, 0, 0],
    factor: 1,
    prefixes: 'kdcmµn',
  },
  { symbols: [], words: ['micron', 'microns'], exponents: [1, 0, 0, 0, 0], factor: 1e-6 },
  { symbols: ['in', '"'], words: ['inch', 'inches', 'zoll'], exponents: [1, 0, 0, 0, 0], factor: inch },
  { symbols: ['ft'], words: ['foot', 'feet'], exponents: [1, 0, 0, 0, 0], factor: 12 * inch },
  { symbols: ['g'], words: ['gram', 'grams'], exponents: [0, 1, 0, 0, 0], factor: 1e-3, prefixes: 'kmµ' },
  { symbols: ['rad'], words: ['radian', 'radians'], exponents: [0, 0, 0, 0, 1], factor: 1, prefixes: 'mµ' },
  {
    symbols: ['°', 'deg', 'Grad'],
    words: ['degree', 'degrees'],
    exponents: [0, 0, 0, 0, 1],
    factor: turn / 360,
    prefixes: 'm',
  },
  {
    symbols: ['rev', 'turn'],
    words: ['revs', 'turns', 'revolution', 'revolutions', 'umdrehung', 'umdrehungen', 'umdr'],
    exponents: [0, 0, 0, 0, 1],
    factor: turn,
  },
  { symbols: ['U', 'r'], exponents: [0, 0, 0, 0, 1], factor: turn, onlyInCompounds: true },
  { symbols: ['rpm'], words: ['upm'], exponents: [0, 0, -1, 0, 1], factor: turn / 60, prefixes: 'm' },
  { symbols: ['rps'], exponents: [0, 0, -1, 0, 1], factor: turn },
  { symbols: ['Hz'], words: ['hertz'], exponents: [0, 0, -1, 0, 0], factor: 1, prefixes: 'Mkm' },
  { symbols: ['N'], words: ['newton', 'newtons'], exponents: [1, 1, -2, 0, 0], factor: 1, prefixes: 'Mkcmµn' },
  { symbols: ['gf'], exponents: [1, 1, -2, 0, 0], factor: standardGravity / 1000, prefixes: 'm' },
  { symbols: ['kgf', 'kp'], exponents: [1, 1, -2, 0, 0], factor: standardGravity },
  { symbols: ['lbf'], exponents: [1, 1, -2, 0, 0], factor: pound * standardGravity },
  { symbols: ['ozf'], exponents: [1, 1, -2, 0, 0], factor: (pound * standardGravity) / 16 },
  { symbols: ['dyn'], exponents: [1, 1, -2, 0, 0], factor: 1e-5 },
  { symbols: ['K'], words: ['kelvin'], exponents: [0, 0, 0, 1, 0], factor: 1, offset: 0, prefixes: 'm' },
  { symbols: ['°C', 'C', 'degC'], words: ['degc', 'celsius'], exponents: [0, 0, 0, 1, 0], factor: 1, offset: 273.15 },
  {
    symbols: ['°F', 'degF'],
    words: ['degf', 'fahrenheit'],
    exponents: [0, 0, 0, 1, 0],
    factor: 5 / 9,
    offset: (459.67 * 5) / 9,
  },
  { symbols: ['Pa'], words: ['pascal'], exponents: [-1, 1, -2, 0, 0], factor: 1, prefixes: 'GMkhmµ' },
  { symbols: ['bar'], exponents: [-1, 1, -2, 0, 0], factor: 1e5, prefixes: 'm' },
  { symbols: ['psi'], exponents: [-1, 1, -2, 0, 0], factor: (pound * standardGravity) / (inch * inch) },
  { symbols: ['P'], words: ['poise'], exponents: [-1, 1, -1, 0, 0], factor: 0.1, prefixes: 'cm' },
  { symbols: ['St'], words: ['stokes'], exponents: [2, 0, -1, 0, 0], factor: 1e-4, prefixes: 'c' },
  { symbols: ['1', '-'], exponents: [0, 0, 0, 0, 0], factor: 1 },
  { symbols: ['%'], words: ['percent', 'prozent', 'pct'], exponents: [0, 0, 0, 0, 0], factor: 0.01 },
  { symbols: ['‰'], words: ['permille', 'promille'], exponents: [0, 0, 0, 0, 0], factor: 1e-3 },
  { symbols: ['ppm'], exponents: [0, 0, 0, 0, 0], factor: 1e-6 },
]

/** SI Brochure, table 7. `u` is what keyboards without µ write. */
export const prefixFactors: Readonly<Record<string, number>> = {
  G: 1e9,
  M: 1e6,
  k: 1e3,
  h: 1e2,
  d: 1e-1,
  c: 1e-2,
  m: 1e-3,
  µ: 1e-6,
  u: 1e-6,
  n: 1e-9,
}
