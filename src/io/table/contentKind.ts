/** What a file is, told from its bytes and never from its name. */
export type ContentKind =
  | { readonly kind: 'text' | 'xlsx' | 'parquet' | 'empty' }
  /** `looksLike` finishes the sentence "this looks like …", `mend` says what to hand in instead. */
  | { readonly kind: 'foreign'; readonly looksLike: string; readonly mend: string }

interface Signature {
  readonly bytes: readonly number[]
  readonly looksLike: string
  readonly mend?: string
}

const unpack = 'Unpack it and hand in the table inside.'
const exportTable = 'Hand in the table itself, as text (.csv, .txt), .xlsx or Parquet.'

// First bytes as the formats' own specifications give them.
const signatures: readonly Signature[] = [
  { bytes: [0xff, 0xd8, 0xff], looksLike: 'a JPEG picture' },
  { bytes: [0x89, 0x50, 0x4e, 0x47], looksLike: 'a PNG picture' },
  { bytes: [0x47, 0x49, 0x46, 0x38], looksLike: 'a GIF picture' },
  { bytes: [0x49, 0x49, 0x2a, 0x00], looksLike: 'a TIFF picture' },
  { bytes: [0x4d, 0x4d, 0x00, 0x2a], looksLike: 'a TIFF picture' },
  { bytes: [0x25, 0x50, 0x44, 0x46], looksLike: 'a PDF document' },
  { bytes: [0x1f, 0x8b], looksLike: 'a gzip archive', mend: unpack },
  { bytes: [0x28, 0xb5, 0x2f, 0xfd], looksLike: 'a Zstandard archive', mend: unpack },
  { bytes: [0x37, 0x7a, 0xbc, 0xaf], looksLike: 'a 7z archive', mend: unpack },
  {
    bytes: [0xd0, 0xcf, 0x11, 0xe0],
    looksLike: 'a workbook of the old binary kind (.xls)',
    mend: 'Save it again as .xlsx or as CSV.',
  },
  { bytes: [0x89, 0x48, 0x44, 0x46], looksLike: 'an HDF5 file', mend: 'Export the table from it as CSV or Parquet.' },
  { bytes: [0x53, 0x51, 0x4c, 0x69, 0x74, 0x65], looksLike: 'an SQLite database' },
]

/** Judges by the first bytes (64 KiB are plenty). */
export function contentKind(head: Uint8Array): ContentKind {
  if (head.length === 0) return { kind: 'empty' }
  if (startsWith(head, [0x50, 0x41, 0x52, 0x31])) return { kind: 'parquet' }
  if (startsWith(head, [0x50, 0x4b, 0x03, 0x04])) return { kind: 'xlsx' }
  for (const { bytes, looksLike, mend } of signatures) {
    if (startsWith(head, bytes)) return { kind: 'foreign', looksLike, mend: mend ?? exportTable }
  }
  if (shareOfControls(head) > 0.05) return { kind: 'foreign', looksLike: 'binary data, not text', mend: exportTable }
  return { kind: 'text' }
}

const startsWith = (head: Uint8Array, bytes: readonly number[]): boolean =>
  bytes.every((byte, index) => head[index] === byte)

/** Control characters other than tab, line ends and form feed; zero bytes in UTF-16 text are not meant. */
function shareOfControls(head: Uint8Array): number {
  const sample = head.subarray(0, 65_536)
  let odd = 0
  let zeros = 0
  for (const byte of sample) {
    if (byte === 0) zeros++
    else if (byte < 9 || (byte > 13 && byte < 32) || byte === 127) odd++
  }
  const wide = zeros > 0.3 * sample.length && zeros < 0.55 * sample.length
  return (odd + (wide ? 0 : zeros)) / sample.length
}
