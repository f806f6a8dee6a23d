import { curveThrough, speedGrid } from '../../../core/decide/index.ts'
import { summary } from '../../../core/stats/index.ts'
import {
  consistencySignificance,
  type RobustMean,
  type RoundConsistency,
  type RoundPrecision,
  robustDeviation,
  robustMean,
  roundConsistency,
  roundPrecision,
} from '../../../core/stats/judging/index.ts'
import {
  done,
  failed,
  type MetrePerSecond,
  type Outcome,
  type Problem,
  schemaVersion,
} from '../../../core/terms/index.ts'
import { type PaletteName, roundFigure } from '../../../figure/index.ts'
import { ReadWords } from '../readSpeed.ts'
import { type RoundCurve, roundCurves } from './roundTable.ts'

/** A round as it is asked for. */
export interface RoundArgs {
  /** Tables, or LABORATORY=result.json. */
  readonly words: readonly string[]
  readonly at: readonly string[]
  /** LABORATORY=reason: taken out by a person, and told. */
  readonly without: readonly string[]
}

/** One speed of a round. */
export interface RoundSpeed {
  readonly slidingSpeed: MetrePerSecond
  readonly precision: RoundPrecision
  readonly consistency: RoundConsistency
  /** Mean and deviation of the laboratories' means, and s_r, that far values hardly move (ISO 5725-5); null where cells are unlike. */
  readonly robust: { readonly means: RobustMean; readonly repeatability: number | null }
}

/** A round over its speeds. Laboratories are flagged, never removed, but by a person with a reason. */
export interface JudgedRound {
  readonly laboratories: readonly string[]
  readonly replicates: readonly number[]
  readonly speeds: readonly RoundSpeed[]
  readonly without: readonly { readonly laboratory: string; readonly why: string }[]
  readonly significance: number
}

/** Precision and consistency of a round of laboratories at the speeds that all curves have. */
export function judgeRound({ words, at, without }: RoundArgs): Outcome<JudgedRound> {
  const read = roundCurves(words)
  if (!read.ok) return read
  const out = without.map((word) => {
    const [, laboratory, why] = /^([^=]+)=(.+)$/.exec(word) ?? [undefined, word, '']
    return { laboratory: laboratory.trim(), why: why.trim() }
  })
  const faults = withoutFaults(out, read.value)
  if (faults.length > 0) return failed(...faults)
  const curves = read.value.filter(({ laboratory }) => !out.some((one) => one.laboratory === laboratory))
  const byLaboratory = Map.groupBy(curves, ({ laboratory }) => laboratory)
  const speeds = speedsOf(curves, at)
  if (!speeds.ok) return speeds
  const groups = [...byLaboratory.values()]
  if (groups.length < 2 || !groups.some((group) => group.length >= 2)) return failed(tooFew(groups.length))
  return done({
    laboratories: [...byLaboratory.keys()],
    replicates: groups.map((group) => group.length),
    speeds: speeds.value.map((slidingSpeed) => {
      const cells = groups.map((group) =>
        group.map(({ points }) => Math.exp(curveThrough(points).lnFriction(slidingSpeed))),
      )
      return {
        slidingSpeed,
        precision: roundPrecision(cells),
        consistency: roundConsistency(cells),
        robust: robustOf(cells),
      }
    }),
    without: out,
    significance: consistencySignificance,
  })
}

function robustOf(cells: readonly (readonly number[])[]): RoundSpeed['robust'] {
  const sizes = new Set(cells.map((cell) => cell.length))
  const [size] = sizes
  const alike = sizes.size === 1 && size >= 2
  const deviations = alike ? cells.map((cell) => summary(cell).standardDeviation) : []
  return {
    means: robustMean(cells.map((cell) => summary(cell).mean)),
    repeatability: alike ? robustDeviation(deviations, size - 1) : null,
  }
}

