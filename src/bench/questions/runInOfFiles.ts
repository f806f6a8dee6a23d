import { holdDefaults, holdOf, sweepsRunIn } from '../../core/reduce/questions/index.ts'
import {
  type Channels,
  channelsInMemory,
  done,
  failed,
  type Outcome,
  type Outside,
  type RunInVerdict,
  type SweepsRunIn,
  schemaVersion,
} from '../../core/terms/index.ts'
import { type PaletteName, runInFigure } from '../../figure/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import { lookAtFile } from '../reduceFile.ts'
import { forEachFile, headOf, type ManyFilesArgs, textOf } from './answered.ts'

/** Is it run in: by the last third of a hold, or from sweep to sweep. */
export interface RunInOfFiles {
  readonly records: readonly ReducedRecord[]
  readonly hold: RunInVerdict | null
  readonly sweeps: SweepsRunIn | null
  readonly verdict: RunInVerdict['verdict']
  readonly sentence: string
}

/** What a file gives: its times stay, for the places of its sweeps. */
interface Swept {
  readonly reduced: ReducedRecord
  readonly channels: Channels
  readonly hold: RunInVerdict | null
}

/** Speeds over the record within this share count as one speed held. */
const oneSpeed = 1.1

/** Reads records in the order in which they were measured and asks whether another sweep would change the answer. */
export async function runInOfFiles(
  args: ManyFilesArgs & { readonly margin: number },
  outside: Outside,
): Promise<Outcome<RunInOfFiles>> {
  const found = await forEachFile(args, outside, (one) =>
    lookAtFile(one, outside, (channels, reduced): Outcome<Swept> => {
      const time = channels.read('time', 0, channels.rows).slice()
      return done({ reduced, channels: channelsInMemory({ time }), hold: heldRunIn(channels, reduced, args.margin) })
    }),
  )
  if (!found.ok) return found
  const records = found.value.map(({ reduced }) => reduced)
  const last = found.value[found.value.length - 1]?.hold ?? null
  if (last !== null && found.value.length === 1) {
    return done({ records, hold: last, sweeps: null, verdict: last.verdict, sentence: last.sentence })
  }
  const sweeps = sweepsRunIn(
    found.value.map(({ reduced, channels }) => ({ name: reduced.file, channels, reduction: reduced.reduction })),
    args.margin,
  )
  if (!sweeps.ok) return failed(...sweeps.problems)
  const { verdict, sentence } = sweeps.value
  return done({ records, hold: null, sweeps: sweeps.value, verdict, sentence })
}

/** The rule for a hold, where the record is one. */
function heldRunIn(channels: Channels, { setup, reduction }: ReducedRecord, margin: number): RunInVerdict | null {
  const speeds = reduction.points.map(({ slidingSpeed }) => slidingSpeed)
  if (speeds.length === 0 || !(Math.max(...speeds) <= oneSpeed * Math.min(...speeds))) return null
  const hold = holdOf({ channels, setup, reduction }, { ...holdDefaults, margin })
  return hold.ok ? hold.value.runIn : null
}

/** For machines; SI throughout. Fields: docs/verbs/run-in.md. */
export const runInText = ({ records, hold, sweeps, verdict, sentence }: RunInOfFiles): string =>
  textOf({ schemaVersion, records: records.map(headOf), verdict, sentence, hold, sweeps })

/** The change from sweep to sweep, or friction over the distance of a hold: the picture as SVG text. */
export const drawRunIn = (found: RunInOfFiles, palette: PaletteName): string =>
  runInFigure(
    {
      title: `Run-in: ${found.records.map(({ file }) => file).join(', ')}`,
      changes: found.sweeps?.changes ?? (found.hold === null ? [] : [heldAsChange(found.hold)]),
      margin: found.sweeps?.margin ?? found.hold?.margin ?? Number.NaN,
      sentence: found.sentence,
    },
    { palette },
  )

const heldAsChange = ({ change }: RunInVerdict) => ({
  from: 'last third',
  to: 'the end',
  mean: change,
  largest: change,
})
