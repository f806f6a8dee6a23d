import {
  entrainmentInPureSliding,
  explainFilm,
  type Film,
  type FilmRegime,
  filmLaw,
  filmWithThinning,
  type OtherFilm,
  slidingOfEntrainment,
  speedOfFilm,
  type ThinningFilm,
  thinningSpeedOfFilm,
} from '../film/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { Doubt, Metre, MetrePerSecond, Newton } from '../terms/index.ts'
import { type FilmsInRegimes, filmsInRegimes } from './filmsInRegimes.ts'
import type { PlannedPoint } from './plannedPoints.ts'
import type { FilmModel, FrictionModel } from './predictedFriction.ts'
import type { QuestionFlow } from './question.ts'
import { thinningWords } from './thinningWords.ts'

/** A speed with the interval in which it lies. */
export interface SpeedInterval {
  readonly value: MetrePerSecond
  readonly low: MetrePerSecond
  readonly high: MetrePerSecond
}

/** Boundary, mixed or full film before the test, and whether the answer survives another viscosity or roughness. */
export interface RegimeAnswer {
  /** null where no film can be predicted, or no speed gives it. */
  readonly mixedFrom: SpeedInterval | null
  readonly fullFilmFrom: SpeedInterval | null
  /** Planned steps whose regime is the same over the whole interval of λ, and all of them. */
  readonly surviving: number
  readonly of: number
  /** A viscosity and a combined roughness that are off by their own uncertainty, and what they do to the speeds. */
  readonly sentences: readonly string[]
  /** Film law in the middle of the planned speeds, what speaks against it, and what other published laws give; null without a film. */
  readonly film: {
    readonly law: string
    readonly source: string
    readonly valid: string
    readonly doubts: readonly Doubt[]
    readonly others: readonly OtherFilm[]
    /** Where the film is told: the middle of the planned speeds. */
    readonly slidingSpeed: MetrePerSecond
    readonly regime: FilmRegime
    /** null where the formula gives nonsense. */
    readonly minimum: Metre | null
    readonly central: Metre | null
    readonly inRegimes: FilmsInRegimes | null
  } | null
}

const speed = (value: number): string => printQuantity(value, 'velocity', { digits: 2 })

/** The answer at the planned load. */
export function regimeAnswer(
  { film }: FrictionModel,
  {
    flow,
    load,
    points,
  }: { readonly flow?: QuestionFlow; readonly load: Newton; readonly points: readonly PlannedPoint[] },
): RegimeAnswer {
  if (film === null) {
    return { mixedFrom: null, fullFilmFrom: null, surviving: 0, of: 0, sentences: [withoutFilm], film: null }
  }
  const speeds = points.map(({ slidingSpeed }) => slidingSpeed)
  const middleSpeed = Math.sqrt(Math.min(...speeds) * Math.max(...speeds))
  const { explained, thinning } = filmAt(film, load, middleSpeed)
  const ends = { mixedFrom: film.bounds.mixedFrom, fullFilmFrom: film.bounds.fullFilmFrom }
  const interval = (key: keyof typeof ends): SpeedInterval | null => {
    // A rougher pair needs a thicker film, so its regimes begin at faster speeds.
    const [low, value, high] = [1 / film.spread, 1, film.spread].map((factor) =>
      speedReaching(film, { load, thickness: ends[key] * film.roughness * factor }),
    )
    return low === null || value === null || high === null ? null : { value, low, high }
  }
  const mixedFrom = interval('mixedFrom')
  const fullFilmFrom = interval('fullFilmFrom')
  const rated = points.filter(({ regimeSurvives }) => regimeSurvives !== null)
  const surviving = rated.filter(({ regimeSurvives }) => regimeSurvives === true).length
  const doubled = speedReaching(film, { load, thickness: ends.fullFilmFrom * film.roughness, thicker: 2 })
  return {
    mixedFrom,
    fullFilmFrom,
    surviving,
    of: rated.length,
    sentences: [
      ...lambdaWords(points),
      `${reachedWords(film.bounds.mixedFrom, mixedFrom)} ${reachedWords(film.bounds.fullFilmFrom, fullFilmFrom)}`,
      `${surviving} of ${rated.length} steps keep their regime over the whole interval of λ; the others would change it with another viscosity or roughness.`,
      ...(fullFilmFrom === null || doubled === null
        ? []
        : [`Twice the viscosity moves full film from ${speed(fullFilmFrom.value)} to ${speed(doubled)}.`]),
      ...(flow === undefined || thinning === null ? [] : thinningWords(flow, points, thinning)),
      ...(film.soft ? [softWords] : []),
      ...filmsBeside(explained, middleSpeed),
      ...(thinning ?? explained).doubts.map(({ sentence }) => sentence),
    ],
    film: {
      law: (thinning ?? explained).law,
      source: (thinning ?? explained).source,
      valid: (thinning ?? explained).valid,
      doubts: (thinning ?? explained).doubts,
      others: explained.others,
      slidingSpeed: middleSpeed,
      regime: explained.regime,
      minimum: explained.minimum,
      central: explained.central,
      inRegimes: filmsInRegimes(explained, film.pair.radius),
    },
  }
}

