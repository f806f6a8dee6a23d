import { done, type Outcome } from '../../core/terms/index.ts'
import type { PaletteName } from '../../figure/index.ts'
import { writeWhole } from '../writeWhole.ts'
import type { Compared } from './compared.ts'
import { drawComparison } from './drawComparison.ts'

export interface ComparisonFiles {
  readonly svg?: string
  readonly palette: PaletteName
}

/** Writes the drawing where one was asked for; the answer names what was written. */
export async function writeComparison(compared: Compared, files: ComparisonFiles): Promise<Outcome<readonly string[]>> {
  if (files.svg === undefined) return done([])
  const written = writeWhole(files.svg, drawComparison(compared, files.palette))
  return written.ok ? done([written.value]) : written
}
