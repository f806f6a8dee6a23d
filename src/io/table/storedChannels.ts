import type { Unit } from '../../core/quantity/index.ts'
import { type ChannelName, type Channels, channelNames } from '../../core/terms/index.ts'
import type { ColumnStore } from './columnStore.ts'
import type { Section } from './rowPlan.ts'

/** Turns numbers as read into SI, in place. Exact where the unit is a whole part of the SI unit, as `toSi` is. */
export function toSiInPlace(numbers: Float64Array, rows: number, unit: Unit): void {
  const { factor, offset } = unit
  const inverse = Math.round(1 / factor)
  if (inverse > 1 && 1 / inverse === factor) for (let row = 0; row < rows; row++) numbers[row] /= inverse
  else if (factor !== 1) for (let row = 0; row < rows; row++) numbers[row] *= factor
  if (offset !== 0) for (let row = 0; row < rows; row++) numbers[row] += offset
}

/** The store as channels. Where `sections` are given, they are the steps. */
export function storedChannels(
  store: ColumnStore,
  slots: ReadonlyMap<ChannelName, number>,
  sections: readonly Section[],
): Channels {
  const steps = sections.length > 0
  const names = channelNames.filter((name) => slots.has(name) || (steps && name === 'step'))
  const read: Channels['read'] = (name, from, to) => {
    const slot = slots.get(name)
    if (slot !== undefined) return store.read(slot, from, to)
    if (name === 'step' && steps) return stepsOf(sections, { from, to, rows: store.rows })
    throw new RangeError(`this record has no channel ${name}; it has ${names.join(', ')}`)
  }
  return {
    rows: store.rows,
    names,
    read,
    readInto(name, from, out) {
      const slot = slots.get(name)
      if (slot !== undefined) store.readInto(slot, from, out)
      else out.set(read(name, from, from + out.length))
    },
  }
}

function stepsOf(
  sections: readonly Section[],
  range: { readonly from: number; readonly to: number; readonly rows: number },
): Float64Array {
  const { from, to, rows } = range
  if (!(from >= 0 && from <= to && to <= rows)) {
    throw new RangeError(`rows ${from} to ${to} were asked for, the record has ${rows}`)
  }
  const steps = new Float64Array(to - from)
  for (const [index, { row, number }] of sections.entries()) {
    if (row >= to) break
    steps.fill(number ?? index + 1, Math.max(0, row - from))
  }
  return steps
}