/** The film at a sliding speed, explained; for a thinning liquid with the viscosity at its inlet. */
function filmAt(
  film: FilmModel,
  load: Newton,
  slidingSpeed: MetrePerSecond,
): { readonly explained: Film; readonly thinning: ThinningFilm | null } {
  const conditions = { ...film.pair, load, entrainmentSpeed: entrainmentInPureSliding(slidingSpeed) }
  if (film.thinning === null) return { explained: explainFilm(conditions), thinning: null }
  const thinning = filmWithThinning(conditions, film.thinning.flow)
  return { explained: thinning.film, thinning }
}

interface Reaching {
  readonly load: Newton
  readonly thickness: Metre
  /** Factor on the viscosity. */
  readonly thicker?: number
}

/** Sliding speed at which the film is so thick; null where none is. */
function speedReaching({ law, thinning, pair }: FilmModel, { load, thickness, thicker = 1 }: Reaching): number | null {
  if (thinning === null) {
    const own = thicker === 1 ? law : filmLaw({ ...pair, viscosity: thicker * pair.viscosity })
    return slidingOfEntrainment(speedOfFilm(thickness, load, own))
  }
  return thinningSpeedOfFilm(thickness, load, { ...thinning, flow: (rate) => thicker * thinning.flow(rate) })
}

const reachedWords = (bound: number, at: SpeedInterval | null): string =>
  at === null
    ? `λ reaches ${bound} at no speed: the liquid thins as fast as the film would grow.`
    : `λ reaches ${bound} at ${speed(at.value)} (between ${speed(at.low)} and ${speed(at.high)}).`

const withoutFilm =
  'No film can be predicted: that takes a round contact, a viscosity, the roughness and the stiffness of both bodies. Friction is taken as boundary friction throughout.'

const softWords =
  'The bounds 1 and 3 are those of hard contacts; a soft one left the mixed regime at λ of about 0.7 in one study (Bongaerts, Fourtouni & Stokes 2007).'

/** The film in the middle of the sweep by every published law. */
function filmsBeside({ law, minimum, central, others }: Film, at: MetrePerSecond): readonly string[] {
  const length = (value: number | null): string =>
    value === null ? 'none given' : printQuantity(value, 'length', { digits: 2 })
  const own = `Film at ${speed(at)}: minimum ${length(minimum)}, central ${length(central)} (${law})`
  const beside = others.map((other) => `${length(other.minimum)}, ${length(other.central)} (${other.law})`)
  return [`${[own, ...beside].join('; ')}.`]
}

function lambdaWords(points: readonly PlannedPoint[]): readonly string[] {
  const sorted = [...points].sort((a, b) => a.slidingSpeed - b.slidingSpeed)
  const words = (point: PlannedPoint | undefined): string => {
    const lambda = point?.friction.lambda
    if (point === undefined || lambda === undefined || lambda === null) return ''
    const [value, low, high] = [lambda.value, lambda.low, lambda.high].map((one) => Number(one.toPrecision(2)))
    return `λ is ${value} (${low} to ${high}) at ${speed(point.slidingSpeed)}`
  }
  const ends = [words(sorted[0]), words(sorted[sorted.length - 1])].filter((text) => text !== '')
  return ends.length === 2 ? [`${ends[0]} and ${ends[1].replace('λ is ', '')}.`] : []
}
