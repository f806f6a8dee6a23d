import { parseQuantity, printExact } from '../../core/quantity/index.ts'
import type { ScarReading } from '../../core/terms/index.ts'

/** What stands in a list, and what is wrong with the rest. */
export interface ReadList<T> {
  readonly items: readonly T[]
  readonly faults: readonly { readonly what: string; readonly mend: string }[]
}

/** Reads `0.42 x 0.40 mm; 0.44 mm`: one worn flat between semicolons, its diameters along and across the sliding joined by x. */
export function readScars(text: string): ReadList<ScarReading> {
  const items: ScarReading[] = []
  const faults: { what: string; mend: string }[] = []
  for (const part of text.split(';')) {
    const ends = part.split(/\s*[x×]\s*/)
    if (ends.length > 2) {
      faults.push({
        what: `"${part.trim()}" has more than two diameters.`,
        mend: 'Write "0.42 x 0.40 mm", or one diameter.',
      })
      continue
    }
    // "0.42 x 0.40 mm": the unit stands once.
    const unit = /[^\d.,\s].*$/.exec(ends[ends.length - 1] ?? '')?.[0] ?? ''
    const read = ends.map((end) => parseQuantity(/[^\d.,\s]/.test(end) ? end : `${end.trim()} ${unit}`, 'length'))
    const values = read.flatMap((one) => (one.ok ? [one.value] : []))
    for (const one of read) if (!one.ok) faults.push({ what: one.what, mend: one.mend })
    if (values.length < ends.length) continue
    if (!values.every((value) => value > 0)) {
      faults.push({ what: 'A scar has no width.', mend: 'Write a diameter above zero, or leave the scar out.' })
    } else items.push({ along: values[0], across: values[values.length - 1] })
  }
  return { items, faults }
}

/** `readScars` backwards. */
export const writeScars = (scars: readonly ScarReading[]): string =>
  scars
    .map(({ along, across }) =>
      along === across
        ? printExact(along, 'length')
        : `${printExact(along, 'length')} x ${printExact(across, 'length')}`,
    )
    .join('; ')

/** Reads `120 µm²; 131 µm²`. A section below zero is one that gained. */
export function readSections(text: string): ReadList<number> {
  const items: number[] = []
  const faults: { what: string; mend: string }[] = []
  for (const part of text.split(';')) {
    const read = parseQuantity(part, 'area')
    if (read.ok) items.push(read.value)
    else faults.push({ what: read.what, mend: read.mend })
  }
  return { items, faults }
}

/** `readSections` backwards. */
export const writeSections = (sections: readonly number[]): string =>
  sections.map((area) => printExact(area, 'area')).join('; ')
