// Long because the nine causes stand side by side in one order, each with its evidence and its test.
import { printQuantity } from '../../quantity/index.ts'
import type { LoopCauseFound, Reduction, Setup } from '../../terms/index.ts'
import { partialTurnShare } from '../remarks/underOneTurn.ts'
import type { PairSeen } from './pairSeen.ts'
import { explainedBy, fadingShape, relative, slopesOf } from './patterns.ts'

/** What the causes are judged from. */
interface Seen {
  readonly pairs: readonly PairSeen[]
  readonly reduction: Reduction
  readonly setup: Setup
  /** d ln µ/d ln v at the pairs. */
  readonly slopes: readonly number[]
  /** Mean relative difference, up less down. */
  readonly mean: number
}

/** Shares of the loop that a pattern explains, from which on a cause counts as fitting, or as not. Common practice, no source. */
const fits = { well: 0.8, partly: 0.4 } as const

/** A change of temperature or of the gap below these is none, K and m; a zero that drifts by more of the load is not believed. */
const least = { warming: 0.2, gap: 0.2e-6, drift: 0.1 } as const

const percent = (value: number): string => printQuantity(value, 'ratio', { digits: 2, unit: '%' })

/** All causes, those that fit best first. */
export function loopCausesOf(
  pairs: readonly PairSeen[],
  { reduction, setup }: { readonly reduction: Reduction; readonly setup: Setup },
): LoopCauseFound[] {
  const mean = pairs.reduce((sum, pair) => sum + relative(pair), 0) / pairs.length
  const seen = { pairs, reduction, setup, slopes: slopesOf(pairs), mean }
  const found = [
    runningIn(seen),
    heating(seen),
    thixotropy(seen),
    filmBuildUp(seen),
    starvation(seen),
    wear(seen),
    forceDrift(seen),
    partialTurns(seen),
    speedLag(seen),
  ]
  const heat = found.find(({ cause }) => cause === 'heating')
  const told = found.map((one) =>
    one.cause === 'thixotropy' && one.verdict === 'likely' && heat?.verdict === 'likely'
      ? {
          ...one,
          verdict: 'possible' as const,
          against: [...one.against, 'The warming that was read explains as much.'],
        }
      : one,
  )
  const order = ['likely', 'possible', 'cannotTell', 'unlikely']
  return told.sort(
    (a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict) || (b.explains ?? 0) - (a.explains ?? 0),
  )
}

/** By how much a pattern explains the loop, in words and as a verdict where nothing else speaks against it. */
function judged(share: number, against: readonly string[]): LoopCauseFound['verdict'] {
  if (against.length > 0 || share < fits.partly) return 'unlikely'
  return share >= fits.well ? 'likely' : 'possible'
}

const explains = (share: number, what: string): string => `${what} explains ${percent(share)} of the loop.`

function runningIn(seen: Seen): LoopCauseFound {
  const { shape, length } = fadingShape(seen.pairs)
  const { share, factor } = explainedBy(seen.pairs, shape)
  const up = seen.mean > 0
  const against = up ? [] : ['Friction was higher on the second way, and running-in lowers it.']
  const counted = factor > 0 ? share : 0
  return {
    cause: 'runningIn',
    verdict: judged(counted, against),
    explains: counted,
    for:
      counted >= fits.partly
        ? [explains(counted, `An excess that fades over ${printQuantity(length, 'length', { digits: 2 })} of sliding`)]
        : [],
    against: [...against, ...(counted < fits.partly ? ['Its pattern along the distance does not fit.'] : [])],
    test: 'Run the pair of sweeps again on the same surfaces: running-in is gone the second time.',
  }
}

function heating({ pairs, slopes, setup }: Seen): LoopCauseFound {
  const changes = pairs.map(
    ({ up, down }) => (down.point.temperature ?? Number.NaN) - (up.point.temperature ?? Number.NaN),
  )
  const test = 'Hold the temperature at the contact, or repeat with pauses between the steps: heat goes, wear stays.'
  if (changes.some(Number.isNaN)) {
    return {
      cause: 'heating',
      verdict: 'cannotTell',
      explains: null,
      for: [],
      against: [],
      test: `Record the temperature. ${test}`,
    }
  }
  const largest = changes.reduce((most, change) => (Math.abs(change) > Math.abs(most) ? change : most), 0)
  const wet = setup.liquid !== undefined
  const { share, factor } = explainedBy(
    pairs,
    changes.map((change, i) => (wet ? change * slopes[i] : change)),
  )
  const said = `Between the two visits of a speed the temperature changed by up to ${printQuantity(largest, 'temperatureDifference', { digits: 2 })}`
  if (Math.abs(largest) < least.warming) {
    return {
      cause: 'heating',
      verdict: 'unlikely',
      explains: 0,
      for: [],
      against: [`${said}, which is too little. Heat of the contact itself is not in that reading.`],
      test,
    }
  }
  // A warmer liquid is thinner: the curve moves to higher speeds, which the factor has to say with its sign.
  const sensible = !wet || factor > 0
  const counted = sensible ? share : 0
  const pattern = wet ? 'a viscosity that falls with it' : 'friction that changes with it'
  return {
    cause: 'heating',
    verdict: judged(counted, []),
    explains: counted,
    for: counted >= fits.partly ? [`${said}; ${explains(counted, pattern)}`] : [],
    against: counted < fits.partly ? [`${said}, but its pattern does not fit.`] : [],
    test,
  }
}

