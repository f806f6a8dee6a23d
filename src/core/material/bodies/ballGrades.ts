import type { Metre } from '../../terms/index.ts'

/** Grade of a rolling-bearing ball. All lengths in m. */
export interface BallGrade {
  readonly grade: string
  /** Largest deviation from the sphere, and largest difference of diameters of one ball. */
  readonly deviation: Metre
  /** Largest arithmetic-mean roughness Ra. */
  readonly arithmeticRoughness: Metre
}

const grade = ([number, deviation, roughness]: readonly [number, number, number]): BallGrade => ({
  grade: `G${number}`,
  deviation: deviation / 1e6,
  arithmeticRoughness: roughness / 1e6,
})

/** Grades of ISO 3290-1 (steel; 3290-2 has the same for silicon nitride), as quoted by several makers of balls. */
export const ballGrades: readonly BallGrade[] = (
  [
    [3, 0.08, 0.01],
    [5, 0.13, 0.014],
    [10, 0.25, 0.02],
    [16, 0.4, 0.025],
    [20, 0.5, 0.032],
    [24, 0.6, 0.04],
    [28, 0.7, 0.05],
    [40, 1, 0.06],
    [60, 1.5, 0.08],
    [100, 2.5, 0.1],
    [200, 5, 0.15],
  ] as const
).map(grade)
