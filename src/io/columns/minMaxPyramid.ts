import type { ChannelName, Channels } from '../../core/terms/index.ts'

/** Rows of a block of the finest level; each coarser level takes `pyramidFactor` blocks together. */
export const pyramidBase = 256
/** See `pyramidBase`. A picture finds a level with at most four times the blocks that it needs, for a third more room. */
export const pyramidFactor = 4

/** Smallest and largest value of each block of `blockRows` rows; NaN for a block without a number. The last block may be short. */
export interface PyramidLevel {
  readonly blockRows: number
  readonly blocks: number
  readonly min: Readonly<Partial<Record<ChannelName, Float64Array>>>
  readonly max: Readonly<Partial<Record<ChannelName, Float64Array>>>
}

/** What pictures of a long record need: no peak is lost however few pixels there are. Finest level first. */
export interface Pyramid {
  readonly rows: number
  readonly names: readonly ChannelName[]
  readonly levels: readonly PyramidLevel[]
}

/** Makes the pyramid in one pass over the record; the coarsest level has at most `pyramidFactor` blocks. */
export function minMaxPyramid(channels: Channels): Pyramid {
  const { rows, names } = channels
  const levels: PyramidLevel[] = []
  if (rows > 0) levels.push(finestLevel(channels))
  for (let level = levels[0]; level !== undefined && level.blocks > pyramidFactor; ) {
    level = coarser(level, names)
    levels.push(level)
  }
  return { rows, names, levels }
}

function finestLevel({ rows, names, read }: Channels): PyramidLevel {
  const chunk = pyramidBase * 256 // as much of the record as is looked at in one go
  const level = emptyLevel(pyramidBase, Math.ceil(rows / pyramidBase), names)
  for (const name of names) {
    for (let from = 0; from < rows; from += chunk) {
      const values = read(name, from, Math.min(from + chunk, rows))
      fold({ min: values, max: values }, { level, name, per: pyramidBase, first: from / pyramidBase })
    }
  }
  return level
}

function coarser(fine: PyramidLevel, names: readonly ChannelName[]): PyramidLevel {
  const level = emptyLevel(fine.blockRows * pyramidFactor, Math.ceil(fine.blocks / pyramidFactor), names)
  for (const name of names) {
    const [min, max] = [fine.min[name], fine.max[name]]
    if (min !== undefined && max !== undefined) fold({ min, max }, { level, name, per: pyramidFactor, first: 0 })
  }
  return level
}

function emptyLevel(blockRows: number, blocks: number, names: readonly ChannelName[]): PyramidLevel {
  const fresh = () => Object.fromEntries(names.map((name) => [name, new Float64Array(blocks).fill(Number.NaN)]))
  return { blockRows, blocks, min: fresh(), max: fresh() }
}

interface Target {
  readonly level: PyramidLevel
  readonly name: ChannelName
  /** Values of the source in one block. */
  readonly per: number
  /** Block that the first value falls into. */
  readonly first: number
}

/** NaN stands for "nothing yet" and for "nothing there": a comparison with it is false, so it never wins. */
function fold(source: { readonly min: Float64Array; readonly max: Float64Array }, target: Target): void {
  const [min, max] = [target.level.min[target.name], target.level.max[target.name]]
  if (min === undefined || max === undefined) return
  for (let start = 0, block = target.first; start < source.min.length; start += target.per, block++) {
    const end = Math.min(start + target.per, source.min.length)
    let low = Number.NaN
    let high = Number.NaN
    for (let i = start; i < end; i++) {
      if (!(low <= source.min[i]) && !Number.isNaN(source.min[i])) low = source.min[i]
      if (!(high >= source.max[i]) && !Number.isNaN(source.max[i])) high = source.max[i]
    }
    min[block] = low
    max[block] = high
  }
}
