import { createHash } from 'node:crypto'
import { open } from 'node:fs/promises'

/** Bytes from first to last, hashed as they pass. */
export interface ByteSource {
  /** Length of the whole, undefined for a pipe. */
  readonly size: number | undefined
  /** Fills `target` from `at` as far as there are bytes. Fewer than there is room for means that the end was reached. */
  read(target: Uint8Array, at: number): Promise<number>
  /** SHA-256 of what was read so far. */
  sha256(): string
  close(): Promise<void>
}

/** A file; throws the error of the system when it cannot be opened. */
export async function fileSource(path: string): Promise<ByteSource> {
  const hash = createHash('sha256')
  const file = await open(path, 'r')
  const status = await file.stat()
  if (status.isDirectory()) {
    await file.close()
    throw Object.assign(new Error('it is a folder'), { code: 'EISDIR' })
  }
  return {
    size: status.isFile() ? status.size : undefined,
    async read(target, at) {
      let end = at
      while (end < target.length) {
        const { bytesRead } = await file.read(target, end, target.length - end, null)
        if (bytesRead === 0) break
        end += bytesRead
      }
      hash.update(target.subarray(at, end))
      return end - at
    },
    sha256: () => hash.copy().digest('hex'),
    close: () => file.close(),
  }
}

/** Bytes that lie in memory. */
export function memorySource(bytes: Uint8Array): ByteSource {
  const hash = createHash('sha256')
  let position = 0
  return {
    size: bytes.length,
    async read(target, at) {
      const piece = bytes.subarray(position, position + target.length - at)
      target.set(piece, at)
      position += piece.length
      hash.update(piece)
      return piece.length
    },
    sha256: () => hash.copy().digest('hex'),
    close: async () => {},
  }
}

/** The bytes already taken from `source`, then the others. */
export function withBegun(begun: Uint8Array, source: ByteSource): ByteSource {
  let left = begun
  return {
    ...source,
    async read(target, at) {
      const piece = left.subarray(0, target.length - at)
      target.set(piece, at)
      left = left.subarray(piece.length)
      const end = at + piece.length
      return piece.length + (end < target.length ? await source.read(target, end) : 0)
    },
  }
}

/** All bytes to the end; undefined where they are more than `most`. */
export async function wholeOf(source: ByteSource, most: number): Promise<Uint8Array | undefined> {
  let bytes = new Uint8Array(Math.min(most, source.size ?? 1 << 20) + 1)
  for (let length = 0; ; ) {
    const count = await source.read(bytes, length)
    length += count
    if (length < bytes.length) return bytes.subarray(0, length)
    if (bytes.length > most) return undefined
    const longer = new Uint8Array(Math.min(2 * bytes.length, most + 1))
    longer.set(bytes)
    bytes = longer
  }
}
