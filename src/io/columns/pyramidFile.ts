import { type ChannelName, channelNames } from '../../core/terms/index.ts'
import type { Pyramid, PyramidLevel } from './minMaxPyramid.ts'
import { type NumberTable, numberTableToParquet, parquetToNumberTable } from './parquetTable.ts'

/** The pyramid as a Parquet file: `blockRows`, then smallest and largest of each channel; one row a block, finest level first. */
export function pyramidToParquet({ rows, names, levels }: Pyramid): Uint8Array {
  const blockRows = levels.map((level) => new Float64Array(level.blocks).fill(level.blockRows))
  const columns = new Map<string, Float64Array>([['blockRows', joined(blockRows)]])
  for (const name of names) {
    columns.set(`${name}.min`, joined(levels.map(({ min }) => min[name] ?? new Float64Array(0))))
    columns.set(`${name}.max`, joined(levels.map(({ max }) => max[name] ?? new Float64Array(0))))
  }
  return numberTableToParquet({
    rows: columns.get('blockRows')?.length ?? 0,
    names: [...columns.keys()],
    read: (name, from, to) => (columns.get(name) ?? new Float64Array(0)).subarray(from, to),
    notes: { rows: String(rows) },
  })
}

/** The pyramid that `pyramidToParquet` wrote. */
export async function parquetToPyramid(bytes: Uint8Array): Promise<Pyramid> {
  const table = await parquetToNumberTable(bytes)
  const names = channelNames.filter((name) => table.names.includes(`${name}.min`))
  const blockRows = table.read('blockRows', 0, table.rows)
  const levels: PyramidLevel[] = []
  for (let from = 0; from < table.rows; ) {
    let to = from
    while (to < table.rows && blockRows[to] === blockRows[from]) to++
    levels.push(levelOf(table, names, { from, to, blockRows: blockRows[from] }))
    from = to
  }
  return { rows: Number(table.notes.rows), names, levels }
}

interface LevelRows {
  readonly from: number
  readonly to: number
  readonly blockRows: number
}

function levelOf(table: NumberTable, names: readonly ChannelName[], { from, to, blockRows }: LevelRows): PyramidLevel {
  const read = (end: 'min' | 'max') =>
    Object.fromEntries(names.map((name) => [name, table.read(`${name}.${end}`, from, to)]))
  return { blockRows, blocks: to - from, min: read('min'), max: read('max') }
}

function joined(pieces: readonly Float64Array[]): Float64Array {
  const whole = new Float64Array(pieces.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}
