import type { FitEnd } from '../terms/index.ts'

/** Inner parameters in words, and how their value is read. */
const innerWords: Readonly<Record<string, { readonly words: string; readonly logarithmic: boolean }>> = {
  lnLevel: { words: 'level', logarithmic: true },
  lnFilm: { words: 'film level at the fastest speed', logarithmic: true },
  lnBoundary: { words: 'boundary level at the slowest speed', logarithmic: true },
  lnX0: { words: 'x0', logarithmic: true },
  lnPlateau: { words: 'c', logarithmic: true },
  lnRest: { words: 'h', logarithmic: true },
  lnViscous: { words: 'viscous friction at the fastest speed', logarithmic: true },
}

/** An inner parameter in words. */
export const innerName = (name: string): string => innerWords[name]?.words ?? name

/** Value of an inner parameter as people read it. */
export const innerValue = (name: string, value: number): number =>
  innerWords[name]?.logarithmic ? Math.exp(value) : value

/** How a fit ended, with its inner parameters in words and their bounds as people read them. */
export function endInWords(end: FitEnd): FitEnd {
  switch (end.why) {
    case 'atBound':
      return { ...end, parameter: innerName(end.parameter), bound: innerValue(end.parameter, end.bound) }
    case 'singular':
      return { ...end, parameters: end.parameters.map(innerName) }
    default:
      return end
  }
}
