import type { TableEncoding } from './tableDialect.ts'

/** Bytes that stand before the first letter. */
export function byteOrderMark(encoding: TableEncoding): Uint8Array {
  switch (encoding) {
    case 'utf-8-bom':
      return Uint8Array.of(0xef, 0xbb, 0xbf)
    case 'utf-16le':
      return Uint8Array.of(0xff, 0xfe)
    case 'utf-16be':
      return Uint8Array.of(0xfe, 0xff)
    default:
      return new Uint8Array(0)
  }
}

/** A text in the encoding, without a mark. Throws RangeError for a letter that Latin-1 lacks. */
export function encodeText(text: string, encoding: TableEncoding): Uint8Array {
  if (encoding === 'utf-8' || encoding === 'utf-8-bom') return new TextEncoder().encode(text)
  const codes = new Uint16Array(text.length)
  for (let i = 0; i < text.length; i++) codes[i] = text.charCodeAt(i)
  if (encoding !== 'latin-1') return widen(codes, encoding)
  const beyond = codes.find((code) => code > 0xff)
  if (beyond !== undefined) throw new RangeError(`Latin-1 has no letter "${String.fromCharCode(beyond)}"`)
  return Uint8Array.from(codes)
}

/** ASCII letters in the encoding. */
export const encodeAscii = (letters: Uint8Array, encoding: TableEncoding): Uint8Array =>
  encoding === 'utf-16le' || encoding === 'utf-16be' ? widen(letters, encoding) : letters

function widen(codes: Uint8Array | Uint16Array, encoding: 'utf-16le' | 'utf-16be'): Uint8Array {
  const wide = new Uint8Array(codes.length * 2)
  const low = encoding === 'utf-16le' ? 0 : 1
  for (let i = 0; i < codes.length; i++) {
    wide[2 * i + low] = codes[i] & 0xff
    wide[2 * i + 1 - low] = codes[i] >> 8
  }
  return wide
}
