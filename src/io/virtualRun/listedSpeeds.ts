import { parseQuantity } from '../../core/quantity/index.ts'
import type { MetrePerSecond } from '../../core/terms/index.ts'

/** Speeds of a list, and what is wrong with the others. */
export interface ListedSpeeds {
  readonly speeds: readonly MetrePerSecond[]
  readonly faults: readonly { readonly what: string; readonly mend: string }[]
}

/** Reads `1 mm/s; -10 mm/s`: sliding speeds with units between semicolons, none of them zero. */
export function listedSpeeds(text: string): ListedSpeeds {
  const speeds: MetrePerSecond[] = []
  const faults: { what: string; mend: string }[] = []
  for (const part of text.split(';')) {
    const parsed = parseQuantity(part, 'velocity')
    if (!parsed.ok) faults.push({ what: parsed.what, mend: parsed.mend })
    else if (parsed.value === 0) {
      faults.push({ what: 'A speed is zero.', mend: 'Write speeds above zero, or below for turning backwards.' })
    } else speeds.push(parsed.value)
  }
  return { speeds, faults }
}
