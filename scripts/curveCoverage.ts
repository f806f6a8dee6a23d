// Holds the intervals of the curve fit against curves of known truth, without records and their reduction:
// `node scripts/curveCoverage.ts [curves] [seed] [scatter]`, 1000 and 1 when not named. Prints the table of docs/curve-fit.md.
// The study through whole records is the verb `coverage`.
import { type CurveMember, type CurvePoint, curveFamily, featureValues, fitCurve } from '../src/core/curve/index.ts'
import { chiSquaredDraw, type Random, randomFrom } from '../src/core/numeric/index.ts'
import type { Curve, CurveModelName } from '../src/core/terms/index.ts'

/** How the truth of a study is drawn. */
export interface StudyPlan {
  readonly curves: number
  readonly seed: number
  /** Scatter between steps, as a multiple of own uncertainty, drawn evenly up to this. */
  readonly scatter: number
}

/** Intervals of one kind. `given` counts those where the truth has the feature and the fit tells it. */
export interface CoverageCount {
  given: number
  inside: number
  none: number
}

interface Truth {
  readonly member: CurveMember
  readonly parameters: Float64Array
  readonly lnSpeeds: Float64Array
}

/** Runs the study; the band counts at each of its speeds. */
export function curveCoverage({ curves, seed, scatter }: StudyPlan): ReadonlyMap<string, CoverageCount> {
  const counts = new Map<string, CoverageCount>()
  const count = (what: string, inside: boolean | null): void => {
    const entry = counts.get(what) ?? { given: 0, inside: 0, none: 0 }
    if (inside === null) entry.none++
    else entry.given++
    if (inside === true) entry.inside++
    counts.set(what, entry)
  }
  for (let index = 0; index < curves; index++) {
    const random = randomFrom(seed, index)
    const truth = drawTruth(random)
    const curve = fitCurve(drawPoints(random, truth, scatter), { seed: index })
    countBand(curve, truth, count)
    countFeatures(curve, truth, count)
  }
  return counts
}

type Count = (what: string, inside: boolean | null) => void

function countBand({ band }: Curve, { member, parameters }: Truth, count: Count): void {
  const lnSpeeds = Float64Array.from(band, ({ slidingSpeed }) => Math.log(slidingSpeed))
  const lnFriction = new Float64Array(lnSpeeds.length)
  member.evaluate(parameters, { lnSpeeds, lnFriction })
  for (const [i, { low, high }] of band.entries()) {
    const friction = Math.exp(lnFriction[i])
    count('band', low <= friction && friction <= high)
  }
}

function countFeatures({ features }: Curve, { member, parameters, lnSpeeds }: Truth, count: Count): void {
  const values = featureValues(member, parameters, reachOf(lnSpeeds))
  for (const { name, value, low, high } of features) {
    const truth = values[name]
    if (truth === null) continue
    const told = value !== null && (low !== null || high !== null)
    count(name, told ? (low ?? 0) <= truth && truth <= (high ?? Number.POSITIVE_INFINITY) : null)
  }
}

const between = (random: Random, low: number, high: number): number => low + (high - low) * random.uniform()
const evenInLog = (random: Random, low: number, high: number): number =>
  Math.exp(between(random, Math.log(low), Math.log(high)))

const reachOf = (lnSpeeds: Float64Array) => ({
  lnSlowest: lnSpeeds[0],
  lnFastest: lnSpeeds[lnSpeeds.length - 1],
  lnLeast: Math.log(0.01),
  lnMost: 0,
})

/** Each member as often as it is the truth, of twenty. */
const deck: readonly CurveModelName[] = [
  ...Array<CurveModelName>(8).fill('stribeck'),
  ...Array<CurveModelName>(3).fill('stribeckSloped'),
  ...Array<CurveModelName>(4).fill('stribeckExponential'),
  ...Array<CurveModelName>(3).fill('powerLaw'),
  ...Array<CurveModelName>(2).fill('plateau'),
]

/** 8 to 25 speeds over 2 to 3.3 decades; the transition anywhere among them, so that some curves have no minimum inside. */
function drawTruth(random: Random): Truth {
  const count = 8 + random.integer(18)
  const slowest = between(random, Math.log(1e-4), Math.log(3e-3))
  const width = between(random, 2, 3.3) * Math.LN10
  const lnSpeeds = Float64Array.from({ length: count }, (_, i) => slowest + (width * i) / (count - 1))
  const name = deck[random.integer(deck.length)]
  const member = curveFamily[name](reachOf(lnSpeeds))
  return { member, lnSpeeds, parameters: Float64Array.from(drawParameters(random, name, { slowest, width })) }
}

function drawParameters(random: Random, name: CurveModelName, speeds: { slowest: number; width: number }): number[] {
  const lnBoundary = Math.log(evenInLog(random, 0.05, 0.6))
  const lnX0 = speeds.slowest + speeds.width * between(random, 0.1, 0.9)
  switch (name) {
    case 'plateau':
      return [lnBoundary]
    case 'powerLaw':
      return [lnBoundary, between(random, -0.4, 0.5)]
    case 'stribeckExponential': {
      const lnPlateau = lnBoundary + Math.log(evenInLog(random, 0.1, 0.8))
      return [lnPlateau, lnBoundary, lnBoundary + Math.log(evenInLog(random, 0.02, 1)), lnX0]
    }
    default: {
      const lnFilm = lnBoundary + Math.log(evenInLog(random, 0.1, 1.3))
      const common = [lnFilm, between(random, 0, 0.7), lnBoundary, lnX0, between(random, 0.7, 3)]
      return name === 'stribeck' ? common : [...common, between(random, -0.15, 0.15)]
    }
  }
}

/** Own uncertainties of 0.05 to 5 %, alike or varied among the steps, estimated with 3 to 100 degrees of freedom. */
function drawPoints(random: Random, { member, parameters, lnSpeeds }: Truth, scatter: number): CurvePoint[] {
  const lnFriction = new Float64Array(lnSpeeds.length)
  member.evaluate(parameters, { lnSpeeds, lnFriction })
  const typical = evenInLog(random, 5e-4, 0.05)
  const variety = [0, 0.3, 0.6][random.integer(3)]
  const degreesOfFreedom = evenInLog(random, 3, 100)
  const extra = typical * between(random, 0, scatter)
  return Array.from(lnSpeeds, (lnSpeed, i) => {
    const own = typical * Math.exp(variety * random.normal())
    const friction = Math.exp(lnFriction[i] + own * random.normal() + extra * random.normal())
    const estimated = own * Math.sqrt(chiSquaredDraw(random, degreesOfFreedom) / degreesOfFreedom)
    return { slidingSpeed: Math.exp(lnSpeed), friction, ownUncertainty: estimated * friction, degreesOfFreedom }
  })
}

/** The table as it stands in the documentation. */
export function coverageTable(counts: ReadonlyMap<string, CoverageCount>): string {
  const rows = [...counts].map(([what, { given, inside, none }]) => {
    const share = ((100 * inside) / given).toFixed(1)
    return `| ${what} | ${share} % | ${given} | ${none} |`
  })
  return ['| 95 % interval of | holds the truth | given | not told |', '| --- | --- | --- | --- |', ...rows].join('\n')
}

if (import.meta.main) {
  const [curves = 1000, seed = 1] = process.argv.slice(2, 4).map(Number)
  const scatter = process.argv[4] === 'scatter' ? 5 : 0
  process.stdout.write(`${coverageTable(curveCoverage({ curves, seed, scatter }))}\n`)
}
