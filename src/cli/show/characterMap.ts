/** Cells of a map for a terminal; NaN for an empty one. */
export interface MapData {
  readonly columns: number
  readonly rows: number
  readonly mean: ArrayLike<number>
  /** First turn of each row. */
  readonly turns: readonly number[]
  readonly range: readonly [number, number] | null
}

const shades = { unicode: [' ', '░', '▒', '▓', '█'], plain: [' ', '.', ':', 'o', '#'] } as const
const labelWidth = 9

/** A map in characters, turn down and place across, dark for large values; `·` where nothing fell. */
export function characterMap(
  map: MapData,
  { width, rows, unicode }: { readonly width: number; readonly rows: number; readonly unicode: boolean },
): string {
  const wide = Math.max(12, Math.min(map.columns, width - labelWidth - 2))
  const high = Math.max(1, Math.min(map.rows, rows))
  const [low, top] = map.range ?? [0, 1]
  const scale = unicode ? shades.unicode : shades.plain
  const lines = Array.from({ length: high }, (_, line) => {
    const [from, to] = [line, line + 1].map((edge) => Math.floor((edge * map.rows) / high))
    const cells = Array.from({ length: wide }, (_cell, place) => {
      const value = meanOf(map, { from, to, left: place / wide, right: (place + 1) / wide })
      if (Number.isNaN(value)) return unicode ? '·' : '-'
      const share = top > low ? (value - low) / (top - low) : 0.5
      return scale[Math.min(scale.length - 1, Math.max(0, Math.round(share * (scale.length - 1))))]
    })
    return `${String(map.turns[from] ?? '').padStart(labelWidth - 1)} ${unicode ? '│' : '|'}${cells.join('')}`
  })
  const rule = `${' '.repeat(labelWidth)}${unicode ? '└' : '+'}${(unicode ? '─' : '-').repeat(wide)}`
  const ticks = `${' '.repeat(labelWidth + 1)}0°${'180°'.padStart((wide >> 1) + 1)}${'360°'.padStart(wide - (wide >> 1) - 3)}`
  return [...lines, rule, ticks].map((line) => line.trimEnd()).join('\n')
}

function meanOf(map: MapData, block: { from: number; to: number; left: number; right: number }): number {
  const first = Math.floor(block.left * map.columns)
  const last = Math.max(first + 1, Math.floor(block.right * map.columns))
  let sum = 0
  let count = 0
  for (let row = block.from; row < block.to; row++) {
    for (let column = first; column < last; column++) {
      const value = map.mean[row * map.columns + column]
      if (Number.isNaN(value)) continue
      sum += value
      count++
    }
  }
  return count === 0 ? Number.NaN : sum / count
}
