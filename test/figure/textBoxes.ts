import { textWidth } from '../../src/figure/textWidth.ts'

export interface TextBox {
  readonly text: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** Boxes of the words that stand upright in a figure, and of the letters in signs. */
export function textBoxes(svg: string): readonly TextBox[] {
  const boxes: TextBox[] = []
  for (const [, attributes = '', text = ''] of svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)) {
    if (attributes.includes('rotate')) continue
    const read = (name: string): string => attributes.match(new RegExp(`${name}="([^"]*)"`))?.[1] ?? ''
    const size = Number(read('font-size'))
    const width = textWidth(text.replace(/&[a-z]+;/g, 'x'), size)
    const x = Number(read(' ?x'))
    const anchor = read('text-anchor')
    const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x
    const y = Number(read(' y'))
    boxes.push({ text, left, right: left + width, top: y - 0.72 * size, bottom: y + 0.2 * size })
  }
  return boxes
}

/** Pairs of words that lie over each other. */
export function overlaps(boxes: readonly TextBox[]): readonly string[] {
  const found: string[] = []
  for (const [index, one] of boxes.entries()) {
    for (const two of boxes.slice(index + 1)) {
      const apart = one.right <= two.left || two.right <= one.left || one.bottom <= two.top || two.bottom <= one.top
      if (!apart) found.push(`${one.text} | ${two.text}`)
    }
  }
  return found
}
