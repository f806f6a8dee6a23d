import type { SeriesMember } from '../../terms/index.ts'

/** Axes of a film law: sliding speed v, viscosity times speed ηv (Pa·m), and ηv over the load on one contact (1/m). */
export const filmAxes = ['speed', 'film', 'filmPerLoad'] as const

/** Name of one of them. */
export type FilmAxis = (typeof filmAxes)[number]

/** Place of a speed on the axis; null where the axis needs a viscosity that nobody gave. */
export function placeOnFilmAxis(
  axis: FilmAxis,
  { viscosity, load }: SeriesMember,
  slidingSpeed: number,
): number | null {
  if (axis === 'speed') return slidingSpeed
  if (viscosity === null) return null
  return axis === 'film' ? viscosity * slidingSpeed : (viscosity * slidingSpeed) / load
}
