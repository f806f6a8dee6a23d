import type { ExpressionFault } from './node.ts'

/** A piece of a formula with the place of its first letter, from 1. */
export interface Token {
  readonly is: 'number' | 'name' | 'sign' | 'end'
  readonly text: string
  readonly at: number
}

/** Signs that people write for the same thing. */
const folded: Readonly<Record<string, string>> = { '·': '*', '×': '*', '⋅': '*', '−': '-', '÷': '/', '**': '^' }

const piece =
  /\s+|(?<number>(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?)|(?<name>\p{L}[\p{L}\p{Nd}_₀-₉]*)|(?<sign>\*\*|[-+*/^(),·×⋅−÷²³])/uy

/** A name with the two letters for micro folded into one. */
export const foldName = (name: string): string => name.replaceAll('\u00b5', '\u03bc')

/** The pieces of a formula, or the first letter that can be none. */
export function tokensOf(text: string): { readonly tokens: readonly Token[] } | { readonly fault: ExpressionFault } {
  const tokens: Token[] = []
  piece.lastIndex = 0
  let at = 0
  while (at < text.length) {
    piece.lastIndex = at
    const found = piece.exec(text)
    if (found === null) return { fault: noSign(text, at) }
    const { number, name, sign } = found.groups ?? {}
    if (number !== undefined) tokens.push({ is: 'number', text: number, at: at + 1 })
    else if (name !== undefined) tokens.push({ is: 'name', text: foldName(name), at: at + 1 })
    else if (sign === '²' || sign === '³') {
      tokens.push({ is: 'sign', text: '^', at: at + 1 }, { is: 'number', text: sign === '²' ? '2' : '3', at: at + 1 })
    } else if (sign !== undefined) tokens.push({ is: 'sign', text: folded[sign] ?? sign, at: at + 1 })
    at += found[0].length
  }
  return { tokens: [...tokens, { is: 'end', text: '', at: text.length + 1 }] }
}

const noSign = (text: string, at: number): ExpressionFault => ({
  at: at + 1,
  what: `"${[...text.slice(at)][0]}" means nothing in a formula.`,
  mend: 'Use numbers with a decimal point, names of quantities, + - * / ^, parentheses and known functions.',
})
