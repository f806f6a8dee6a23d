import { type Dimension, dimensionTable, type Exponents } from '../dimension.ts'
import { compileExpression, type Formula } from './compileExpression.ts'
import { expressionUnits, sameUnits, unitInWords } from './expressionUnits.ts'
import type { ExpressionFault } from './node.ts'
import { parseExpression } from './parseExpression.ts'

/** A quantity that a formula may use. */
export interface FormulaQuantity {
  readonly name: string
  readonly exponents: Exponents
}

/** A formula that is ready to be computed in SI. */
export interface ReadFormula {
  readonly evaluate: Formula
  /** What it measures, where it has a name here; null for others such as m³/(N·m). */
  readonly dimension: Dimension | null
  /** SI unit in which it comes out, in base units where it has no name. */
  readonly unit: string
  readonly exponents: Exponents
}

/** Such a formula, or the place where it goes wrong. */
export type FormulaIn =
  | { readonly ok: true; readonly formula: ReadFormula }
  | { readonly ok: false; readonly fault: ExpressionFault }

/** Reads a formula of quantities that have units, and finds the unit in which it comes out. */
export function formulaIn(text: string, quantities: readonly FormulaQuantity[]): FormulaIn {
  const parsed = parseExpression(
    text,
    quantities.map(({ name }) => name),
  )
  if (!parsed.ok) return parsed
  const units = expressionUnits(
    parsed.root,
    quantities.map(({ exponents }) => exponents),
  )
  if (!units.ok) {
    return { ok: false, fault: { at: 1, what: units.what, mend: 'Check the formula and the units of its quantities.' } }
  }
  const dimension = dimensionWith(units.exponents)
  return {
    ok: true,
    formula: {
      evaluate: compileExpression(parsed.root),
      dimension,
      unit: dimension === null ? unitInWords(units.exponents) : dimensionTable[dimension].si,
      exponents: units.exponents,
    },
  }
}

/** Names in the order in which they are tried: an energy is written as a torque, a rate as a frequency. */
const named: readonly Dimension[] = [
  'ratio',
  'length',
  'time',
  'mass',
  'velocity',
  'force',
  'torque',
  'pressure',
  'viscosity',
  'kinematicViscosity',
  'frequency',
  'temperatureDifference',
  'momentOfInertia',
]

const dimensionWith = (exponents: Exponents): Dimension | null =>
  named.find((dimension) => {
    const [of] = dimensionTable[dimension].exponents
    return of !== undefined && sameUnits(exponents, of)
  }) ?? null
