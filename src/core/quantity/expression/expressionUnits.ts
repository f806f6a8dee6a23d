import type { Exponents } from '../dimension.ts'
import { knownFunctions } from './functions.ts'
import type { ExpressionNode } from './node.ts'

/** Exponents of a formula's unit, or why it has none. */
export type ExpressionUnits =
  | { readonly ok: true; readonly exponents: Exponents }
  | { readonly ok: false; readonly what: string }

const none: Exponents = [0, 0, 0, 0, 0]
const symbols = ['m', 'kg', 's', 'K'] as const

/**
 * The unit in which a formula comes out, from the units of its quantities: unlike ones must not be added, and functions such
 * as exp take plain numbers. Radians count as plain numbers here, so that Ω·r is a speed.
 */
export function expressionUnits(node: ExpressionNode, units: readonly Exponents[]): ExpressionUnits {
  switch (node.is) {
    case 'number':
      return fine(none)
    case 'name':
      return fine(units[node.index])
    case 'negative':
      return expressionUnits(node.of, units)
    case 'operation':
      return ofOperation(node, units)
    case 'call':
      return ofCall(node, units)
  }
}

type Of<K extends ExpressionNode['is']> = Extract<ExpressionNode, { is: K }>

function ofOperation(node: Of<'operation'>, units: readonly Exponents[]): ExpressionUnits {
  const left = expressionUnits(node.left, units)
  if (!left.ok) return left
  const right = expressionUnits(node.right, units)
  if (!right.ok) return right
  const [a, b] = [left.exponents, right.exponents]
  switch (node.operation) {
    case '+':
    case '-':
      return same(a, b) ? left : { ok: false, what: `It adds ${unitInWords(a)} and ${unitInWords(b)}.` }
    case '*':
      return fine(merge(a, b, 1))
    case '/':
      return fine(merge(a, b, -1))
    case '^':
      return power(node.right, a, b)
  }
}

function power(exponent: ExpressionNode, base: Exponents, of: Exponents): ExpressionUnits {
  if (!same(of, none)) return { ok: false, what: `A power has the unit ${unitInWords(of)}.` }
  if (same(base, none)) return fine(none)
  const by = constant(exponent)
  if (by === undefined) return { ok: false, what: `${unitInWords(base)} is raised to a power that may vary.` }
  return fine(scaled(base, by))
}

/** A power that is written as a number, also with a minus or as a fraction. */
function constant(node: ExpressionNode): number | undefined {
  if (node.is === 'number') return node.value
  if (node.is === 'negative') {
    const of = constant(node.of)
    return of === undefined ? undefined : -of
  }
  if (node.is !== 'operation' || node.operation !== '/') return undefined
  const [above, below] = [constant(node.left), constant(node.right)]
  return above === undefined || below === undefined ? undefined : above / below
}

function ofCall(node: Of<'call'>, units: readonly Exponents[]): ExpressionUnits {
  const { units: does } = knownFunctions[node.called]
  const given: Exponents[] = []
  for (const one of node.given) {
    const unit = expressionUnits(one, units)
    if (!unit.ok) return unit
    given.push(unit.exponents)
  }
  const [first] = given
  if (does === 'root') return fine(scaled(first, 0.5))
  const wanted = does === 'plain' ? none : first
  const other = given.find((unit) => !same(unit, wanted))
  if (other === undefined) return fine(wanted)
  const what =
    does === 'plain' ? `takes plain numbers, not ${unitInWords(other)}` : 'holds unlike units against each other'
  return { ok: false, what: `${node.called} ${what}.` }
}

const fine = (exponents: Exponents): ExpressionUnits => ({ ok: true, exponents })

const merge = (a: Exponents, b: Exponents, sign: 1 | -1): Exponents => [
  a[0] + sign * b[0],
  a[1] + sign * b[1],
  a[2] + sign * b[2],
  a[3] + sign * b[3],
  a[4] + sign * b[4],
]

const scaled = (a: Exponents, by: number): Exponents => [a[0] * by, a[1] * by, a[2] * by, a[3] * by, a[4] * by]

const same = (a: Exponents, b: Exponents): boolean => symbols.every((_, index) => Math.abs(a[index] - b[index]) < 1e-9)

/** Exponents as text: `kg·m/s²`, `1` for a plain number. */
export function unitInWords(exponents: Exponents): string {
  const part = (index: number, size: number): string => symbols[index] + (size === 1 ? '' : raised(size))
  const above = symbols.flatMap((_, index) => (exponents[index] > 1e-9 ? [part(index, exponents[index])] : []))
  const below = symbols.flatMap((_, index) => (exponents[index] < -1e-9 ? [part(index, -exponents[index])] : []))
  const over = above.length === 0 ? '1' : above.join('·')
  if (below.length === 0) return over
  return `${over}/${below.length === 1 ? below[0] : `(${below.join('·')})`}`
}

const raised = (size: number): string =>
  Number.isInteger(size) ? [...String(size)].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(digit))).join('') : `^${size}`

/** True where two units measure the same, radians aside. */
export const sameUnits = same
