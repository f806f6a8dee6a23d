import type { Exponents } from '../dimension.ts'
import { foldUnit } from '../foldUnit.ts'
import { readNumber } from '../readNumber.ts'
import { unitFactors } from '../unitFactors.ts'
import { printFactors, product, unitsOf } from '../unitsOf.ts'

/** A unit of whatever it may measure, such as mm³/(N·m): a value in SI is `factor` times the value, plus `offset`. */
export interface AnyUnit {
  readonly text: string
  readonly factor: number
  /** Of a temperature with a zero of its own; 0 for all others. */
  readonly offset: number
  readonly exponents: Exponents
}

/** A value in SI with the unit that it was written in, or what is wrong with the text and what would mend it. */
export type AnyQuantity =
  | { readonly ok: true; readonly value: number; readonly unit: AnyUnit }
  | { readonly ok: false; readonly what: string; readonly mend: string }

const plainNumber: AnyUnit = { text: '1', factor: 1, offset: 0, exponents: [0, 0, 0, 0, 0] }

/** Reads a unit of known symbols; undefined where one is not known. A lone °C has its offset. */
export function anyUnit(text: string): AnyUnit | undefined {
  const folded = foldUnit(text)
  if (folded === '') return plainNumber
  const factors = unitFactors(folded)
  if (factors === undefined) return undefined
  const total: [number, number, number, number, number] = [0, 0, 0, 0, 0]
  for (const { atom, exponent } of factors) {
    for (let base = 0; base < total.length; base++) total[base] += exponent * atom.exponents[base]
  }
  const alone = factors.length === 1 && factors[0].exponent === 1 ? factors[0] : undefined
  return { text: printFactors(factors), factor: product(factors), offset: alone?.atom.offset ?? 0, exponents: total }
}

/** Reads a number with any unit that can be made of known symbols. A number without one is a plain number. */
export function readAnyQuantity(text: string): AnyQuantity {
  const number = readNumber(text)
  if (!number.ok) {
    const what = `"${text.trim()}" does not begin with a number that can be read.`
    return { ok: false, what, mend: 'Write a number with a decimal point and a unit, such as "5 N".' }
  }
  const { value, rest } = number
  const unit = anyUnit(rest)
  if (unit === undefined) {
    return { ok: false, what: `The unit "${rest}" is not known.`, mend: 'Write it from known ones, such as mm³/(N·m).' }
  }
  if (isRotation(rest)) {
    const what = `"${rest}" can mean turns or plain events.`
    return { ok: false, what, mend: 'Write rpm or rad/s for a rotation, Hz for events.' }
  }
  const si = value * unit.factor
  return { ok: true, value: unit.offset === 0 ? si : Number((si + unit.offset).toPrecision(15)), unit }
}

/** 1/min and 1/s are turns to some and events to others; Hz is not. */
const isRotation = (text: string): boolean => {
  const readings = unitsOf(text)
  return (
    readings.some(({ dimension }) => dimension === 'angularVelocity') &&
    readings.some(({ dimension, text: name }) => dimension === 'frequency' && !name.endsWith('Hz'))
  )
}
