import {
  type RecordTurnMap,
  type ReducedChannels,
  recordStretches,
  recordTurnMap,
  type StepSeries,
  stepMemory,
  stepSeries,
  type TurnQuantity,
} from '../../../core/reduce/index.ts'
import {
  done,
  failed,
  type Outcome,
  type Outside,
  type Point,
  type Problem,
  type RecordStretch,
} from '../../../core/terms/index.ts'
import { inLab } from '../../lab/inLab.ts'
import type { LabCall } from '../../lab/labCall.ts'
import { readKept } from '../../lab/readKept.ts'
import type { ReducedRecord } from '../../reducedRecord.ts'
import { channelsHeld, type HeldColumns } from '../trace/heldColumns.ts'

/** Works out a picture of a record from its held columns and the result by which they are held. */
export async function withReduced<T>(
  held: HeldColumns,
  { call, outside }: DetailDesk,
  act: (reduced: ReducedChannels, kept: ReducedRecord) => Outcome<T>,
): Promise<Outcome<T>> {
  return inLab(call, outside, async (lab): Promise<Outcome<T>> => {
    const result = await lab.results.get(held.result)
    if (!result.ok) return result
    const kept = await readKept(lab, result.value)
    if (!kept.ok) return kept
    const { reduced } = kept.value
    const { setup, reduction } = reduced
    return act({ channels: channelsHeld(held), setup, reduction }, reduced)
  })
}

/** What working out a picture takes. */
export interface DetailDesk {
  readonly call: LabCall
  readonly outside: Outside
}

/** What became of every stretch of a record. */
export const stretchesOf = (held: HeldColumns, desk: DetailDesk): Promise<Outcome<readonly RecordStretch[]>> =>
  withReduced(held, desk, ({ channels, setup, reduction }) => done(recordStretches(channels, setup, reduction)))

/** The turn map of a record. */
export const turnsOf = (held: HeldColumns, quantity: TurnQuantity, desk: DetailDesk): Promise<Outcome<RecordTurnMap>> =>
  withReduced(held, desk, (reduced) =>
    quantity === 'gap' && held.channels.gap === undefined ? failed(noGap) : done(recordTurnMap(reduced, quantity)),
  )

/** One step looked at closely. */
export interface StepDetail {
  readonly series: StepSeries
  readonly point: Point
  readonly memory: ReturnType<typeof stepMemory>
  /** Time from one row to the next, s. */
  readonly interval: number
}

/** Lags of the autocorrelation that are shown. */
const mostLags = 200

/** The step of this number. */
export const stepDetail = (held: HeldColumns, number: number, desk: DetailDesk): Promise<Outcome<StepDetail>> =>
  withReduced(held, desk, (reduced) => {
    const { steps, points, sampleInterval } = reduced.reduction
    const point = points.find(({ step }) => step === number)
    const step = steps.find(({ from }) => from === point?.rows.from)
    if (point === undefined || step === undefined) return failed(noStep(number))
    const series = stepSeries(reduced, step)
    return done({ series, point, memory: stepMemory(series, point, mostLags), interval: sampleInterval })
  })

const noStep = (number: number): Problem => ({
  kind: 'notThere',
  class: 'wrongUse',
  place: { name: 'step', cell: String(number) },
  what: `The record has no step ${number} that slides.`,
  mend: 'Name a step of its result.',
})

/** Why nothing can be said of the gap. */
export const noGap: Problem = {
  kind: 'notThere',
  class: 'wrongUse',
  place: { name: 'quantity', cell: 'gap' },
  what: 'The record has no gap.',
  mend: 'Ask for friction, its swing or the axial force.',
}
