import { decodeText, type Encoding } from './encoding.ts'

/** The first lines of a file. Line numbers here count from 0. */
export interface HeadLines {
  readonly count: number
  /** The line as text, without its end; lines that are too long to be headings or rows come back empty. */
  text(line: number): string
  /** Place of the line's first byte; for `count`, the place after the last line. */
  start(line: number): number
}

/** Lines longer than this are no headings and no sample of the rows. */
const longestRow = 1 << 18

/** `whole` says that nothing follows, so that a last line without a line end counts as one. */
export function headLines(bytes: Uint8Array, encoding: Encoding, whole: boolean): HeadLines {
  const starts = lineStarts(bytes, whole)
  const text = (line: number): string => {
    const piece = bytes.subarray(starts[line], starts[line + 1])
    return piece.length > longestRow ? '' : decodeText(piece, encoding).replace(/[\r\n]+$/, '')
  }
  return {
    count: starts.length - 1,
    text,
    start: (line) => starts[line],
  }
}

/** Starts of all complete lines and the place where the next would start. */
function lineStarts(bytes: Uint8Array, whole: boolean): number[] {
  const starts = [0]
  for (let at = 0; at < bytes.length; at++) {
    const byte = bytes[at]
    if (byte === 13) {
      if (bytes[at + 1] === 10) at++
      else if (at + 1 === bytes.length && !whole) break
    } else if (byte !== 10) continue
    starts.push(at + 1)
  }
  if (whole && starts[starts.length - 1] < bytes.length) starts.push(bytes.length)
  return starts
}
