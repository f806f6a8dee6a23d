/**
 * A name as an id: small letters, digits and hyphens, at most 64 of them; "" where nothing of that kind is in it.
 * Marks on letters are dropped, so that "Öl 3" and "ol-3" are one.
 */
export function identifierFrom(name: string): string {
  const letters = name.normalize('NFKD').replace(/\p{M}/gu, '').replaceAll('ß', 'ss').toLowerCase()
  const hyphened = letters.replace(/[^a-z0-9]+/g, '-').slice(0, 64)
  return hyphened.replace(/^-+|-+$/g, '')
}
