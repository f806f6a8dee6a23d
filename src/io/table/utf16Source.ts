import type { ByteSource } from './byteSource.ts'

/** The same text in UTF-8. The hash stays that of the bytes as they came. */
export function utf16Source(source: ByteSource, encoding: 'utf-16le' | 'utf-16be'): ByteSource {
  const decoder = new TextDecoder(encoding)
  const encoder = new TextEncoder()
  const raw = new Uint8Array(262_144)
  let ready = new Uint8Array(0)
  let ended = false

  async function more(): Promise<void> {
    const count = await source.read(raw, 0)
    ended = count < raw.length
    ready = encoder.encode(decoder.decode(raw.subarray(0, count), { stream: !ended }))
  }

  return {
    size: source.size,
    async read(target, at) {
      let end = at
      while (end < target.length) {
        if (ready.length === 0) {
          if (ended) break
          await more()
          continue
        }
        const piece = ready.subarray(0, target.length - end)
        target.set(piece, end)
        end += piece.length
        ready = ready.subarray(piece.length)
      }
      return end - at
    },
    sha256: () => source.sha256(),
    close: () => source.close(),
  }
}
