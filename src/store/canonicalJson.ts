/**
 * JSON with keys in order of their code units and no blanks: equal values give equal text.
 * Throws RangeError for what JSON would drop or change without a word; −0 counts as 0.
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value)
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new RangeError(`JSON has no ${value}`)
    return JSON.stringify(value)
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`
  if (typeof value !== 'object') throw new RangeError(`JSON has no ${typeof value}`)
  const entries = Object.entries(value).filter(([, held]) => held !== undefined)
  entries.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
  return `{${entries.map(([key, held]) => `${JSON.stringify(key)}:${canonicalJson(held)}`).join(',')}}`
}
