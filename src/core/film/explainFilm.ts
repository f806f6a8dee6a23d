import {
  type Doubt,
  doubtAbove,
  doubtBelow,
  doubtsFound,
  type Explained,
  type Metre,
  type Ratio,
} from '../terms/index.ts'
import { type FilmConditions, type FilmNumbers, filmNumbers } from './conditions.ts'
import { ellipticity, hardFilm, softCentralFilmOf2005, softFilm } from './filmForms.ts'
import { type FilmRegime, filmRegimes, type RegimeFilms, type RegimeNumbers, regimeFilms } from './filmRegimes.ts'
import { centralFilm, filmRegime, minimumFilm, thickestFilm } from './filmThickness.ts'

/** What another published law gives for the same contact; null where it has no such form. */
export interface OtherFilm {
  readonly law: string
  readonly source: string
  readonly minimum: Metre | null
  readonly central: Metre | null
}

/** A film with all that speaks against it. */
export interface Film extends Explained {
  readonly regime: FilmRegime
  /** null where the formula gives nonsense, see the doubts. */
  readonly minimum: Metre | null
  readonly central: Metre | null
  readonly numbers: FilmNumbers
  /** null at rest, where they have no bound. */
  readonly regimeNumbers: RegimeNumbers | null
  readonly others: readonly OtherFilm[]
}

/** Film by the largest of the four regimes, other laws beside it, and the doubts. */
export function explainFilm(conditions: FilmConditions): Film {
  const numbers = filmNumbers(conditions)
  const regime = filmRegime(conditions)
  const minimum = minimumFilm(conditions)
  const central = centralFilm(conditions)
  const believable = minimum <= thickestFilm * conditions.radius
  const others = believable && minimum > 0 ? otherFilms(regime, numbers, conditions) : []
  const { speed, material, load } = numbers
  const regimeNumbers =
    speed > 0 ? { viscosity: (material * load ** 3) / speed ** 2, elasticity: load ** (8 / 3) / speed ** 2 } : null
  return {
    regime,
    minimum: believable ? minimum : null,
    central: believable ? central : null,
    numbers,
    regimeNumbers,
    others,
    law: `Hamrock & Dowson, ${words[regime]}`,
    source:
      'Hamrock & Dowson 1979; Esfahanian & Hamrock 1991, Tribol. Trans. 34:628; Hamrock, Schmid & Jacobson 2004 (from memory)',
    valid:
      'Smooth surfaces, flooded inlet, no heating, a liquid whose viscosity at the inlet’s shear rate was put in. Measured ' +
      'films averaged 30 % above the hard formula in one optical study (J. Lubr. Tech. 103:284).',
    doubts: doubtsFound(
      tooThick(minimum, conditions),
      molecular(minimum),
      ...(regime === 'piezoviscousElastic' ? outsideFit(numbers) : []),
      regimeNumbers === null ? undefined : nearBorder(regimeFilms(regimeNumbers, conditions.radiusRatio), regime),
      othersDiffer(others, { minimum, central }),
    ),
  }
}

const words: Readonly<Record<FilmRegime, string>> = {
  isoviscousRigid: 'isoviscous–rigid',
  piezoviscousRigid: 'piezoviscous–rigid',
  isoviscousElastic: 'isoviscous–elastic (soft)',
  piezoviscousElastic: 'piezoviscous–elastic (hard)',
}

function otherFilms(regime: FilmRegime, numbers: FilmNumbers, conditions: FilmConditions): OtherFilm[] {
  const { radius, radiusRatio = 1 } = conditions
  const k = ellipticity(radiusRatio)
  if (regime === 'piezoviscousElastic') {
    const film = hardFilm(numbers, k)
    return [
      {
        law: 'Hamrock & Dowson 1977, hard bodies',
        source: 'J. Lubr. Tech. 99:264 (minimum as printed, central from memory)',
        minimum: radius * film.minimum,
        central: radius * film.central,
      },
    ]
  }
  if (regime !== 'isoviscousElastic') return []
  const film = softFilm(numbers, k)
  const first = {
    law: 'Hamrock & Dowson 1978, soft bodies',
    source: 'J. Lubr. Tech. 100:236 (from memory)',
    minimum: radius * film.minimum,
    central: radius * film.central,
  }
  if (radiusRatio !== 1) return [first]
  return [
    first,
    {
      law: 'de Vicente, Stokes & Spikes 2005, soft bodies',
      source: 'Tribol. Lett. 20:273 (from memory)',
      minimum: null,
      central: radius * softCentralFilmOf2005(numbers),
    },
  ]
}

const tooThick = (minimum: Metre, { radius }: FilmConditions): Doubt | undefined =>
  doubtAbove({
    kind: 'filmTooThick',
    seen: minimum / radius,
    limit: thickestFilm,
    say: (seen, limit) =>
      `The formula gives a film of ${seen} of the radius, over ${limit}: the load is too small for it, and no film is given.`,
  })

/** Molecules of most liquids are about half a nanometre across; under some ten layers a film is no continuum. Common practice, no source. */
const molecular = (minimum: Metre): Doubt | undefined =>
  doubtBelow({
    kind: 'filmMolecular',
    seen: minimum / 5e-10,
    limit: 10,
    say: (seen) => `The film would be ${seen} layers of molecules thick: under about ten a viscosity means little.`,
  })

/** Range of the cases behind the hard formula of 1977 (from memory). */
const fitted: readonly {
  readonly name: string
  readonly key: keyof FilmNumbers
  readonly from: Ratio
  readonly to: Ratio
}[] = [
  { name: 'speed number U', key: 'speed', from: 8e-13, to: 5e-11 },
  { name: 'material number G', key: 'material', from: 2310, to: 6785 },
  { name: 'load number W', key: 'load', from: 1e-7, to: 1e-6 },
]

const outsideFit = (numbers: FilmNumbers): (Doubt | undefined)[] =>
  fitted.flatMap(({ name, key, from, to }) => {
    const say = (seen: string, limit: string): string =>
      `The ${name} is ${seen}, beyond the ${limit} to which the formula was fitted in 1977: it is carried on from there.`
    return [
      doubtBelow({ kind: 'outsideFit', seen: numbers[key], limit: from, say }),
      doubtAbove({ kind: 'outsideFit', seen: numbers[key], limit: to, say }),
    ]
  })

function nearBorder(films: RegimeFilms, regime: FilmRegime): Doubt | undefined {
  const next = filmRegimes.filter((other) => other !== regime).sort((a, b) => films[b] - films[a])[0]
  return doubtAbove({
    kind: 'betweenLaws',
    seen: films[next] / films[regime],
    limit: 0.8,
    say: (seen) =>
      `The film of the next regime, ${words[next]}, is ${seen} of this one: near the border both effects add and neither law is exact.`,
  })
}

function othersDiffer(others: readonly OtherFilm[], own: { readonly minimum: Metre; readonly central: Metre }) {
  const differences = others.flatMap((other) => [
    other.minimum === null ? 0 : Math.abs(other.minimum / own.minimum - 1),
    other.central === null ? 0 : Math.abs(other.central / own.central - 1),
  ])
  return doubtAbove({
    kind: 'lawsDiffer',
    seen: Math.max(0, ...differences),
    limit: 0.1,
    say: (seen) => `Published laws for this contact differ by up to ${seen} of the film: all are given.`,
  })
}
