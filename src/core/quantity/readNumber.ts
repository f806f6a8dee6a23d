/** A number at the head of a text, and what follows it. */
export type NumberHead =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly why: 'none' | 'thousandsOrDecimal' | 'twoMarks' | 'tooLarge'; readonly text: string }

const minus = /[−–]/g
const fraction = /^([-+]?)(?:(\d+)\s+)?(\d+)\s*[/⁄]\s*(\d+)(?![\d/])/
const grouped = /^[-+]?\d{1,3}(?:[   ]\d{3})+(?!\d)/u
const plain = /^[-+]?(?:\d+(?:[.,]\d*)*|[.,]\d+)/
const exponent = /^(?:[eE]([-+]?\d+)|\s*[×·*x]\s*10\^?([-+]?\d+))/

/**
 * Reads `6.35 mm`, `0,5 %`, `1e-3 N·m`, `5·10⁻³ N`, `10 000 N`, `1/2 in`. Point and comma are both decimal marks;
 * a text in which the comma could as well mark thousands (`1,000`, `12,700.5`) is refused instead of guessed.
 */
export function readNumber(text: string): NumberHead {
  const folded = text.replace(/½/g, ' 1/2').replace(/¼/g, ' 1/4').normalize('NFKC').replace(minus, '-').trim()
  const parts = fraction.exec(folded)
  if (parts !== null) {
    const size = Number(parts[2] ?? 0) + Number(parts[3]) / Number(parts[4])
    return finite(parts[1] === '-' ? -size : size, folded, folded.slice(parts[0].length))
  }
  const group = grouped.exec(folded)?.[0]
  // Digits in groups of three may be followed by decimals; a plain head has taken them already.
  const decimals = group === undefined ? '' : (/^[.,]\d+/.exec(folded.slice(group.length))?.[0] ?? '')
  const head = group ?? plain.exec(folded)?.[0]
  if (head === undefined) return { ok: false, why: 'none', text: folded }
  const digits = head.replace(/\s/g, '') + decimals
  if ((digits.match(/[.,]/g) ?? []).length > 1) return { ok: false, why: 'twoMarks', text: digits }
  if (/^[-+]?[1-9]\d{0,2},\d{3}$/.test(digits)) return { ok: false, why: 'thousandsOrDecimal', text: digits }
  const tail = folded.slice(head.length + decimals.length)
  const power = exponent.exec(tail)
  const shift = power?.[1] ?? power?.[2] ?? '0'
  return finite(Number(`${digits.replace(',', '.')}e${shift}`), folded, tail.slice(power?.[0].length ?? 0))
}

function finite(value: number, text: string, rest: string): NumberHead {
  return Number.isFinite(value) ? { ok: true, value, rest: rest.trim() } : { ok: false, why: 'tooLarge', text }
}