function thixotropy({ pairs, slopes, setup }: Seen): LoopCauseFound {
  const test =
    'Let the liquid rest at zero speed and sweep again: structure comes back, a worn or run-in surface does not. Or measure its viscosity up and down.'
  if (setup.liquid === undefined) {
    return {
      cause: 'thixotropy',
      verdict: 'unlikely',
      explains: null,
      for: [],
      against: ['The setup names no liquid.'],
      test,
    }
  }
  const { share, factor } = explainedBy(pairs, slopes)
  const thinner = factor > 0
  const counted = share
  const said = `A viscosity that ${thinner ? 'fell' : 'rose'} by ${percent(Math.abs(Math.expm1(-factor)))} in between`
  return {
    cause: 'thixotropy',
    verdict: thinner ? judged(counted, []) : judged(Math.min(counted, fits.well - 0.01), []),
    explains: counted,
    for: counted >= fits.partly ? [explains(counted, said)] : [],
    against: [
      ...(counted < fits.partly
        ? ['The differences do not go with the slope of the curve, as a change of viscosity would have it.']
        : []),
      ...(thinner || counted < fits.partly ? [] : ['It rose, which is evaporation or cooling rather than structure.']),
    ],
    test,
  }
}

/** 1 at the slowest speed, 0 from the middle of the range on. */
function slowShape(pairs: readonly PairSeen[]): number[] {
  const ln = pairs.map(({ speed }) => Math.log(speed))
  const [low, high] = [Math.min(...ln), Math.max(...ln)]
  return ln.map((value) => Math.max(0, 1 - (2 * (value - low)) / (high - low || 1)))
}

function filmBuildUp({ pairs }: Seen): LoopCauseFound {
  const { share, factor } = explainedBy(pairs, slowShape(pairs))
  const partly = share >= fits.partly
  return {
    cause: 'filmBuildUp',
    // A film that was laid down and running-in look alike from one pair of sweeps: possible is as far as it goes.
    verdict: judged(Math.min(share, fits.well - 0.01), []),
    explains: share,
    for: partly
      ? [explains(share, `Friction that is ${factor > 0 ? 'lower' : 'higher'} on the second way at the slow end alone`)]
      : [],
    against: partly ? [] : ['The differences are not those of the slow end.'],
    test: 'Wipe or rinse the track and sweep again: a film goes with it. Look at the track under the microscope.',
  }
}

function starvation({ pairs, slopes, setup }: Seen): LoopCauseFound {
  const test = 'Add liquid and repeat the fast speeds: a starved contact recovers at once.'
  if (setup.liquid === undefined) {
    return {
      cause: 'starvation',
      verdict: 'unlikely',
      explains: null,
      for: [],
      against: ['The setup names no liquid.'],
      test,
    }
  }
  const film = slopes.map((slope) => Math.max(0, slope))
  if (film.every((value) => value === 0)) {
    return {
      cause: 'starvation',
      verdict: 'unlikely',
      explains: 0,
      for: [],
      against: ['Friction rises nowhere with speed, so no film branch was reached.'],
      test,
    }
  }
  const fast = slowShape(pairs).map((value) => 1 - value)
  const { share, factor } = explainedBy(
    pairs,
    fast.map((value, i) => (film[i] > 0 ? value : 0)),
  )
  const starves = factor < 0
  const counted = starves ? share : 0
  return {
    cause: 'starvation',
    verdict: judged(Math.min(counted, fits.well - 0.01), []),
    explains: counted,
    for:
      counted >= fits.partly
        ? [explains(counted, 'Friction that is higher on the second way on the film branch alone')]
        : [],
    against: counted >= fits.partly ? [] : ['Friction on the film branch was not higher on the second way alone.'],
    test,
  }
}

