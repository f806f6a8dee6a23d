import type { Palette } from '../palette.ts'

/** Line of one sample among several: told apart by colour and, for print and the colour-blind, by dashes. */
export interface SampleStroke {
  readonly colour: string
  readonly dash: string | undefined
}

const dashes = [undefined, '9 4', '2 3', '9 3 2 3', '14 4', '4 2'] as const

/** Strokes in a fixed order; with many samples colours come again with other dashes. */
export function sampleStroke(place: number, { accent, shared, bias, stops, quiet }: Palette): SampleStroke {
  const colours = [accent, shared, stops, bias, quiet]
  return { colour: colours[place % colours.length], dash: dashes[place % dashes.length] }
}
