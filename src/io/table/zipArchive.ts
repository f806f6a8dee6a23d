import { crc32, inflateRawSync } from 'node:zlib'

/** Thrown when an archive is not what its directory says. */
export class ArchiveDamaged extends Error {}
/** Thrown when an archive unpacks to more than is allowed. */
export class ArchiveTooLarge extends Error {}

const entryMark = 0x02014b50
const localMark = 0x04034b50
const endMark = 0x06054b50

/**
 * Unpacks the wanted files of a ZIP archive (APPNOTE 6.3.10; stored and deflated entries, no encryption, no ZIP64).
 * Sizes are checked before memory is taken, so that a hostile archive cannot fill it.
 */
export function unpack(bytes: Uint8Array, wanted: (name: string) => boolean, most: number): Map<string, Uint8Array> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const files = new Map<string, Uint8Array>()
  let left = most
  for (const entry of directory(view)) {
    const name = new TextDecoder().decode(bytes.subarray(entry.at + 46, entry.at + 46 + entry.nameLength))
    if (!wanted(name)) continue
    const data = entryBytes(bytes, view, entry)
    const file = entry.method === 0 ? data : inflate(data, left)
    left -= file.length
    if (left < 0) throw new ArchiveTooLarge()
    if (crc32(file) !== entry.checksum) throw new ArchiveDamaged(`${name} does not match its checksum`)
    files.set(name, file)
  }
  return files
}

interface Entry {
  readonly at: number
  readonly nameLength: number
  readonly method: number
  readonly checksum: number
  readonly packed: number
  readonly local: number
}

function directory(view: DataView): Entry[] {
  const end = findEnd(view)
  const count = view.getUint16(end + 10, true)
  const entries: Entry[] = []
  for (let at = view.getUint32(end + 16, true), n = 0; n < count; n++) {
    if (at + 46 > view.byteLength || view.getUint32(at, true) !== entryMark) {
      throw new ArchiveDamaged('its directory is broken')
    }
    const [nameLength, extra, comment] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true))
    const method = view.getUint16(at + 10, true)
    if ((view.getUint16(at + 8, true) & 1) === 1) throw new ArchiveDamaged('it is locked with a password')
    if (method !== 0 && method !== 8)
      throw new ArchiveDamaged(`it is packed by method ${method}, which is not known here`)
    const checksum = view.getUint32(at + 16, true)
    entries.push({
      at,
      nameLength,
      method,
      checksum,
      packed: view.getUint32(at + 20, true),
      local: view.getUint32(at + 42, true),
    })
    at += 46 + nameLength + extra + comment
  }
  return entries
}

/** The end record lies within the last 64 KiB, before a comment of any length. */
function findEnd(view: DataView): number {
  const lowest = Math.max(0, view.byteLength - 22 - 0xffff)
  for (let at = view.byteLength - 22; at >= lowest; at--) if (view.getUint32(at, true) === endMark) return at
  throw new ArchiveDamaged('its end is missing')
}

function entryBytes(bytes: Uint8Array, view: DataView, { local, packed }: Entry): Uint8Array {
  if (local + 30 > bytes.length || view.getUint32(local, true) !== localMark)
    throw new ArchiveDamaged('an entry is missing')
  const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true)
  if (from + packed > bytes.length) throw new ArchiveDamaged('an entry is cut off')
  return bytes.subarray(from, from + packed)
}

function inflate(data: Uint8Array, most: number): Uint8Array {
  try {
    return inflateRawSync(data, { maxOutputLength: Math.max(1, most) })
  } catch (error) {
    if (error instanceof RangeError) throw new ArchiveTooLarge()
    throw new ArchiveDamaged('an entry cannot be unpacked')
  }
}

/** 1 January 1980, the first day that the format knows: no clock goes into an archive. */
const firstDay = 0x21

/** A ZIP archive that holds the files as they are, unpacked. */
export function pack(files: ReadonlyMap<string, Uint8Array>): Uint8Array<ArrayBuffer> {
  const names = [...files.keys()].map((name) => new TextEncoder().encode(name))
  const contents = [...files.values()]
  const size = names.reduce((sum, name, n) => sum + 76 + 2 * name.length + contents[n].length, 22)
  const bytes = new Uint8Array(size)
  const view = new DataView(bytes.buffer)
  const common = (at: number, n: number): void => {
    view.setUint16(at, 20, true)
    view.setUint16(at + 8, firstDay, true)
    view.setUint32(at + 10, crc32(contents[n]), true)
    view.setUint32(at + 14, contents[n].length, true)
    view.setUint32(at + 18, contents[n].length, true)
    view.setUint16(at + 22, names[n].length, true)
  }
  const locals: number[] = []
  let at = 0
  for (const [n, name] of names.entries()) {
    locals.push(at)
    view.setUint32(at, localMark, true)
    common(at + 4, n)
    bytes.set(name, at + 30)
    bytes.set(contents[n], at + 30 + name.length)
    at += 30 + name.length + contents[n].length
  }
  const begin = at
  for (const [n, name] of names.entries()) {
    view.setUint32(at, entryMark, true)
    common(at + 6, n)
    view.setUint32(at + 42, locals[n], true)
    bytes.set(name, at + 46)
    at += 46 + name.length
  }
  view.setUint32(at, endMark, true)
  view.setUint16(at + 8, names.length, true)
  view.setUint16(at + 10, names.length, true)
  view.setUint32(at + 12, at - begin, true)
  view.setUint32(at + 16, begin, true)
  return bytes
}
