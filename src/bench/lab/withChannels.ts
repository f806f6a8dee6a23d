import { type Channels, done, type Outcome } from '../../core/terms/index.ts'
import { columnsToParquet, minMaxPyramid, parquetToChannels, pyramidToParquet } from '../../io/columns/index.ts'
import { type ReadOptions, readRecord, type SetupFile } from '../../io/index.ts'
import { canonicalJson, checksum, type KeptRecord, type KeptResult, type Lab } from '../../store/index.ts'
import { givenFromOrigin, readingWith } from '../given.ts'
import { rawSource } from './rawSource.ts'

/** What is to be read, and the result that it is read for: its origin says how it was read. */
export interface WantedChannels {
  readonly record: KeptRecord
  readonly result: KeptResult
  readonly setup: SetupFile
  /** False where its reader cannot wait until the columns are kept: that takes thrice as long as reading the table. */
  readonly keep?: false
}

/** Bytes above which the columns of a record are kept, since reading its table again would be felt. */
const longRecord = 1 << 22

/** Reads the channels of a kept record as its result read them, does something with them, and lets go of them. */
export async function withChannels<T>(
  lab: Lab,
  { record, result, setup, keep }: WantedChannels,
  act: (channels: Channels) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  const reading = readingWith(givenFromOrigin(result.origin.options).reading, setup.columns)
  if (record.size < longRecord) return fromTable(lab, { record, reading }, act)
  const key = checksum(canonicalJson([result.origin.program, reading]))
  const kept = await lab.columns.get(record.id, key)
  if (!kept.ok) return kept
  if (kept.value !== undefined) return act(await parquetToChannels(kept.value.parquet))
  return fromTable(lab, { record, reading }, async (channels) => {
    if (!lab.readOnly && keep !== false) {
      const made = await keepColumns(lab, channels, { raw: record.id, reading: key, program: result.origin.program })
      if (!made.ok) return made
    }
    return act(channels)
  })
}

async function fromTable<T>(
  lab: Lab,
  { record, reading }: { readonly record: KeptRecord; readonly reading: ReadOptions },
  act: (channels: Channels) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  const raw = await rawSource(lab, record)
  if (!raw.ok) return raw
  try {
    const read = await readRecord(raw.value.source, { ...reading, file: record.name })
    if (!read.ok) return read
    try {
      return await act(read.value.channels)
    } finally {
      read.value.close()
    }
  } finally {
    raw.value.dispose()
  }
}

/** Keeps columns and pyramid; they can be made again at any time, so a lab that has no room for them is no trouble. */
async function keepColumns(
  lab: Lab,
  channels: Channels,
  names: { readonly raw: string; readonly reading: string; readonly program: string },
): Promise<Outcome<null>> {
  const files = { parquet: columnsToParquet(channels), pyramid: pyramidToParquet(minMaxPyramid(channels)) }
  const kept = await lab.columns.put([{ ...names, rows: channels.rows, ...files }])
  return kept.ok || kept.problems.every(({ kind }) => spare.has(kind)) ? done(null) : kept
}

const spare = new Set(['diskFull', 'labBusy', 'labReadOnly'])
