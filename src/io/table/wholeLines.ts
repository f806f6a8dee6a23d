import type { ByteSource } from './byteSource.ts'

/** Lines from `from` to `to`; `bytes[to]` belongs to no line and may be overwritten. */
export interface LineWindow {
  readonly bytes: Uint8Array
  readonly from: number
  readonly to: number
  /** No bytes follow. */
  readonly last: boolean
}

/** Longest line that is read. */
export const longestLine = 1 << 24

const block = 1 << 20
/** Room before a block for the line that the block before broke off. */
const reserve = 1 << 16

/** Thrown when a line is longer than `longestLine`. */
export class LineTooLong extends Error {}

/**
 * Cuts a source into windows of whole lines of about 1 MiB; the next is read while one is worked on. `begun` are bytes
 * already read that come first. `lineEnd` is the byte that surely ends a line (LF where there is any, else CR).
 */
export async function* wholeLines(options: {
  readonly source: ByteSource
  readonly begun: Uint8Array
  readonly lineEnd: number
  /** Nothing follows what was begun. */
  readonly ended: boolean
}): AsyncGenerator<LineWindow> {
  const { source, begun, lineEnd } = options
  if (options.ended) {
    const bytes = new Uint8Array(begun.length + 1)
    bytes.set(begun)
    yield { bytes, from: 0, to: begun.length, last: true }
    return
  }
  const buffers = [new Uint8Array(reserve + block + 1), new Uint8Array(reserve + block + 1)]
  const fetch = (buffer: Uint8Array): Promise<number> => {
    const reading = source.read(buffer.subarray(0, reserve + block), reserve)
    reading.catch(() => {}) // reported where it is awaited
    return reading
  }
  let coming = fetch(buffers[0])
  const first = new Uint8Array(begun.length + 1)
  first.set(begun)
  let cut = afterLast(first, lineEnd, { from: 0, to: begun.length })
  // Copied before the window goes out, because `bytes[to]` may then be overwritten.
  let rest = first.slice(cut, begun.length)
  if (cut > 0) yield { bytes: first, from: 0, to: cut, last: false }
  for (let turn = 0; ; turn ^= 1) {
    const count = await coming
    const last = count < block
    const joined = before(buffers[turn], rest, count)
    if (!last) coming = fetch(buffers[turn ^ 1])
    cut = last ? joined.to : afterLast(joined.bytes, lineEnd, joined)
    rest = joined.bytes.slice(cut, joined.to)
    if (cut > joined.from || last) yield { bytes: joined.bytes, from: joined.from, to: cut, last }
    if (last) return
    if (rest.length > longestLine) throw new LineTooLong()
  }
}

/** The block with the broken line put before it. */
function before(buffer: Uint8Array, rest: Uint8Array, count: number): { bytes: Uint8Array; from: number; to: number } {
  if (rest.length <= reserve) {
    buffer.set(rest, reserve - rest.length)
    return { bytes: buffer, from: reserve - rest.length, to: reserve + count }
  }
  const bytes = new Uint8Array(rest.length + count + 1)
  bytes.set(rest)
  bytes.set(buffer.subarray(reserve, reserve + count), rest.length)
  return { bytes, from: 0, to: rest.length + count }
}

/** Place after the last line end in the range; `from` where there is none. A CR at the very end may be half of CRLF. */
function afterLast(bytes: Uint8Array, lineEnd: number, range: { readonly from: number; readonly to: number }): number {
  const to = lineEnd === 13 && bytes[range.to - 1] === 13 ? range.to - 1 : range.to
  const found = bytes.subarray(range.from, to).lastIndexOf(lineEnd)
  return range.from + found + 1
}
