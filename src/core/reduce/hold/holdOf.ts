import type { Channels, Hold, HoldLife, Outcome, Point, Reduction, Setup } from '../../terms/index.ts'
import { done, failed, holdLaws } from '../../terms/index.ts'
import { type FittedLaw, fitHoldLaw, lawAtBlocks, simplestAmong } from './holdLaws.ts'
import { holdQuantities, steadyFrom } from './holdQuantities.ts'
import { holdRemarks } from './holdRemarks.ts'
import { humpOf } from './humpOf.ts'
import { earlyExcess, type LateThird, lateThird, runInVerdict, trendOf } from './lateThird.ts'
import { lifeOf } from './lifeOf.ts'
import { blocksUpTo, fewestBlocks, type SlidingBlocks, slidingBlocks } from './slidingBlocks.ts'

/** What may be chosen about a hold. */
export interface HoldOptions {
  /** Largest change over the last third that does not matter, as a share of friction. */
  readonly margin: number
  /** Friction counts as steady within this share of its steady value. */
  readonly steadyShare: number
  /** Friction whose passing ends the life of a coating; null for none. */
  readonly threshold: number | null
  /** Sliding distance at the head that is left out, m. */
  readonly skip: number
  readonly blocks: number
}

/** Common practice, no source; the margin is the usual smallest difference of interest. */
export const holdDefaults: HoldOptions = { margin: 0.05, steadyShare: 0.02, threshold: null, skip: 0, blocks: 240 }

/** Speeds of neighbouring steps within this share count as one hold. */
const oneSpeed = 0.02

/** Friction of the longest stretch at one speed, over the distance slid: law, steady value, drift, life. */
export function holdOf(
  record: { readonly channels: Channels; readonly setup: Setup; readonly reduction: Reduction },
  options: HoldOptions = holdDefaults,
): Outcome<Hold> {
  const cut = { blocks: options.blocks, tolerance: oneSpeed, skip: options.skip }
  const blocks = slidingBlocks(record, cut)
  if (blocks === undefined) return failed(tooShort)
  const closer = (from: number, to: number) => slidingBlocks(record, { ...cut, within: [from, to] })
  const ended = options.threshold === null ? null : lifeOf(blocks, options.threshold, closer)
  const sound = ended?.onset == null ? blocks : (blocksUpTo(blocks, ended.onset) ?? blocks)
  const fitted = holdLaws.flatMap((law) =>
    law === 'failure' && sound !== blocks ? [] : (fitHoldLaw(law, sound) ?? []),
  )
  const third = lateThird(sound)
  if (fitted.length === 0 || third === undefined) return failed(tooShort)
  const best = simplestAmong(fitted)
  const choices = weighed(fitted)
  return done(holdFrom({ blocks, sound, best, life: ended?.life ?? null, third, options, choices }, record))
}

interface Found {
  readonly blocks: SlidingBlocks
  /** Those before a coating began to fail; all where none did. */
  readonly sound: SlidingBlocks
  readonly life: HoldLife | null
  readonly best: FittedLaw
  readonly third: LateThird
  readonly options: HoldOptions
  readonly choices: readonly { fitted: FittedLaw; delta: number; weight: number }[]
}

function holdFrom(
  { blocks, sound, best, life, third, options, choices }: Found,
  record: { reduction: Reduction },
): Hold {
  const { distance, time, friction } = blocks
  const last = distance.length - 1
  const hold = {
    steps: blocks.steps,
    slidingSpeed: blocks.slidingSpeed,
    axialForce: meanOf(blocks.axialForce),
    from: distance[0],
    to: distance[last],
    duration: time[last] - time[0],
    turns: blocks.turns,
    blocks: Array.from(distance, (s, i) => ({ distance: s, time: time[i], friction: friction[i] })),
    rowsPerBlock: blocks.rowsPerBlock,
    noiseCorrelation: best.fit.noise.correlation,
    noiseDeviation: best.fit.deviation,
    law: best.law,
    choices: choices.map(({ fitted, delta, weight }) => ({ law: fitted.law, delta, weight })),
    quantities: holdQuantities(best),
    fitted: [...lawAtBlocks(best)],
    late: third.mean,
    shared: sharedAt(record.reduction.points, blocks.steps, third.mean.value),
    steadyFrom: steadyFrom(best, sound, options.steadyShare),
    steadyShare: options.steadyShare,
    runIn: runInVerdict(third, options.margin),
    early: earlyExcess(sound, best.fit),
    hump: humpOf(sound, best.fit),
    life,
    gapCreep: blocks.gap === null ? null : (trendOf(sound.gap ?? blocks.gap, sound) ?? null),
  }
  return { ...hold, remarks: holdRemarks(hold) }
}

function weighed(fitted: readonly FittedLaw[]): { fitted: FittedLaw; delta: number; weight: number }[] {
  const least = Math.min(...fitted.map(({ aicc }) => aicc))
  const total = fitted.reduce((sum, { aicc }) => sum + Math.exp((least - aicc) / 2), 0)
  return [...fitted]
    .sort((a, b) => a.aicc - b.aicc)
    .map((one) => ({ fitted: one, delta: one.aicc - least, weight: Math.exp((least - one.aicc) / 2) / total }))
}

/** Shared parts of the last point of the hold, in units of the late friction. */
function sharedAt(points: readonly Point[], steps: readonly number[], friction: number): Hold['shared'] {
  const point = points.findLast(({ step, friction: value }) => steps.includes(step) && value !== null && value !== 0)
  if (point === undefined || point.friction === null) return {}
  const scale = friction / point.friction
  return Object.fromEntries(Object.entries(point.shared).map(([source, size]) => [source, Math.abs(size * scale)]))
}

const meanOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length

const tooShort = {
  kind: 'holdTooShort',
  class: 'badInput',
  place: {},
  what: `No stretch of sliding at one speed is long enough: ${fewestBlocks} rows are needed.`,
  mend: 'Give a record that holds one speed for a while.',
} as const
