const invisible = /[\u200B-\u200D\u2060\uFEFF\u00AD]/gu
const brackets: Readonly<Record<string, string>> = { '[': ']', '(': ')', '{': '}', '<': '>' }

/**
 * One spelling for the many ways to write the same unit: `[mN.m]`, `mN*m`, `mN m`, `mN⋅m` all become `mN·m`;
 * `min⁻¹`, `min^-1`, `min^{-1}` become `min-1`; both code points of micro become µ (U+00B5).
 */
export function foldUnit(text: string): string {
  let folded = text
    .replace(/[º˚]/g, '°')
    .replace(/[″“”]/g, '"')
    .replace(invisible, '')
    .normalize('NFKC')
    .replace(/μ|\\mu\s*/g, 'µ')
    .replace(/[−–—‐‑]/g, '-')
    .replace(/⁄/g, '/')
    .trim()
  folded = stripBrackets(folded)
    .replace(/\*\*/g, '^')
    .replace(/(?:°|\bdeg\.?|\bGrad)\s*([CF])(?![A-Za-z])/g, '°$1')
    .replace(/\s*\^\s*/g, '^')
    .replace(/\^?[({]\s*([-+]?\d+)\s*[)}]/g, '^$1')
    .replace(/(?:^|\s+)(?:per|pro)\s+/gi, '/')
    .replace(/\s+(?=[-+]\d)/g, '')
    .replace(/\^/g, '')
    .replace(/(?<=\p{L})-(?=\p{L})/gu, '·')
    .replace(/[⋅•∙×*.]/g, '·')
    .replace(/\s*([/·])[\s·]*/g, '$1')
    .replace(/\s+/g, '·')
    .replace(/·(?=[)/])|·$/g, '')
  return folded.startsWith('/') ? `1${folded}` : folded.replace(/^·/, '')
}

/** Takes away a pair of brackets around the whole, as in `[s]`, but not those of `1/(m·s)`. */
function stripBrackets(text: string): string {
  let inner = text
  while (inner.length >= 2 && brackets[inner[0]] === inner[inner.length - 1]) {
    const between = inner.slice(1, -1)
    if (/[[\](){}<>]/.test(between) && !/^[^[\](){}<>]*[({][^[\](){}<>]*[)}][^[\](){}<>]*$/.test(between)) break
    inner = between.trim()
  }
  return inner
}
