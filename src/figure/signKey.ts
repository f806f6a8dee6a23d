import { printSteps } from '../core/quantity/index.ts'
import { remarkWords } from '../core/terms/index.ts'
import { lettering, sizes } from './lettering.ts'
import { element, type Markup } from './markup.ts'
import type { Block } from './sheet.ts'
import { type Sign, signMark } from './signs.ts'
import type { Stage } from './stage.ts'
import { fitted, textWidth } from './textWidth.ts'

const lineHeight = 19

/** What the signs mean and on which steps they stand, below the plot, in as many lines as it takes. */
export function signKey(signs: readonly Sign[], top: number, stage: Stage): Block {
  if (signs.length === 0) return { markup: '', height: 0 }
  const { plot, palette, width } = stage
  const right = width - 16
  const marks: Markup[] = []
  let x = plot.left
  let y = top + 9
  for (const sign of signs) {
    const text = fitted(`${remarkWords[sign.kind].words}: ${stepsInWords(sign)}`, sizes.small, right - plot.left - 20)
    const wide = 14 + textWidth(text, sizes.small)
    if (x > plot.left && x + wide > right) {
      x = plot.left
      y += lineHeight
    }
    marks.push(signMark(sign, { x: x + 7, y }, palette))
    marks.push(lettering(text, { x: x + 19, y: y + 4, fill: palette.ink, size: sizes.small }))
    x += wide + 24
  }
  return { markup: element('g', {}, ...marks), height: y - top + lineHeight }
}

/** "step 3", "steps 1–4, 7", "every step". */
export const stepsInWords = (sign: Pick<Sign, 'steps' | 'everywhere'>): string =>
  sign.everywhere ? 'every step' : printSteps(sign.steps)
