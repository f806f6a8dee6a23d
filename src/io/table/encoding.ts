export const encodings = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const

/** Latin-1 is read as Windows-1252, which holds all of its printable letters in the same places. */
export type Encoding = (typeof encodings)[number]

export interface EncodingFound {
  readonly encoding: Encoding
  /** Length of the byte-order mark to step over. */
  readonly mark: number
}

/** Tells the encoding from the first bytes: by their byte-order mark, by where zero bytes lie, or by whether they are UTF-8. */
export function sniffEncoding(bytes: Uint8Array): EncodingFound {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return { encoding: 'utf-8', mark: 3 }
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return { encoding: 'utf-16le', mark: 2 }
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return { encoding: 'utf-16be', mark: 2 }
  const sample = bytes.subarray(0, 4096)
  const zeros = [0, 0]
  for (let at = 0; at < sample.length; at++) if (sample[at] === 0) zeros[at & 1]++
  const half = sample.length / 2
  if (zeros[1] > 0.7 * half && zeros[0] < 0.1 * half) return { encoding: 'utf-16le', mark: 0 }
  if (zeros[0] > 0.7 * half && zeros[1] < 0.1 * half) return { encoding: 'utf-16be', mark: 0 }
  return { encoding: isUtf8(bytes) ? 'utf-8' : 'windows-1252', mark: 0 }
}

/** Text of bytes that are UTF-8 or Windows-1252 (UTF-16 is turned into UTF-8 before). */
export function decodeText(bytes: Uint8Array, encoding: Encoding): string {
  return (encoding === 'windows-1252' ? windows1252 : utf8).decode(bytes)
}

const utf8 = new TextDecoder('utf-8', { ignoreBOM: true })
const windows1252 = new TextDecoder('windows-1252')

/** The last letter may be cut off by the end of the sample. */
function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true })
    return true
  } catch {
    return false
  }
}
