import { type CoverageMark, coverRun } from './coverRun.ts'
import { coverMaster, masterGroups } from './master/coverMaster.ts'
import { breakawayGroups, coverBreakaway } from './questions/coverBreakaway.ts'
import { coverHold, holdGroups } from './questions/coverHold.ts'
import { coverLoop, loopGroups } from './questions/coverLoop.ts'
import { coverLives, coverSeries, livesGroups, seriesGroups } from './questions/coverSeries.ts'
import { coverStickSlip, stickSlipGroups } from './stickSlip/coverStickSlip.ts'
import { coverTurnMap, turnMapGroups } from './turnMap/coverTurnMap.ts'
import { coverWear, wearGroups } from './wear/coverWear.ts'

/** One study of coverage: what it is called, the rows of its table in order, and one draw of it. */
export interface CoverageKind {
  readonly groups: readonly string[]
  /** The same seed and index give the same marks. */
  readonly cover: (seed: number, index: number) => CoverageMark[]
}

/** What can be asked for with `kufe coverage --of`. */
export const coverageKinds = {
  curves: {
    groups: [
      'points',
      'points of a whole turn or more',
      'points of less than a turn',
      'fitted curve',
      'boundary level',
      'speed of the minimum',
      'friction at the minimum',
      'speed where mixed friction begins',
      'speed where film friction begins',
    ],
    cover: coverRun,
  },
  'stick-slip': { groups: stickSlipGroups, cover: coverStickSlip },
  wear: { groups: wearGroups, cover: coverWear },
  'turn-map': { groups: turnMapGroups, cover: coverTurnMap },
  master: { groups: masterGroups, cover: coverMaster },
  breakaway: { groups: breakawayGroups, cover: coverBreakaway },
  hold: { groups: holdGroups, cover: coverHold },
  loop: { groups: loopGroups, cover: coverLoop },
  series: { groups: seriesGroups, cover: coverSeries },
  lives: { groups: livesGroups, cover: coverLives },
} as const satisfies Readonly<Record<string, CoverageKind>>

/** Name of one study. */
export type CoverageKindName = keyof typeof coverageKinds

/** The study of that name. */
export const coverageKind = (name: CoverageKindName): CoverageKind => coverageKinds[name]
