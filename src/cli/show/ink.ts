/** A small sheet of characters. Places are shares of its width (to the right) and height (up), 0 to 1. */
export interface Ink {
  readonly dot: (right: number, up: number) => void
  readonly letter: (right: number, up: number, letter: string) => void
  readonly lines: () => readonly string[]
  /** What stands between labels and sheet. */
  readonly wall: string
}

/** Bits of the dots in a braille cell, column by column from the top (Unicode 16, block U+2800). */
const braille = [
  [0x01, 0x02, 0x04, 0x40],
  [0x08, 0x10, 0x20, 0x80],
] as const

export function ink(columns: number, rows: number, unicode: boolean): Ink {
  const dots = new Uint8Array(columns * rows)
  const letters = new Map<number, string>()
  const fine = unicode ? { across: 2, down: 4 } : { across: 1, down: 1 }
  const cell = (index: number): string => {
    const bits = dots[index] ?? 0
    if (bits === 0) return ' '
    return unicode ? String.fromCodePoint(0x2800 + bits) : '.'
  }
  return {
    wall: unicode ? '│' : '|',
    dot: (right, up) => {
      const x = Math.round(right * (columns * fine.across - 1))
      const y = Math.round((1 - up) * (rows * fine.down - 1))
      const index = Math.floor(y / fine.down) * columns + Math.floor(x / fine.across)
      dots[index] = (dots[index] ?? 0) | (braille[x % fine.across === 1 ? 1 : 0][y % fine.down] ?? 1)
    },
    letter: (right, up, letter) => {
      const index = Math.round((1 - up) * (rows - 1)) * columns + Math.round(right * (columns - 1))
      letters.set(index, letter)
    },
    lines: () =>
      Array.from({ length: rows }, (_, row) =>
        Array.from({ length: columns }, (_, column) => {
          const index = row * columns + column
          return letters.get(index) ?? cell(index)
        }).join(''),
      ),
  }
}
