import { type Dimension, dimensionTable } from './dimension.ts'
import { nearestUnit } from './nearestUnit.ts'
import { readableUnits, unitsFor } from './readableUnits.ts'
import { type NumberHead, readNumber } from './readNumber.ts'
import { toSi } from './toSi.ts'
import { type Unit, unitsOf } from './unitsOf.ts'

/** A value in SI, or what is wrong with the text and what would mend it. */
export type ParsedQuantity =
  | { readonly ok: true; readonly value: number; readonly unit: Unit }
  | { readonly ok: false; readonly what: string; readonly mend: string }

const plainNumber: Unit = { text: '1', dimension: 'ratio', factor: 1, offset: 0 }

/**
 * Reads a quantity as people write it (`6.35 mm`, `0,5 %`, `23 °C`, `500 µm/s`) into SI. A number without a unit is
 * refused unless it is a ratio or a count; nothing is guessed.
 */
export function parseQuantity(text: string, dimension: Dimension): ParsedQuantity {
  const number = readNumber(text)
  if (!number.ok) return { ok: false, ...numberProblem(number, dimension) }
  const { value, rest } = number
  if (rest === '')
    return dimension === 'ratio' || dimension === 'count' ? whole(value, dimension) : noUnit(text, dimension)
  const readings = unitsOf(rest)
  const fitting = readings.filter((reading) => reading.dimension === dimension)
  if (fitting.length === 0) return wrongUnit(rest, readings, dimension)
  if (fitting.length > 1) {
    return {
      ok: false,
      what: `"${rest}" can mean ${fitting.map((unit) => unit.text).join(' or ')}.`,
      mend: `Write ${fitting.map((unit) => `"${value} ${unit.text}"`).join(' or ')}.`,
    }
  }
  if (dimension === 'count') return whole(value, dimension)
  return { ok: true, value: toSi(value, fitting[0]), unit: fitting[0] }
}

function whole(value: number, dimension: Dimension): ParsedQuantity {
  if (dimension === 'count' && !(Number.isSafeInteger(value) && value >= 0)) {
    return { ok: false, what: `${value} is not a whole number.`, mend: 'Write a whole number such as 3.' }
  }
  return { ok: true, value, unit: { ...plainNumber, dimension } }
}

function noUnit(text: string, dimension: Dimension): ParsedQuantity {
  return {
    ok: false,
    what: `"${text.trim()}" has no unit.`,
    mend: `Write it with a unit, such as "${text.trim()} ${readableUnits[dimension].usual}"; known are ${listed(dimension)}.`,
  }
}

function wrongUnit(rest: string, readings: readonly Unit[], dimension: Dimension): ParsedQuantity {
  const other = readings[0]
  const nearest = nearestUnit(rest, dimension)
  const what =
    other === undefined
      ? `The unit "${rest}" is not known.`
      : `"${rest}" is a unit of ${spoken(other.dimension)}, not of ${spoken(dimension)}.`
  const hint = other === undefined && nearest !== undefined ? `Did you mean "${nearest}"? Known are` : 'Write one of'
  return { ok: false, what, mend: `${hint} ${listed(dimension)}.` }
}

function numberProblem(head: Extract<NumberHead, { ok: false }>, dimension: Dimension): { what: string; mend: string } {
  const example = `"5${dimension === 'count' ? '' : ` ${readableUnits[dimension].usual}`}"`
  switch (head.why) {
    case 'none':
      return {
        what: `"${head.text}" does not begin with a number.`,
        mend: `Write a number and a unit, such as ${example}.`,
      }
    case 'twoMarks':
      return {
        what: `"${head.text}" has more than one decimal mark.`,
        mend: 'Write it without thousands marks, with one decimal point.',
      }
    case 'thousandsOrDecimal':
      return {
        what: `The comma in "${head.text}" can mark thousands or decimals.`,
        mend: `Write "${head.text.replace(',', '')}" or "${head.text.replace(',', '.')}".`,
      }
    case 'tooLarge':
      return {
        what: `"${head.text}" is no finite number.`,
        mend: `Write a number that can be measured, such as ${example}.`,
      }
  }
}

const listed = (dimension: Dimension): string => {
  const names = unitsFor(dimension)
  return names.length === 1 ? names[0] : `${names.slice(0, -1).join(', ')} or ${names[names.length - 1]}`
}

/** `angularVelocity` as words: angular velocity. */
const spoken = (dimension: Dimension): string =>
  dimension === 'ratio' ? dimension : dimension.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)

/** The SI unit in which the program keeps a dimension. */
export const siUnit = (dimension: Dimension): string => dimensionTable[dimension].si
