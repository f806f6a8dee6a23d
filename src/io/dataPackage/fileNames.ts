/** Extensions that a raw file keeps in a package, so that a double click opens no program that runs what is in it. */
const plainExtensions: readonly string[] = ['csv', 'tsv', 'txt', 'dat', 'asc', 'xlsx', 'parquet']

const longest = 40

/**
 * A name made of people's words that is safe on every system: small letters, digits and hyphens, at most forty. It says nothing
 * certain, so it never stands without a checksum beside it.
 */
export function plainName(words: string): string {
  const plain = words
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, longest)
    .replace(/^-+|-+$/g, '')
  return plain === '' ? 'record' : plain
}

/** What comes behind the last point of a file's name where it is a harmless one; `raw` otherwise. */
export function plainExtension(name: string): string {
  const [, extension = ''] = /\.([A-Za-z0-9]+)$/.exec(name) ?? []
  const small = extension.toLowerCase()
  return plainExtensions.includes(small) ? small : 'raw'
}

/** The name without that extension. */
export const stemOf = (name: string): string => name.replace(/\.[A-Za-z0-9]+$/, '')

/** The first digits of checksums, as many as tell all of them apart, twelve at least. */
export function shortIds(ids: readonly string[]): (id: string) => string {
  const different = new Set(ids)
  let digits = 12
  while (digits < 64 && new Set([...different].map((id) => id.slice(0, digits))).size < different.size) digits += 4
  return (id) => id.slice(0, digits)
}

const device = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i

/**
 * Tells whether a path from somebody else's package stays in it on every system: relative, forward slashes, no empty, hidden or dotted
 * part, no drive, no stream, no device.
 */
export const isSafePath = (path: string): boolean =>
  path.length > 0 &&
  path.length <= 400 &&
  /^[\w\-.@ ]+(\/[\w\-.@ ]+)*$/.test(path) &&
  path.split('/').every((part) => !/^\.|\.$|^\s|\s$/.test(part) && !device.test(part))
