import { mustBePositive } from '../refuse.ts'
import { type Span, within } from '../span.ts'

/** Grade of an industrial oil: kinematic viscosity at 40 °C in m²/s. */
export interface ViscosityGrade {
  readonly grade: number
  readonly middle: number
  /** 10 % to either side. */
  readonly range: Span
}

/** Middles in mm²/s that differ from the number of the grade. */
const oddMiddles: Readonly<Record<number, number>> = { 2: 2.2, 3: 3.2, 5: 4.6, 7: 6.8 }

const gradeOf = (grade: number): ViscosityGrade => {
  const middle = oddMiddles[grade] ?? grade
  return { grade, middle: middle / 1e6, range: { low: (middle * 0.9) / 1e6, high: (middle * 1.1) / 1e6 } }
}

/** The 20 grades of ISO 3448:1992. Middles of 2 to 7, 2200 and 3200 from memory. */
export const viscosityGrades: readonly ViscosityGrade[] = [
  2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200,
].map(gradeOf)

/** Grade of a kinematic viscosity at 40 °C, m²/s; undefined in the gaps between grades, as 37 mm²/s. */
export function viscosityGrade(viscosity: number): ViscosityGrade | undefined {
  mustBePositive(viscosity, 'kinematic viscosity', 'm²/s')
  return viscosityGrades.find(({ range }) => within(viscosity, range))
}
