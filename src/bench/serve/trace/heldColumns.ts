import {
  type ChannelName,
  type Channels,
  channelsInMemory,
  done,
  failed,
  type Outcome,
  type Outside,
} from '../../../core/terms/index.ts'
import type { KeptRecord, KeptResult } from '../../../store/index.ts'
import { currentResult } from '../../lab/currentResult.ts'
import { inLab } from '../../lab/inLab.ts'
import type { LabCall } from '../../lab/labCall.ts'
import { readKept } from '../../lab/readKept.ts'
import { withChannels } from '../../lab/withChannels.ts'
import { notReduced } from '../heldLab.ts'
import { type Envelope, envelopeOf } from './envelope.ts'

/** The columns of a record in memory that threads share, with what quick pictures need. */
export interface HeldColumns {
  readonly record: string
  /** Id of the result that says how the table was read. */
  readonly result: string
  readonly rows: number
  readonly time: Float64Array
  readonly channels: Readonly<Partial<Record<ChannelName, Envelope>>>
  readonly bytes: number
}

/** Reads the columns of a kept record as the result that counts read them. */
export const holdColumns = (id: string, call: LabCall, outside: Outside): Promise<Outcome<HeldColumns>> =>
  inLab(call, outside, async (lab): Promise<Outcome<HeldColumns>> => {
    const record = await lab.records.get(id)
    if (!record.ok) return record
    const result = await currentResult(lab, record.value)
    if (!result.ok) return result
    if (result.value === undefined) return failed(notReduced(record.value))
    const kept = await readKept(lab, result.value)
    if (!kept.ok) return kept
    const wanted = { record: record.value, result: result.value, setup: kept.value.setup, keep: false } as const
    return withChannels(lab, wanted, async (channels) => done(heldColumns(channels, record.value, wanted.result)))
  })

function heldColumns(channels: Channels, record: KeptRecord, result: KeptResult): HeldColumns {
  let bytes = 0
  const room = (length: number): Float64Array => {
    bytes += 8 * length
    return new Float64Array(new SharedArrayBuffer(8 * length))
  }
  const copy = (name: ChannelName): Float64Array => {
    const column = room(channels.rows)
    for (let from = 0; from < channels.rows; from += pieceRows) {
      column.set(channels.read(name, from, Math.min(channels.rows, from + pieceRows)), from)
    }
    return column
  }
  const held: Partial<Record<ChannelName, Envelope>> = {}
  for (const name of channels.names) if (name !== 'time') held[name] = envelopeOf(copy(name), room)
  const time = channels.names.includes('time') ? copy('time') : room(0)
  return { record: record.id, result: result.id, rows: channels.rows, time, channels: held, bytes }
}

/** As much of a long record as is copied in one go. */
const pieceRows = 1 << 16

/** The held columns as the reduction takes them. */
export function channelsHeld({ time, channels }: HeldColumns): Channels {
  const columns: Partial<Record<ChannelName, Float64Array>> = { time }
  for (const [name, envelope] of Object.entries(channels)) columns[name as ChannelName] = envelope.values // keys are channels
  return channelsInMemory(columns)
}
