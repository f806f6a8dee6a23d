import { parseQuantity } from '../../core/quantity/index.ts'
import type { Problem } from '../../core/terms/index.ts'

/** Values of options as they are read, and everything that is wrong with them. */
export class ReadWords {
  readonly problems: Problem[] = []

  /** A sliding speed above zero; null where nothing was said or it cannot be read. */
  speed(option: string, text: string | undefined): number | null {
    return this.quantity(option, text, { dimension: 'velocity', least: Number.MIN_VALUE, most: 1e3 })
  }

  /** A plain number or a share within bounds. */
  number(option: string, text: string | undefined, { least, most }: { least: number; most: number }): number | null {
    return this.quantity(option, text, { dimension: 'ratio', least, most })
  }

  private quantity(
    option: string,
    text: string | undefined,
    { dimension, least, most }: { dimension: 'velocity' | 'ratio'; least: number; most: number },
  ): number | null {
    if (text === undefined) return null
    const read = parseQuantity(text, dimension)
    if (!read.ok) this.refuse(option, text, read)
    else if (read.value >= least && read.value <= most) return read.value
    else this.refuse(option, text, { what: `--${option} lies outside what is possible.`, mend: 'Write another value.' })
    return null
  }

  refuse(option: string, text: string, { what, mend }: { what: string; mend: string }): void {
    this.problems.push({
      kind: 'optionUnreadable',
      class: 'wrongUse',
      place: { name: `--${option}`, cell: text },
      what,
      mend,
    })
  }
}
