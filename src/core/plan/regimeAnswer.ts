import {
  entrainmentInPureSliding,
  explainFilm,
  type Film,
  filmLaw,
  type OtherFilm,
  regimeSpeeds,
} from '../film/index.ts'
import { printQuantity } from '../quantity/index.ts'
import type { Doubt, MetrePerSecond, Newton } from '../terms/index.ts'
import type { PlannedPoint } from './plannedPoints.ts'
import type { FrictionModel } from './predictedFriction.ts'

/** A speed with the interval in which it lies. */
export interface SpeedInterval {
  readonly value: MetrePerSecond
  readonly low: MetrePerSecond
  readonly high: MetrePerSecond
}

/** Boundary, mixed or full film before the test, and whether the answer survives another viscosity or roughness. */
export interface RegimeAnswer {
  /** null where no film can be predicted. */
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
    readonly doubts: readonly Doubt[]
    readonly others: readonly OtherFilm[]
  } | null
}

const speed = (value: number): string => printQuantity(value, 'velocity', { digits: 2 })

/** The answer at the planned load. */
export function regimeAnswer(model: FrictionModel, load: Newton, points: readonly PlannedPoint[]): RegimeAnswer {
  const { film } = model
  if (film === null) {
    return { mixedFrom: null, fullFilmFrom: null, surviving: 0, of: 0, sentences: [withoutFilm], film: null }
  }
  const speeds = points.map(({ slidingSpeed }) => slidingSpeed)
  const middleSpeed = Math.sqrt(Math.min(...speeds) * Math.max(...speeds))
  const explained = explainFilm({ ...film.pair, load, entrainmentSpeed: entrainmentInPureSliding(middleSpeed) })
  const question = { load, bounds: film.bounds }
  const middle = regimeSpeeds({ ...question, law: film.law, roughness: film.roughness })
  // A rougher pair needs a thicker film, so its regimes begin at faster speeds.
  const late = regimeSpeeds({ ...question, law: film.law, roughness: film.roughness * film.spread })
  const early = regimeSpeeds({ ...question, law: film.law, roughness: film.roughness / film.spread })
  const interval = (key: 'mixedFrom' | 'fullFilmFrom'): SpeedInterval => ({
    value: middle[key],
    low: early[key],
    high: late[key],
  })
  const mixedFrom = interval('mixedFrom')
  const fullFilmFrom = interval('fullFilmFrom')
  const rated = points.filter(({ regimeSurvives }) => regimeSurvives !== null)
  const surviving = rated.filter(({ regimeSurvives }) => regimeSurvives === true).length
  const doubled = regimeSpeeds({
    ...question,
    law: filmLaw({ ...film.pair, viscosity: 2 * film.pair.viscosity }),
    roughness: film.roughness,
  })
  return {
    mixedFrom,
    fullFilmFrom,
    surviving,
    of: rated.length,
    sentences: [
      ...lambdaWords(points),
      `λ reaches ${film.bounds.mixedFrom} at ${speed(mixedFrom.value)} (between ${speed(mixedFrom.low)} and ${speed(mixedFrom.high)}) and ` +
        `${film.bounds.fullFilmFrom} at ${speed(fullFilmFrom.value)} (between ${speed(fullFilmFrom.low)} and ${speed(fullFilmFrom.high)}).`,
      `${surviving} of ${rated.length} steps keep their regime over the whole interval of λ; the others would change it with another viscosity or roughness.`,
      `Twice the viscosity moves full film from ${speed(fullFilmFrom.value)} to ${speed(doubled.fullFilmFrom)}.`,
      ...(film.soft ? [softWords] : []),
      ...filmsBeside(explained, middleSpeed),
      ...explained.doubts.map(({ sentence }) => sentence),
    ],
    film: { law: explained.law, source: explained.source, doubts: explained.doubts, others: explained.others },
  }
}

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
