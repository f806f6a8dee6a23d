import type { ChannelName } from '../../../core/terms/index.ts'
import { Span } from './envelope.ts'
import type { HeldColumns } from './heldColumns.ts'

/** What a picture shows: a stretch of time in so many columns of pixels, of these channels. */
export interface TraceWish {
  readonly from?: number
  readonly to?: number
  readonly pixels: number
  readonly channels?: readonly string[]
}

type Values = (number | null)[]

/** Two values a pixel column and channel; the rows themselves where there are few. */
export interface Trace {
  readonly record: [number, number]
  readonly rows: number
  readonly from: number
  readonly to: number
  readonly inside: number
  readonly names: ChannelName[]
  readonly columns: Record<string, { min: Values; max: Values }>
  readonly exact: { time: number[]; values: Record<string, Values> } | null
}

/** Rows a pixel up to which the rows themselves are given as well. */
const fewRows = 4

/** A stretch of a record for a picture. The columns of pixels share the time evenly; null where none has a number. */
export function traceOf(held: HeldColumns, wish: TraceWish): Trace {
  const { time, rows } = held
  const record: [number, number] = rows === 0 ? [0, 0] : [time[0], time[rows - 1]]
  const from = wish.from ?? record[0]
  const to = wish.to ?? record[1]
  const names = Object.keys(held.channels) as ChannelName[] // made from channels
  const chosen = names.filter((name) => wish.channels?.includes(name) ?? true)
  const edges = edgesOf(time, { from, to, pixels: wish.pixels })
  const [first, end] = [edges[0], edges[wish.pixels]]
  const columns: Trace['columns'] = {}
  for (const name of chosen) columns[name] = columnsOf(held, name, edges)
  const inside = end - first
  const exact = inside > fewRows * wish.pixels ? null : exactRows(held, chosen, { first, end })
  return { record, rows, from, to, inside, names, columns, exact }
}

/** Row with which each column of pixels begins, and the one behind the last. The end of the stretch belongs to it. */
function edgesOf(
  time: Float64Array,
  { from, to, pixels }: { readonly from: number; readonly to: number; readonly pixels: number },
): Uint32Array {
  const edges = new Uint32Array(pixels + 1)
  const end = rowAfter(time, to)
  for (let k = 0; k < pixels; k++) edges[k] = Math.min(end, rowAt(time, from + ((to - from) * k) / pixels))
  edges[pixels] = Math.max(edges[0], end)
  return edges
}

/** First row at or after an instant. */
const rowAt = (time: Float64Array, instant: number): number => search(time, (value) => value >= instant)

/** First row after an instant. */
const rowAfter = (time: Float64Array, instant: number): number => search(time, (value) => value > instant)

function search(time: Float64Array, isThere: (value: number) => boolean): number {
  let low = 0
  let high = time.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (isThere(time[middle])) high = middle
    else low = middle + 1
  }
  return low
}

function columnsOf(held: HeldColumns, name: ChannelName, edges: Uint32Array): { min: Values; max: Values } {
  const envelope = held.channels[name]
  const min: Values = []
  const max: Values = []
  const span = new Span()
  for (let k = 0; k + 1 < edges.length; k++) {
    span.clear()
    if (envelope !== undefined) span.take(envelope, edges[k], edges[k + 1])
    min.push(known(span.low))
    max.push(known(span.high))
  }
  return { min, max }
}

const known = (value: number): number | null => (Number.isFinite(value) ? value : null)

function exactRows(
  { time, channels }: HeldColumns,
  names: readonly ChannelName[],
  { first, end }: { readonly first: number; readonly end: number },
): Trace['exact'] {
  const values: Record<string, Values> = {}
  for (const name of names) values[name] = Array.from(channels[name]?.values.subarray(first, end) ?? [], known)
  return { time: Array.from(time.subarray(first, end)), values }
}
