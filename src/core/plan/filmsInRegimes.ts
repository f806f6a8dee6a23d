import { centralRegimeFilms, type Film, type FilmRegime, filmRegimes, regimeFilms } from '../film/index.ts'
import type { Metre } from '../terms/index.ts'

/** Minimum and central film as each of the four regimes has them; the largest minimum is the one that is there. */
export type FilmsInRegimes = Readonly<Record<FilmRegime, { readonly minimum: Metre; readonly central: Metre }>>

/** The films of all regimes in metres: h = Ĥ·R·(U/W)². null at rest. */
export function filmsInRegimes({ numbers, regimeNumbers }: Film, radius: Metre): FilmsInRegimes | null {
  if (regimeNumbers === null) return null
  const scale = radius * (numbers.speed / numbers.load) ** 2
  const minimum = regimeFilms(regimeNumbers)
  const central = centralRegimeFilms(regimeNumbers)
  const entries = filmRegimes.map(
    (regime) => [regime, { minimum: scale * minimum[regime], central: scale * central[regime] }] as const,
  )
  return Object.fromEntries(entries) as FilmsInRegimes // made of all regimes, just above
}
