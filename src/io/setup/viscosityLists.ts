import { type Dimension, parseQuantity, printExact } from '../../core/quantity/index.ts'
import type { ReadList } from './wornLists.ts'

/** A viscosity and what it was measured at. */
export interface ViscosityAt {
  readonly viscosity: number
  readonly at: number
}

/** Reads `12.1 mPa·s at 20 °C; 5.2 mPa·s at 40 °C`, or with shear rates in 1/s. */
export function readViscosities(text: string, at: 'temperature' | 'frequency'): ReadList<ViscosityAt> {
  const items: ViscosityAt[] = []
  const faults: { what: string; mend: string }[] = []
  const example = at === 'temperature' ? '12.1 mPa·s at 20 °C' : '210 mPa·s at 10 1/s'
  for (const part of text.split(';')) {
    const ends = part.trim().split(/\s+at\s+/)
    if (ends.length !== 2) {
      faults.push({ what: `"${part.trim()}" is no viscosity at something.`, mend: `Write "${example}".` })
      continue
    }
    const read = ends.map((end, i) => parseQuantity(end, i === 0 ? 'viscosity' : (at satisfies Dimension)))
    for (const one of read) if (!one.ok) faults.push({ what: one.what, mend: one.mend })
    const [viscosity, place] = read.flatMap((one) => (one.ok ? [one.value] : []))
    if (viscosity === undefined || place === undefined) continue
    if (viscosity > 0 && place > 0) items.push({ viscosity, at: place })
    else faults.push({ what: `"${part.trim()}" is not above zero.`, mend: `Write "${example}".` })
  }
  return { items, faults }
}

/** `readViscosities` backwards. */
export const writeViscosities = (items: readonly ViscosityAt[], at: 'temperature' | 'frequency'): string =>
  items
    .map(({ viscosity, at: place }) => `${printExact(viscosity, 'viscosity')} at ${printExact(place, at)}`)
    .join('; ')
