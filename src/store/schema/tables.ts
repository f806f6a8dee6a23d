import type { Kysely, Transaction } from 'kysely'

// Rows as the databases hold them. What leaves the room are plain values made from these.

interface HistoryRow {
  seq: number
  at: string
  who: string
  what: 'created' | 'corrected'
  kind: string
  id: string
  version: number | null
  why: string
}

interface IdentityRow {
  id: string
  change: number
}

/** A lab, a study or a sample as it was known from one change to the next. */
export interface TitledRow {
  id: string
  version: number
  supersedes: number | null
  title: string
  note: string
  /** JSON object. */
  facts: string
  change: number
}

export interface RecordRow {
  raw: string
  version: number
  supersedes: number | null
  name: string
  study: string | null
  sample: string | null
  replicate: number | null
  mounted_by: string | null
  ball_set: string | null
  day: string | null
  setup: string | null
  change: number
}

export interface ResultRow {
  id: string
  kind: string
  raw: string
  setup: string
  /** JSON object, canonical. */
  options: string
  program: string
  seed: number
  text: string
  sha256: string
  change: number
}

interface ColumnsRow {
  raw: string
  reading: string
  rows: number
  program: string
  parquet: string
  pyramid: string
}

/** One version of a JSON document about a study, a record or the lab. */
export interface PaperRow {
  subject: string
  subject_id: string
  kind: string
  name: string
  version: number
  supersedes: number | null
  /** JSON, canonical. */
  content: string
  sha256: string
  change: number
}

interface PartRow {
  sha256: string
  part: number
  bytes: Uint8Array
}

export interface Tables {
  migrations: { version: number; name: string; at: string; who: string; program: string }
  history: HistoryRow
  labs: IdentityRow
  lab_versions: TitledRow
  studies: IdentityRow
  study_versions: TitledRow
  samples: IdentityRow
  sample_versions: TitledRow
  setups: { sha256: string; text: string; change: number }
  raw: { sha256: string; size: number; change: number }
  record_versions: RecordRow
  results: ResultRow
  paper_versions: PaperRow
  columns: ColumnsRow
  /** PostgreSQL only; a folder lab keeps bytes in files. */
  raw_parts: PartRow
  column_parts: PartRow
}

export type Reading = Kysely<Tables>

/** A transaction in which the lab may be changed. There is one at a time, whatever the number of processes. */
export type Writing = Transaction<Tables>

/**
 * What was kept and may never change, in the order in which rows may be put in, each with the column that orders its rows and
 * the version of the schema that brought it.
 */
export const keptTables = [
  ['migrations', 'version', 1],
  ['history', 'seq', 1],
  ['labs', 'change', 1],
  ['lab_versions', 'change', 1],
  ['studies', 'change', 1],
  ['study_versions', 'change', 1],
  ['samples', 'change', 1],
  ['sample_versions', 'change', 1],
  ['setups', 'change', 1],
  ['raw', 'change', 1],
  ['record_versions', 'change', 1],
  ['results', 'change', 1],
  ['paper_versions', 'change', 2],
] as const satisfies readonly (readonly [keyof Tables, string, number])[]
