import type { Outcome } from '../../core/terms/index.ts'
import { type RawRecord, readRecord, type SetupFile } from '../../io/index.ts'
import type { KeptRecord, KeptResult, Lab } from '../../store/index.ts'
import { givenFromOrigin, readingWith } from '../given.ts'
import { rawSource } from './rawSource.ts'

interface Wanted {
  readonly record: KeptRecord
  /** The result that it is read for: its origin says how it was read. */
  readonly result: KeptResult
  readonly setup: SetupFile
}

/** Reads a kept record as its result read it, does something with it, and lets go of it. */
export async function withRecord<T>(
  lab: Lab,
  { record, result, setup }: Wanted,
  act: (raw: RawRecord) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  const raw = await rawSource(lab, record)
  if (!raw.ok) return raw
  try {
    const reading = readingWith(givenFromOrigin(result.origin.options).reading, setup.columns)
    const read = await readRecord(raw.value.source, { ...reading, file: record.name })
    if (!read.ok) return read
    try {
      return await act(read.value)
    } finally {
      read.value.close()
    }
  } finally {
    raw.value.dispose()
  }
}
