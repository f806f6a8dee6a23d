/** What a column of a record may hold. SI throughout: s, 1, rad/s, m/s, N·m, N, N, rad, m, K. */
export const channelNames = [
  'time',
  'step',
  'angularVelocity',
  'slidingSpeed',
  'torque',
  'frictionForce',
  'axialForce',
  'angle',
  'gap',
  'temperature',
] as const

/** Name of one channel. */
export type ChannelName = (typeof channelNames)[number]

/**
 * The columns of one record in SI units, NaN where a cell was empty.
 * A long record may lie outside memory, so rows are asked for by range; callers must not write into what they get.
 */
export interface Channels {
  readonly rows: number
  readonly names: readonly ChannelName[]
  /** Rows `from` (inclusive) to `to` (exclusive). Throws RangeError for a channel that the record has not. */
  read(name: ChannelName, from: number, to: number): Float64Array
  /**
   * Rows from `from` on, as many as `out` holds, put into `out`. Only where a column lies in pieces or outside memory: who
   * goes through a long record page by page then needs no new array for each page.
   */
  readInto?(name: ChannelName, from: number, out: Float64Array): void
}

/** Channels that lie wholly in memory; all columns must be of one length. */
export function channelsInMemory(columns: Partial<Record<ChannelName, Float64Array>>): Channels {
  const names = channelNames.filter((name) => columns[name] !== undefined)
  const rows = names.length === 0 ? 0 : (columns[names[0]]?.length ?? 0)
  for (const name of names) {
    const length = columns[name]?.length
    if (length !== rows) throw new RangeError(`channel ${name} has ${length} rows, ${names[0]} has ${rows}`)
  }
  return {
    rows,
    names,
    read(name, from, to) {
      const column = columns[name]
      if (column === undefined) throw new RangeError(`this record has no channel ${name}; it has ${names.join(', ')}`)
      return column.subarray(from, to)
    },
  }
}
