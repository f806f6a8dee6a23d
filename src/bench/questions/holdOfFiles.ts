import { type HoldOptions, holdOf } from '../../core/reduce/questions/index.ts'
import { type ProfileInterval, weibullFit } from '../../core/stats/judging/index.ts'
import { done, type Hold, type Outcome, type Outside, schemaVersion } from '../../core/terms/index.ts'
import { holdFigure, type PaletteName } from '../../figure/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { lookAtFile } from '../reduceFile.ts'
import { forEachFile, headOf, type ManyFilesArgs, textOf } from './answered.ts'

/** A record that holds one speed. */
export interface HoldOfFile {
  readonly reduced: ReducedRecord
  readonly hold: Hold
}

/** Lives of several records together: a Weibull law, those that did not fail counted as longer. */
export interface Lives {
  readonly failures: number
  readonly censored: number
  /** null where fewer than two different lives ended. */
  readonly weibull: {
    readonly shape: ProfileInterval
    readonly scale: ProfileInterval
    /** Lives by which a tenth and a half have failed, m. */
    readonly quantiles: readonly { readonly share: number; readonly life: ProfileInterval }[]
  } | null
}

/** Holds of all files, and their lives where a threshold was named. */
export interface HoldsOfFiles {
  readonly holds: readonly HoldOfFile[]
  readonly lives: Lives | null
}

/** Reads records that hold one speed, each with its law; with a threshold their lives together. */
export async function holdOfFiles(
  args: ManyFilesArgs & { readonly hold: HoldOptions },
  outside: Outside,
): Promise<Outcome<HoldsOfFiles>> {
  const holds = await forEachFile(args, outside, (one) =>
    lookAtFile(one, outside, (channels, reduced): Outcome<HoldOfFile> => {
      const { setup, reduction } = reduced
      const hold = holdOf({ channels, setup, reduction }, args.hold)
      return hold.ok ? done({ reduced, hold: hold.value }) : hold
    }),
  )
  if (!holds.ok) return holds
  return done({ holds: holds.value, lives: args.hold.threshold === null ? null : livesOf(holds.value) })
}

function livesOf(holds: readonly HoldOfFile[]): Lives {
  const lives = holds.flatMap(({ hold: { life } }) =>
    life === null ? [] : [{ at: life.distance?.value ?? life.watched, failed: life.distance !== null }],
  )
  const failures = lives.filter(({ failed }) => failed).length
  const fit = weibullFit(lives.filter(({ at }) => at > 0))
  return {
    failures,
    censored: lives.length - failures,
    weibull:
      fit === undefined
        ? null
        : {
            shape: fit.shape,
            scale: fit.scale,
            quantiles: [0.1, 0.5].map((share) => ({ share, life: fit.quantile(share) })),
          },
  }
}

/** For machines; SI throughout. Fields: docs/verbs/hold.md. */
export const holdText = ({ holds, lives }: HoldsOfFiles): string =>
  textOf({ schemaVersion, records: holds.map(({ reduced, hold }) => ({ ...headOf(reduced), hold })), lives })

/** The picture of one hold as SVG text. */
export const drawHold = ({ reduced, hold }: HoldOfFile, palette: PaletteName): string =>
  holdFigure(
    {
      title: `Hold: ${reduced.setup.run.sample ?? reduced.file}`,
      caption: hold.runIn.sentence,
      note: reduced.setup.run.note,
      hold,
    },
    { palette },
  )
