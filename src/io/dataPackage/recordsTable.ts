import type { DataColumn } from './dataTable.ts'
import type { PackageRecord, PackageRecordVersion } from './packageContent.ts'

/** A record with its latest version and where its bytes lie. */
export interface ListedRecord {
  readonly record: PackageRecord
  readonly latest: PackageRecordVersion
  readonly size: number
  readonly path: string
}

const text = (name: string, about: string, cell: (row: ListedRecord) => string | null): DataColumn<ListedRecord> => ({
  name,
  type: 'text',
  unit: '',
  about,
  cell,
})

/** Columns of the list of records. Names and the words of people are texts that no spreadsheet runs. */
export const recordColumns: readonly DataColumn<ListedRecord>[] = [
  text('record', 'SHA-256 of the raw bytes.', ({ record }) => record.id),
  text('file', 'Name of the file as it came.', ({ latest }) => latest.name),
  text('path', 'Where its bytes lie in this package.', ({ path }) => path),
  { name: 'size', type: 'integer', unit: 'B', about: 'Bytes.', cell: ({ size }) => size },
  text('study', 'Id of the study.', ({ latest }) => latest.study),
  text('sample', 'Id of the sample.', ({ latest }) => latest.sample),
  { name: 'replicate', type: 'integer', unit: '', about: 'From 1.', cell: ({ latest }) => latest.replicate },
  text('mountedBy', 'Who mounted it.', ({ latest }) => latest.mountedBy),
  text('ballSet', 'Set of balls.', ({ latest }) => latest.ballSet),
  text('day', 'Day of the measurement.', ({ latest }) => latest.day),
  text('setup', 'SHA-256 of the setup.', ({ latest }) => latest.setup),
  text('added', 'When it was added, UTC.', ({ record }) => record.versions[0].change.at),
  text('addedBy', 'Who added it.', ({ record }) => record.versions[0].change.who),
]
