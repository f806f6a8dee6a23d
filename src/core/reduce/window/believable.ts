import { printQuantity } from '../../quantity/index.ts'
import type { BelievableWindow, Point, WindowLimit, WindowLimitName } from '../../terms/index.ts'
import { partialTurnShare } from '../remarks/underOneTurn.ts'
import { limitWords } from './limitWords.ts'
import { nameWords } from './nameWords.ts'
import { plateauVerdict } from './plateau.ts'
import { type LimitAt, type LimitContext, limitsAt } from './pointLimits.ts'

/** Limits in the order in which they are told, with the end of the speed range where they usually bite. */
const told: readonly (readonly [WindowLimitName, 'low' | 'high'])[] = [
  ['torqueFloor', 'low'],
  ['forceZero', 'low'],
  ['partialTurn', 'low'],
  ['windUp', 'low'],
  ['contact', 'low'],
  ['torqueCeiling', 'high'],
  ['inertia', 'high'],
  ['drag', 'high'],
]

interface Judged {
  readonly point: Point
  readonly limits: readonly LimitAt[]
  readonly broken: readonly LimitAt[]
}

/**
 * From which to which speed a curve may be believed: the widest run of neighbouring points (in log speed) at which no
 * limit is broken, and for each limit where it bites.
 */
export function believableWindow(points: readonly Point[], context: LimitContext): BelievableWindow {
  const judged = points
    .map((point, i): Judged => {
      const limits = limitsAt(point, i, context)
      return { point, limits, broken: limits.filter((limit) => !(limit.seen <= limit.limit)) }
    })
    .filter(({ point }) => point.slidingSpeed > 0)
    .sort((a, b) => a.point.slidingSpeed - b.point.slidingSpeed)
  const run = widestRun(judged)
  const low = run === undefined ? null : judged[run.from].point.slidingSpeed
  const high = run === undefined ? null : judged[run.to].point.slidingSpeed
  const limits = told.map(([name, end]) => limitOver(name, end, { judged, low, high }))
  return {
    low,
    high,
    limits,
    partialTurnBias: points.flatMap((point, i) =>
      point.turns < 1
        ? [{ step: point.step, turns: point.turns, bound: partialTurnShare(point.turns) * context.ripple[i] }]
        : [],
    ),
    sentence: windowSentence(judged, run),
    plateau: plateauVerdict(
      judged.map(({ point, broken }) => ({ point, broken: broken.map((limit) => limit.name) })),
      context,
    ),
  }
}

interface Run {
  readonly from: number
  readonly to: number
}

/**
 * Points whose contact alone was bad are holes: a run may pass over them but not begin or end there, so one lost
 * contact amid good steps does not cut the curve in two.
 */
function widestRun(judged: readonly Judged[]): Run | undefined {
  let best: Run | undefined
  const width = (run: Run) => Math.log(judged[run.to].point.slidingSpeed / judged[run.from].point.slidingSpeed)
  let open: Run | undefined
  for (let i = 0; i < judged.length; i++) {
    const { broken, point } = judged[i]
    if (broken.length === 0 && point.friction !== null) {
      open = { from: open?.from ?? i, to: i }
      if (best === undefined || width(open) > width(best)) best = open
    } else if (!isHole(judged[i])) open = undefined
  }
  return best
}

const isHole = ({ broken }: Judged): boolean => broken.length > 0 && broken.every((limit) => limit.name === 'contact')

function limitOver(
  name: WindowLimitName,
  usual: 'low' | 'high',
  { judged, low, high }: { judged: readonly Judged[]; low: number | null; high: number | null },
): WindowLimit {
  const known = judged.flatMap(({ point, limits }) => {
    const limit = limits.find((one) => one.name === name)
    return limit === undefined ? [] : [{ speed: point.slidingSpeed, limit }]
  })
  const broken = known.filter(({ limit }) => !(limit.seen <= limit.limit))
  const worst = known.reduce<(typeof known)[number] | undefined>(
    (a, b) => (a === undefined || b.limit.seen / b.limit.limit > a.limit.seen / a.limit.limit ? b : a),
    undefined,
  )
  const above = broken.filter(({ speed }) => high !== null && speed > high)
  const end = broken.length > 0 && above.length === broken.length ? 'high' : broken.length > 0 ? 'low' : usual
  // A hole inside the window ends nothing.
  const outside = broken.filter(({ speed }) => low === null || high === null || speed < low || speed > high)
  const speed = outside.length === 0 ? null : end === 'low' ? low : high
  return {
    name,
    end,
    slidingSpeed: speed,
    seen: worst?.limit.seen ?? null,
    limit: worst?.limit.limit ?? null,
    unit: worst?.limit.unit ?? '',
    sentence: limitWords(name, { known: worst !== undefined, worst, broken: broken.length > 0, end, speed }),
  }
}

/** Speeds closer than this are one speed. */
const oneSpeed = 1.1

const speedWords = (speed: number): string => printQuantity(speed, 'velocity', { digits: 3 })

function windowSentence(judged: readonly Judged[], run: Run | undefined): string {
  if (judged.length === 0) return 'The record holds no point that slides, so there is nothing to believe.'
  if (run === undefined) {
    const names = [...new Set(judged.flatMap(({ broken }) => broken.map((limit) => limit.name)))]
    return `No point of this curve can be believed: ${names.map(nameWords).join(', ') || 'no friction could be had'}.`
  }
  const low = judged[run.from].point.slidingSpeed
  const high = judged[run.to].point.slidingSpeed
  const cut = (neighbour: Judged | undefined): string =>
    neighbour === undefined
      ? 'the end of the data'
      : neighbour.broken.map((limit) => nameWords(limit.name)).join(' and ') || 'a point without friction'
  if (high < low * oneSpeed) return `Only one speed, ${speedWords(low)}, can be believed.`
  const holes = judged.slice(run.from, run.to).filter(isHole)
  const except =
    holes.length === 0 ? '' : `, but not at ${holes.map(({ point }) => speedWords(point.slidingSpeed)).join(', ')}`
  return (
    `Believe this curve from ${speedWords(low)} (limited by ${cut(judged[run.from - 1])}) ` +
    `to ${speedWords(high)} (limited by ${cut(judged[run.to + 1])})${except}.`
  )
}
