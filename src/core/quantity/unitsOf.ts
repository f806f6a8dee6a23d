import { type Dimension, dimensions, dimensionTable } from './dimension.ts'
import { foldUnit } from './foldUnit.ts'
import { type UnitFactor, unitFactors } from './unitFactors.ts'

/** One reading of a unit text. In SI a value is `factor * value + offset`; `toSi` does it without needless rounding. */
export interface Unit {
  /** The unit as we write it: `mN·m`, `1/min`. */
  readonly text: string
  readonly dimension: Dimension
  readonly factor: number
  readonly offset: number
}

const turn = 2 * Math.PI

/**
 * All readings of a unit as people write it, the likeliest first; empty when the text is no unit that we know.
 * Several readings are an answer, not an error: K is a temperature or a difference; 1/min a rotational speed
 * (turns per minute) or a frequency; 1/s an angular velocity in rad/s or in turns per second, or a frequency;
 * `ms-1` m/s or 1/ms. Whoever knows the column chooses by dimension.
 */
export function unitsOf(text: string): readonly Unit[] {
  const folded = foldUnit(text)
  if (folded === '') return []
  if (folded === 'ms-1') return [...unitsOf('m/s'), ...unitsOf('1/ms')]
  const factors = unitFactors(folded)
  if (factors === undefined) return []
  const alone = factors.length === 1 && factors[0].exponent === 1 ? factors[0] : undefined
  if (factors.length === 1 && factors[0].atom.onlyInCompounds === true) return []
  const name = printFactors(factors)
  const factor = product(factors)
  const offset = alone?.atom.offset
  if (alone !== undefined && offset !== undefined) {
    return [
      { text: name, dimension: 'temperature', factor, offset },
      { text: name, dimension: 'temperatureDifference', factor, offset: 0 },
    ]
  }
  const readings = dimensionsOf(factors).map((dimension) => ({ text: name, dimension, factor, offset: 0 }))
  if (readings.some((reading) => reading.dimension === 'frequency')) return rotations(name, factor)
  if (alone?.symbol === '1') readings.push({ text: name, dimension: 'count', factor, offset: 0 })
  return readings
}

/** The factor of a whole unit. */
export function product(factors: readonly UnitFactor[]): number {
  // Multiplying what stands above and below the line apart keeps powers of ten exact.
  let above = 1
  let below = 1
  for (const { atom, scale, exponent } of factors) {
    const one = scale < 1 ? atom.factor / Math.round(1 / scale) : atom.factor * scale
    const inverse = Math.round(1 / one)
    const divides = inverse > 1 && 1 / inverse === one
    const power = (divides ? inverse : one) ** Math.abs(exponent)
    if (exponent > 0 !== divides) above *= power
    else below *= power
  }
  return above / below
}

function dimensionsOf(factors: readonly UnitFactor[]): Dimension[] {
  const total = [0, 0, 0, 0, 0]
  for (const { atom, exponent } of factors) {
    for (let base = 0; base < 5; base++) total[base] += exponent * atom.exponents[base]
  }
  return dimensions.filter(
    (dimension) =>
      dimension !== 'temperature' &&
      dimensionTable[dimension].exponents.some((row) => row.every((power, base) => power === total[base])),
  )
}

/** Turns and frequencies share their unit. Per minute means turns; per second may mean radians as well. */
function rotations(text: string, factor: number): Unit[] {
  const frequency: Unit = { text, dimension: 'frequency', factor, offset: 0 }
  const turns: Unit = { text, dimension: 'angularVelocity', factor: factor * turn, offset: 0 }
  if (text === '1/s') {
    return [
      { text: 'rad/s', dimension: 'angularVelocity', factor: 1, offset: 0 },
      frequency,
      { text: 'rev/s', dimension: 'angularVelocity', factor: turn, offset: 0 },
    ]
  }
  if (text === '1/min' || text === '1/h') return [turns, frequency]
  return text.endsWith('Hz') ? [frequency, turns] : [frequency]
}

const raised: Readonly<Record<number, string>> = { 1: '', 2: '²', 3: '³', 4: '⁴' }

/** A unit as we write it. */
export function printFactors(factors: readonly UnitFactor[]): string {
  const side = (sign: 1 | -1): string[] =>
    factors
      .filter(({ exponent, symbol }) => exponent * sign > 0 && symbol !== '1')
      .map(({ symbol, exponent }) => symbol + (raised[Math.abs(exponent)] ?? `^${Math.abs(exponent)}`))
  const above = side(1).join('·') || '1'
  const below = side(-1)
  if (below.length === 0) return above
  return `${above}/${below.length === 1 ? below[0] : `(${below.join('·')})`}`
}
