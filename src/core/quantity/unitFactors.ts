import { type Atom, atoms, prefixFactors } from './atoms.ts'

/** One atom with its prefix and exponent, as in the µN and s² of µN·m·s². */
export interface UnitFactor {
  readonly symbol: string
  readonly atom: Atom
  readonly scale: number
  readonly exponent: number
}

interface Symbolled {
  readonly symbol: string
  readonly atom: Atom
  readonly scale: number
}

const bySymbol = new Map<string, Symbolled>()
const byWord = new Map<string, Symbolled>()

for (const atom of atoms) {
  for (const symbol of atom.symbols) {
    const prefixes = atom.prefixes ?? ''
    for (const prefix of prefixes.includes('µ') ? `${prefixes}u` : prefixes) {
      const printed = prefix === 'u' ? `µ${symbol}` : `${prefix}${symbol}`
      bySymbol.set(prefix + symbol, { symbol: printed, atom, scale: prefixFactors[prefix] })
    }
  }
}
// Second, so that a name of its own (min, kgf) wins over prefix and symbol.
for (const atom of atoms) {
  for (const symbol of atom.symbols) bySymbol.set(symbol, { symbol: atom.symbols[0], atom, scale: 1 })
  for (const word of atom.words ?? []) byWord.set(word, { symbol: atom.symbols[0] ?? word, atom, scale: 1 })
}

/** Products that people write without a sign between: Nm, mPas, kgm2, kgfcm. The exponent belongs to the last. */
const unsignedProducts: readonly RegExp[] = [
  /^(.*N)([cm]?m)$/u,
  /^(.*N)(m)(s)$/u,
  /^(.*Pa)(s)$/u,
  /^(k?g)([cm]?m)$/u,
  /^(kgf|gf|kp|lbf|ozf)([cm]?m|in|ft)$/u,
  /^(rad|[cmµun]m)(s)$/u,
]

/**
 * The factors of a folded unit text, or undefined when a part is not known or the text is ambiguous:
 * `a/b·c` is refused as the SI Brochure (5.4.6) asks; `a/(b·c)` is read.
 */
export function unitFactors(folded: string): readonly UnitFactor[] | undefined {
  const pieces = splitQuotient(folded)
  if (pieces === undefined) return undefined
  const found: UnitFactor[] = []
  for (const [index, piece] of pieces.entries()) {
    const bracketed = /^\((.*)\)$/.exec(piece)
    const factors = (bracketed?.[1] ?? piece).split('·')
    if (index > 0 && factors.length > 1 && bracketed === null) return undefined
    for (const factor of factors) {
      const resolved = resolve(factor, index === 0 ? 1 : -1)
      if (resolved === undefined) return undefined
      found.push(...resolved)
    }
  }
  return found
}

/** The pieces between the slashes that stand outside brackets. */
function splitQuotient(folded: string): string[] | undefined {
  const pieces = ['']
  let depth = 0
  for (const letter of folded) {
    if (letter === '(') depth++
    if (letter === ')') depth--
    if (depth < 0 || depth > 1) return undefined
    if (letter === '/' && depth === 0) pieces.push('')
    else pieces[pieces.length - 1] += letter
  }
  return depth === 0 ? pieces : undefined
}

function resolve(text: string, sign: 1 | -1): UnitFactor[] | undefined {
  if (text === '1' || text === '-') return [{ ...known(text), exponent: sign }]
  const parts = /^([^\d+-]+)([+-]?\d)?$/u.exec(text)
  if (parts === null) return undefined
  const exponent = Number(parts[2] ?? 1)
  const single = lookUp(parts[1])
  if (single !== undefined) return [{ ...single, exponent: sign * exponent }]
  for (const product of unsignedProducts) {
    const symbols = product.exec(parts[1])?.slice(1)
    if (symbols === undefined) continue
    const atomsOfIt = symbols.map(lookUp).filter((one) => one !== undefined)
    if (atomsOfIt.length !== symbols.length) continue
    return atomsOfIt.map((one, index) => ({ ...one, exponent: sign * (index === symbols.length - 1 ? exponent : 1) }))
  }
  return undefined
}

function lookUp(symbol: string): Symbolled | undefined {
  return (
    bySymbol.get(symbol) ?? byWord.get(symbol.toLowerCase()) ?? bySymbol.get(caseless.get(symbol.toLowerCase()) ?? '')
  )
}

/** Abbreviations of three letters and more that are read in any case, as in RPM. */
const caseless = new Map(['rpm', 'rps', 'min', 'deg', 'rad', 'rev', 'turn', 'ppm', 'bar'].map((name) => [name, name]))

function known(symbol: string): Symbolled {
  const entry = bySymbol.get(symbol)
  if (entry === undefined) throw new RangeError(`no unit is called ${symbol}`)
  return entry
}
