import { join } from 'node:path'
import { drawCurve, type ReducedDemo, resultText, writeWhole } from '../bench/index.ts'
import { done, type Outcome } from '../core/terms/index.ts'

/** Writes drawing and JSON of a demo record into a folder, where one was named. */
export function writeDemo({ demo, reduced }: ReducedDemo, folder: string | undefined): Outcome<readonly string[]> {
  if (folder === undefined) return done([])
  const drawing = writeWhole(join(folder, `${demo.name}.svg`), drawCurve(reduced, 'light'))
  if (!drawing.ok) return drawing
  const document = writeWhole(join(folder, `${demo.name}.json`), resultText(reduced))
  return document.ok ? done([drawing.value, document.value]) : document
}
