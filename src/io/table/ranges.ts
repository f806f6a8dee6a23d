import { open } from 'node:fs/promises'

/** Bytes asked for by range, in the form that the Parquet library wants. */
export interface Ranges {
  readonly byteLength: number
  slice(start: number, end?: number): Promise<ArrayBuffer>
  close(): Promise<void>
}

export async function fileRanges(path: string): Promise<Ranges> {
  const file = await open(path, 'r')
  const { size } = await file.stat()
  return {
    byteLength: size,
    async slice(start, end = size) {
      const bytes = new Uint8Array(lengthOf(start, end, size))
      for (let done = 0; done < bytes.length; ) {
        const { bytesRead } = await file.read(bytes, done, bytes.length - done, start + done)
        if (bytesRead === 0) throw new Error('the file ends early')
        done += bytesRead
      }
      return bytes.buffer
    },
    close: () => file.close(),
  }
}

export function memoryRanges(bytes: Uint8Array): Ranges {
  return {
    byteLength: bytes.length,
    async slice(start, end = bytes.length) {
      const piece = new Uint8Array(lengthOf(start, end, bytes.length))
      piece.set(bytes.subarray(start, end))
      return piece.buffer
    },
    close: async () => {},
  }
}

function lengthOf(start: number, end: number, size: number): number {
  if (!(start >= 0 && start <= end && end <= size)) throw new Error(`bytes ${start} to ${end} lie outside the file`)
  return end - start
}
