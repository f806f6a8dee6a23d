import type { Random } from '../src/core/numeric/index.ts'

/** Changes some bytes of a file, as damage, careless editing or a hostile hand would. */
export type Mutation = (bytes: Uint8Array, draw: Draw) => Uint8Array

/** Chance for mutations: whole numbers below a bound. */
export type Draw = (below: number) => number

export const drawFrom =
  (random: Random): Draw =>
  (below) =>
    below > 0 ? random.integer(below) : 0

const join = (...parts: readonly Uint8Array[]): Uint8Array => Buffer.concat(parts)
const ascii = (text: string): Uint8Array => new TextEncoder().encode(text)
const pick = <T>(draw: Draw, from: readonly T[]): T => from[draw(from.length)]
const insert = (bytes: Uint8Array, at: number, piece: Uint8Array): Uint8Array =>
  join(bytes.subarray(0, at), piece, bytes.subarray(at))

function lines(bytes: Uint8Array): Uint8Array[] {
  const all: Uint8Array[] = []
  let from = 0
  for (let at = 0; at < bytes.length; at++) {
    if (bytes[at] !== 10) continue
    all.push(bytes.subarray(from, at + 1))
    from = at + 1
  }
  all.push(bytes.subarray(from))
  return all
}

/** Places of the bytes that are digits. */
function digitAt(bytes: Uint8Array, draw: Draw): number {
  for (let tries = 0; tries < 50; tries++) {
    const at = draw(bytes.length)
    if (bytes[at] >= 48 && bytes[at] <= 57) return at
  }
  return draw(bytes.length)
}

const strange = [
  'NaN',
  'inf',
  '-Infinity',
  '1e999',
  '1e-999',
  '--',
  '0x1F',
  '1,2,3',
  '1.2.3',
  '12:30:05',
  '"',
  '""',
  '"a;b,c\td"',
  '\u2212',
  '\u00a0',
  'µ',
  '\uFEFF',
  '=1+1',
  '#REF!',
  'Step 2',
  '\n\n',
  '\r',
  '\t',
  ';',
  ',',
  '|',
  '  ',
  '.',
  'e',
  '-',
  '+',
  '0000000000',
  '99999999999999999999',
  '\u0000',
  '\u001b[31m',
]

/** By name, so that a table can say what was done. */
export const mutations: Readonly<Record<string, Mutation>> = {
  flipBits(bytes, draw) {
    const out = bytes.slice()
    for (let n = 1 + draw(8); n > 0 && out.length > 0; n--) out[draw(out.length)] ^= 1 << draw(8)
    return out
  },
  setBytes(bytes, draw) {
    const out = bytes.slice()
    for (let n = 1 + draw(20); n > 0 && out.length > 0; n--) out[draw(out.length)] = draw(256)
    return out
  },
  truncate: (bytes, draw) => bytes.slice(0, draw(bytes.length + 1)),
  cutBeginning: (bytes, draw) => bytes.slice(draw(bytes.length + 1)),
  cutMiddle(bytes, draw) {
    const [from, to] = [draw(bytes.length + 1), draw(bytes.length + 1)].sort((a, b) => a - b)
    return join(bytes.subarray(0, from), bytes.subarray(to))
  },
  swapLines(bytes, draw) {
    const all = lines(bytes)
    const [a, b] = [draw(all.length), draw(all.length)]
    ;[all[a], all[b]] = [all[b], all[a]]
    return join(...all)
  },
  deleteLines(bytes, draw) {
    const all = lines(bytes)
    all.splice(draw(all.length), 1 + draw(5))
    return join(...all)
  },
  repeatLines(bytes, draw) {
    const all = lines(bytes)
    const from = draw(all.length)
    return join(...all.slice(0, from), ...all.slice(0, from + draw(12)), ...all.slice(from))
  },
  mangleNumber(bytes, draw) {
    const out = bytes.slice()
    for (let n = 1 + draw(6); n > 0 && out.length > 0; n--)
      out[digitAt(out, draw)] = pick(draw, [...ascii('.,-+eE xX;"0')])
    return out
  },
  putStrange(bytes, draw) {
    let out = bytes
    for (let n = 1 + draw(4); n > 0; n--) out = insert(out, draw(out.length + 1), ascii(pick(draw, strange)))
    return out
  },
  replaceCell(bytes, draw) {
    const at = digitAt(bytes, draw)
    let [from, to] = [at, at]
    while (
      from > 0 &&
      !(bytes[from - 1] === 44 || bytes[from - 1] === 59 || bytes[from - 1] === 9 || bytes[from - 1] === 10)
    )
      from--
    while (to < bytes.length && !(bytes[to] === 44 || bytes[to] === 59 || bytes[to] === 9 || bytes[to] === 10)) to++
    return join(bytes.subarray(0, from), ascii(pick(draw, strange)), bytes.subarray(to))
  },
  replaceEverywhere(bytes, draw) {
    const from = pick(draw, [...ascii(',;\t.\n\r "')])
    const to = pick(draw, [...ascii(',;\t.\n\r "x|'), 0])
    return bytes.map((byte) => (byte === from ? to : byte))
  },
  widen: (bytes) =>
    bytes.reduce(
      (out, byte, n) => {
        out[2 * n] = byte
        return out
      },
      new Uint8Array(2 * bytes.length),
    ),
  narrow: (bytes) => bytes.filter((_, n) => n % 2 === 0),
  putMark: (bytes, draw) =>
    insert(
      bytes,
      draw(3) === 0 ? draw(bytes.length + 1) : 0,
      Uint8Array.from(
        pick(draw, [
          [0xff, 0xfe],
          [0xfe, 0xff],
          [0xef, 0xbb, 0xbf],
        ]),
      ),
    ),
  hugeCell: (bytes, draw) =>
    insert(bytes, draw(bytes.length + 1), new Uint8Array(1 << (8 + draw(13))).fill(pick(draw, [...ascii('1x0"., ;')]))),
  noise: (bytes, draw) =>
    insert(
      bytes,
      draw(bytes.length + 1),
      Uint8Array.from({ length: 1 + draw(2000) }, () => draw(256)),
    ),
  manyColumns(bytes, draw) {
    const times = 2 + draw(200)
    return join(
      ...lines(bytes).flatMap((line) => [
        ...Array.from({ length: times }, () => line.subarray(0, Math.max(0, line.length - 1))),
        ascii('\n'),
      ]),
    )
  },
  noLineEnds: (bytes) => bytes.filter((byte) => byte !== 10 && byte !== 13),
  quotes: (bytes, draw) =>
    join(...lines(bytes).map((line) => (draw(4) === 0 ? insert(line, draw(line.length + 1), ascii('"')) : line))),
  reverseLines: (bytes) => join(...lines(bytes).reverse()),
  doubleFile: (bytes) => join(bytes, bytes),
}
