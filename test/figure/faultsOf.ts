import { overlaps, textBoxes } from './textBoxes.ts'
import { wellFormed } from './wellFormed.ts'

/**
 * All that is wrong with a picture, one line each: XML that does not close, numbers that are none, words over each other or
 * outside the sheet, no title or description. Empty for a sound one.
 */
export function faultsOf(svg: string): readonly string[] {
  const read = (name: string): number => Number(svg.match(new RegExp(`<svg[^>]*? ${name}="([\\d.]+)"`))?.[1])
  const [width, height] = [read('width'), read('height')]
  const boxes = textBoxes(svg)
  const outside = boxes.filter(
    ({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height,
  )
  const attributes = [...svg.matchAll(/<[^>]*>/g)].map(([tag]) => tag.replace(/href="[^"]*"/, '')).join('')
  return [
    ...(wellFormed(svg) ? [] : ['not well-formed']),
    ...(/NaN|Infinity|undefined/.test(attributes) ? ['a number that is none'] : []),
    ...overlaps(boxes).map((pair) => `over each other: ${pair}`),
    ...outside.map(({ text }) => `outside: ${text}`),
    ...(/<title id="[^"]+">[^<]+<\/title>/.test(svg) ? [] : ['no title']),
    ...(/<desc id="[^"]+">[^<]+<\/desc>/.test(svg) ? [] : ['no description']),
  ]
}