function wear({ pairs }: Seen): LoopCauseFound {
  const test = 'Look at the scar, and measure the gap in a blank at the same temperature before and after.'
  const gaps = pairs.map(({ up, down }) => (down.point.gap ?? Number.NaN) - (up.point.gap ?? Number.NaN))
  if (gaps.some(Number.isNaN)) {
    return {
      cause: 'wear',
      verdict: 'cannotTell',
      explains: null,
      for: [],
      against: [],
      test: `Record the gap. ${test}`,
    }
  }
  const closed = -gaps.reduce((most, gap) => (Math.abs(gap) > Math.abs(most) ? gap : most), 0)
  const { share } = explainedBy(
    pairs,
    pairs.map(({ up, down }) => down.distance - up.distance),
  )
  const said = `The gap ${closed > 0 ? 'closed' : 'opened'} by ${printQuantity(Math.abs(closed), 'length', { digits: 2 })} between the two visits of a speed`
  if (!(closed > least.gap)) {
    return {
      cause: 'wear',
      verdict: 'unlikely',
      explains: share,
      for: [],
      against: [`${said}: nothing wore off that it could see.`],
      test,
    }
  }
  return {
    cause: 'wear',
    verdict: share >= fits.partly ? 'possible' : 'unlikely',
    explains: share,
    for: [`${said}; wear and growing warm both close it.`],
    against: share >= fits.partly ? [] : ['The differences do not grow with the distance in between.'],
    test,
  }
}

function forceDrift({ pairs, reduction }: Seen): LoopCauseFound {
  const test = 'Lift the fixture after the sweeps and read the axial force: the second zero tells.'
  const { forceZero } = reduction
  const times = pairs.map(({ up, down }) => down.time - up.time)
  const { share, factor } = explainedBy(pairs, times)
  const [force] = pairs.map(({ up }) => up.point.axialForce)
  const needed = `A zero of the axial force that drifts by ${printQuantity(Math.abs(factor * force * 3600), 'force', { digits: 2 })} an hour`
  if (forceZero.from === 'blankBeforeAndAfter') {
    const sentence = 'The zero was read before and after, and its drift is taken off.'
    return { cause: 'forceDrift', verdict: 'unlikely', explains: share, for: [], against: [sentence], test }
  }
  const partly = share >= fits.partly
  const drifted = Math.abs(factor) * Math.max(...times.map(Math.abs))
  const tooFar = drifted > least.drift ? [`${needed} would be needed, more than a sound rig drifts.`] : []
  return {
    cause: 'forceDrift',
    verdict: partly && tooFar.length === 0 ? 'possible' : 'unlikely',
    explains: share,
    for: partly ? [`${explains(share, needed)} There is no second zero that would exclude it.`] : [],
    against: [...tooFar, ...(partly ? [] : ['The differences do not grow with the time in between.'])],
    test,
  }
}

function partialTurns({ pairs, reduction }: Seen): LoopCauseFound {
  const partial = pairs.map(({ up, down }) => up.point.turns < 1 || down.point.turns < 1)
  const test = 'Repeat the slow speeds over whole turns, or begin each step at the same angle of the shaft.'
  if (!partial.includes(true)) {
    return {
      cause: 'partialTurns',
      verdict: 'unlikely',
      explains: 0,
      for: [],
      against: ['Every point holds a whole turn or more.'],
      test,
    }
  }
  const squares = pairs.map((pair) => relative(pair) ** 2)
  const total = squares.reduce((sum, value) => sum + value, 0)
  const share = squares.reduce((sum, value, i) => sum + (partial[i] ? value : 0), 0) / total
  const ripple = Math.max(0, ...reduction.ripple.map(({ friction }) => friction))
  const bounded = pairs.every((pair, i) => {
    const { up, down } = pair
    const bound = ripple * (partialTurnShare(up.point.turns) + partialTurnShare(down.point.turns))
    return !partial[i] || Math.abs(relative(pair)) <= Math.max(bound, 0)
  })
  const at = `${percent(share)} of the loop lies at speeds that hold less than one turn`
  return {
    cause: 'partialTurns',
    verdict: bounded && share >= fits.partly ? 'possible' : 'unlikely',
    explains: share,
    for: bounded && share >= fits.partly ? [`${at}, and is no larger than what the ripple can leave there.`] : [],
    against: bounded ? [] : [`${at}, but the ripple of ${percent(ripple)} is too small to leave such differences.`],
    test,
  }
}

function speedLag({ pairs, slopes, reduction }: Seen): LoopCauseFound {
  const lag = pairs.map(({ up, down }, i) => slopes[i] * Math.log(up.point.slidingSpeed / down.point.slidingSpeed))
  const largest = Math.max(...lag.map(Math.abs))
  const ramp = reduction.segmentation === 'ramp'
  const said = `The speeds of a pair differ by so little that friction changes by ${percent(largest)} at most`
  const { share } = explainedBy(pairs, ramp ? slopes : lag)
  return {
    cause: 'speedLag',
    verdict: ramp && share >= fits.partly ? 'possible' : 'unlikely',
    explains: ramp ? share : 0,
    for: ramp
      ? ['The speed was ramped, so friction lags behind it: up belongs to slower speeds, down to faster ones.']
      : [],
    against: ramp ? [] : [`${said}, and each speed was held.`],
    test: 'Hold each speed until friction is steady, or ramp at half the rate: a lag halves with it.',
  }
}