function speedsOf(curves: readonly RoundCurve[], at: readonly string[]): Outcome<readonly number[]> {
  const usable = curves.filter(({ points }) => points.length > 0).map(({ points }) => curveThrough(points))
  const slowest = Math.max(...usable.map((curve) => curve.slowest))
  const fastest = Math.min(...usable.map((curve) => curve.fastest))
  if (usable.length < curves.length || !(fastest * 1.02 >= slowest)) return failed(nothingShared)
  const read = new ReadWords()
  const wanted = at.flatMap((text) => read.speed('at', text) ?? [])
  for (const [i, speed] of wanted.entries()) {
    if (speed >= slowest / 1.02 && speed <= fastest * 1.02) continue
    read.refuse('at', at[i], { what: 'Not every curve has this speed.', mend: 'Name a speed that all of them have.' })
  }
  if (read.problems.length > 0) return failed(...read.problems)
  if (wanted.length > 0) return done(wanted.toSorted((a, b) => a - b))
  return done(stepsOf(curves, { slowest, fastest }))
}

/** The steps of the first curve where all curves have them, few enough to be read; otherwise a grid. */
function stepsOf(
  curves: readonly RoundCurve[],
  { slowest, fastest }: { slowest: number; fastest: number },
): readonly number[] {
  const near = (a: number, b: number): boolean => a / b < 1.02 && b / a < 1.02
  const first = curves[0].points.map(({ slidingSpeed }) => slidingSpeed)
  const shared = [...new Set(first)].filter((speed) =>
    curves.every(({ points }) => points.some(({ slidingSpeed }) => near(slidingSpeed, speed))),
  )
  if (shared.length >= 1 && shared.length <= 12) return shared.toSorted((a, b) => a - b)
  const grid = speedGrid(slowest, fastest)
  const stride = Math.max(1, Math.ceil(grid.length / 9))
  return grid.filter((_, i) => i % stride === 0)
}

function withoutFaults(
  out: readonly { readonly laboratory: string; readonly why: string }[],
  curves: readonly RoundCurve[],
): readonly Problem[] {
  return out.flatMap(({ laboratory, why }) => {
    const place = { name: '--without', cell: laboratory }
    if (!curves.some((curve) => curve.laboratory === laboratory)) {
      const names = [...new Set(curves.map((curve) => curve.laboratory))].join(', ')
      return [
        {
          kind: 'laboratoryUnknown',
          class: 'wrongUse',
          place,
          what: 'No laboratory is called so.',
          mend: `They are ${names}.`,
        },
      ]
    }
    if (why !== '') return []
    return [
      {
        kind: 'reasonWanted',
        class: 'wrongUse',
        place,
        what: 'A laboratory is taken out for a reason.',
        mend: `Write --without "${laboratory}=REASON".`,
      },
    ]
  })
}

const tooFew = (laboratories: number): Problem => ({
  kind: 'roundTooSmall',
  class: 'badInput',
  place: {},
  what: `A round needs two laboratories and one with two results; there are ${laboratories}.`,
  mend: 'Add the results of other laboratories.',
})

const nothingShared: Problem = {
  kind: 'nothingShared',
  class: 'badInput',
  place: {},
  what: 'The curves have no speed in common.',
  mend: 'Leave out the one that covers other speeds.',
}

/** The same for machines. */
export const roundText = (round: JudgedRound): string => `${JSON.stringify({ schemaVersion, ...round }, null, 2)}\n`

/** h and k of the laboratories, and the precision over the speeds. */
export function drawRound({ laboratories, replicates, speeds, without }: JudgedRound, palette: PaletteName): string {
  const most = Math.max(...replicates)
  const first = speeds[0].consistency.laboratories
  const usual = first.find(({ count }) => count === most)
  return roundFigure(
    {
      title: `Round of ${laboratories.length} laboratories`,
      caption: `${most} ${most === 1 ? 'result' : 'results'} each at most, ${speeds.length} speeds from slow to fast; critical values at 0.5 %`,
      laboratories,
      levels: speeds.map(({ slidingSpeed, precision, consistency }) => ({
        slidingSpeed,
        repeatability: precision.repeatability / precision.mean,
        reproducibility: precision.reproducibility / precision.mean,
        marks: consistency.laboratories.map(({ h, k }) => ({ h, k })),
      })),
      hCritical: first[0].hCritical,
      kCritical: usual?.kCritical ?? null,
      note: without.map(({ laboratory, why }) => `Without ${laboratory}: ${why}.`).join(' '),
    },
    { palette },
  )
}
