import { nearestWord } from '../nearestWord.ts'
import { knownConstants, knownFunctions } from './functions.ts'
import type { ExpressionFault, ExpressionNode, Operation } from './node.ts'
import { foldName, type Token, tokensOf } from './tokens.ts'

/** Nobody writes a longer formula, and a deeper one would only fill the stack. */
const longest = 2000
const deepest = 60

/** A formula, or the first place where it goes wrong. */
export type ParsedExpression =
  | { readonly ok: true; readonly root: ExpressionNode }
  | { readonly ok: false; readonly fault: ExpressionFault }

/**
 * Reads a formula of named quantities: numbers, names, + − * / ^ (right to left, before a leading minus), parentheses, and the
 * functions of `knownFunctions`. It is parsed into a tree that can do nothing but arithmetic: no text is ever run.
 *
 * @param names the quantities that it may use; their order is that of the values handed to it later
 */
export function parseExpression(text: string, names: readonly string[]): ParsedExpression {
  if (text.length > longest) {
    return {
      ok: false,
      fault: { at: 1, what: `The formula has ${text.length} letters.`, mend: 'Split it into several.' },
    }
  }
  const split = tokensOf(text)
  if ('fault' in split) return { ok: false, fault: split.fault }
  const reader = new Reader(split.tokens, names.map(foldName))
  try {
    return { ok: true, root: reader.whole() }
  } catch (error) {
    if (error instanceof Faulty) return { ok: false, fault: error.fault }
    throw error
  }
}

/** Carries a fault up through the levels of the parser; never leaves this file. */
class Faulty extends Error {
  readonly fault: ExpressionFault
  constructor(fault: ExpressionFault) {
    super(fault.what)
    this.fault = fault
  }
}

const fail = ({ at }: Token, what: string, mend: string): never => {
  throw new Faulty({ at, what, mend })
}

const strength: Readonly<Record<string, number>> = { '+': 1, '-': 1, '*': 2, '/': 2, '^': 4 }

/** By precedence climbing (Pratt 1973). */
class Reader {
  private readonly tokens: readonly Token[]
  private readonly names: readonly string[]
  private place = 0
  private depth = 0

  constructor(tokens: readonly Token[], names: readonly string[]) {
    this.tokens = tokens
    this.names = names
  }

  whole(): ExpressionNode {
    const root = this.expression(0)
    const next = this.next()
    if (next.is === 'end') return root
    if (next.text === ')') return fail(next, 'A parenthesis is closed that was never opened.', 'Take it out.')
    return fail(next, `Nothing joins "${next.text}" to what stands before it.`, 'Write * where you mean a product.')
  }

  private get token(): Token {
    return this.tokens[this.place]
  }

  private next(): Token {
    const token = this.token
    if (token.is !== 'end') this.place++
    return token
  }

  private expression(least: number): ExpressionNode {
    if (++this.depth > deepest) return fail(this.token, 'The formula is nested too deep.', 'Split it into several.')
    let left = this.prefix()
    for (;;) {
      const { is, text } = this.token
      const power = is === 'sign' ? strength[text] : undefined
      if (power === undefined || power < least) break
      this.next()
      // A power binds from the right, everything else from the left.
      const right = this.expression(text === '^' ? power : power + 1)
      left = { is: 'operation', operation: text as Operation, left, right } // one of the keys of `strength`
    }
    this.depth--
    return left
  }

  private prefix(): ExpressionNode {
    const token = this.next()
    if (token.is === 'number') return { is: 'number', value: Number(token.text) }
    if (token.is === 'name') return this.named(token)
    if (token.text === '-') return { is: 'negative', of: this.expression(3) }
    if (token.text === '+') return this.expression(3)
    if (token.text === '(') {
      const inner = this.expression(0)
      this.close(token)
      return inner
    }
    const what =
      token.is === 'end' ? 'The formula ends where a value is due.' : `"${token.text}" stands where a value is due.`
    return fail(token, what, 'Write a number, a quantity or a function there.')
  }

  private named(token: Token): ExpressionNode {
    const index = this.names.indexOf(token.text)
    if (this.token.text === '(' && index < 0) return this.call(token)
    if (index >= 0) return { is: 'name', index, name: token.text }
    const constant = knownConstants[token.text]
    if (Object.hasOwn(knownConstants, token.text)) return { is: 'number', value: constant }
    const nearest = nearestWord(token.text, this.names)
    const mend = nearest === undefined ? `Known are ${this.names.join(', ')}.` : `Did you mean ${nearest}?`
    return fail(token, `No quantity is called "${token.text}".`, mend)
  }

  private call(token: Token): ExpressionNode {
    if (!Object.hasOwn(knownFunctions, token.text)) {
      return fail(
        token,
        `No function is called "${token.text}".`,
        `Known are ${Object.keys(knownFunctions).join(', ')}.`,
      )
    }
    const open = this.next()
    const given: ExpressionNode[] = [this.expression(0)]
    while (this.token.text === ',') {
      this.next()
      given.push(this.expression(0))
    }
    this.close(open)
    const [least, most] = knownFunctions[token.text].takes
    if (given.length < least || given.length > most) {
      const wanted = least === most ? String(least) : `${least} to ${most}`
      return fail(token, `${token.text} got ${given.length} values.`, `Give it ${wanted}.`)
    }
    return { is: 'call', called: token.text, given }
  }

  private close(open: Token): void {
    if (this.next().text !== ')') fail(open, 'A parenthesis is never closed.', 'Close it with ")".')
  }
}
