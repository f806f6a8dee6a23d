import { type KnownValue, known } from '../knownValue.ts'
import { memory } from '../sources.ts'

const perGigapascal = (low: number, value: number, high: number): KnownValue => known([low, value, high], memory, 1e-9)

/**
 * Pressure–viscosity coefficients α, 1/Pa, near 25 to 40 °C, by kind of liquid. From memory, typical. Those from optical film
 * thickness and those from viscometry differ: name the method where one was measured.
 */
export const pressureCoefficients = {
  paraffinicOil: perGigapascal(18, 21, 25),
  naphthenicOil: perGigapascal(25, 29, 35),
  polyalphaolefin: perGigapascal(11, 14, 17),
  ester: perGigapascal(6, 11, 15),
  polyglycol: perGigapascal(8, 10, 12),
  siliconeOil: perGigapascal(12, 16, 20),
  squalane: perGigapascal(15, 18, 21),
  glycerol: perGigapascal(5, 5.8, 6.5),
  water: perGigapascal(0.4, 0.6, 0.9),
} as const

/** Kind of liquid in that table. */
export type LiquidFamily = keyof typeof pressureCoefficients
