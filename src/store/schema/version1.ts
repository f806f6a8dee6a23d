import { type EngineKind, keepRows } from './keepRows.ts'
import type { Migration } from './migration.ts'

/** The first schema: identities, their versions, bytes by checksum, results with their origin, and the history of it all. */
export const version1: Migration = {
  version: 1,
  name: 'begin',
  statements: (engine) => [
    ...tables(engine).map((text) => text + (engine === 'sqlite' ? ' strict' : '')),
    'create index record_versions_study on record_versions (study)',
    'create index record_versions_sample on record_versions (sample)',
    'create index results_raw on results (raw, kind)',
    'create index history_subject on history (kind, id)',
    ...keepRows(engine, {
      migrations: ['version'],
      history: ['seq'],
      labs: ['id'],
      lab_versions: ['id', 'version'],
      studies: ['id'],
      study_versions: ['id', 'version'],
      samples: ['id'],
      sample_versions: ['id', 'version'],
      setups: ['sha256'],
      raw: ['sha256'],
      record_versions: ['raw', 'version'],
      results: ['id'],
      ...(engine === 'postgres' ? { raw_parts: ['sha256', 'part'] } : {}),
    }),
  ],
}

/** Without a collation of its own PostgreSQL would sort and compare by the server's language. */
export const textType = (engine: EngineKind): string => (engine === 'postgres' ? 'text collate "C"' : 'text')

function tables(engine: EngineKind): string[] {
  const text = textType(engine)
  const big = engine === 'postgres' ? 'bigint' : 'integer'
  const change = `change ${big} not null references history (seq)`
  const checksum = `${text} not null check (length(sha256) = 64)`
  return [
    `create table migrations (version integer primary key, name ${text} not null, at ${text} not null,
      who ${text} not null, program ${text} not null)`,
    `create table history (seq ${big} primary key, at ${text} not null, who ${text} not null,
      what ${text} not null check (what in ('created', 'corrected')), kind ${text} not null, id ${text} not null,
      version integer, why ${text} not null)`,
    ...['lab', 'study', 'sample'].flatMap((kind) => titledTables(kind, { text, change })),
    `create table setups (sha256 ${checksum} primary key, text ${text} not null, ${change})`,
    `create table raw (sha256 ${checksum} primary key, size ${big} not null check (size >= 0), ${change})`,
    `create table record_versions (raw ${text} not null references raw (sha256), ${versionColumns},
      name ${text} not null, study ${text} references studies (id), sample ${text} references samples (id),
      replicate integer check (replicate >= 1), mounted_by ${text}, ball_set ${text}, day ${text},
      setup ${text} references setups (sha256), ${change}, primary key (raw, version),
      foreign key (raw, supersedes) references record_versions (raw, version))`,
    `create table results (id ${text} primary key, kind ${text} not null, raw ${text} not null references raw (sha256),
      setup ${text} not null references setups (sha256), options ${text} not null, program ${text} not null,
      seed ${big} not null, text ${text} not null, sha256 ${checksum}, ${change},
      unique (kind, raw, setup, options, program, seed))`,
    `create table columns (raw ${text} not null references raw (sha256), reading ${text} not null,
      rows ${big} not null, program ${text} not null, parquet ${text} not null, pyramid ${text} not null,
      primary key (raw, reading))`,
    ...(engine === 'postgres' ? partTables(text) : []),
  ]
}

function titledTables(kind: string, { text, change }: { readonly text: string; readonly change: string }): string[] {
  const [identities, versions] = [kind === 'study' ? 'studies' : `${kind}s`, `${kind}_versions`]
  return [
    `create table ${identities} (id ${text} primary key, ${change})`,
    `create table ${versions} (id ${text} not null references ${identities} (id), ${versionColumns},
      title ${text} not null, note ${text} not null, facts ${text} not null, ${change}, primary key (id, version),
      foreign key (id, supersedes) references ${versions} (id, version))`,
  ]
}

/** Versions count from 1, and each names the one before it. A comparison with null would count as fulfilled, hence the zero. */
export const versionColumns = `version integer not null check (version >= 1),
  supersedes integer check (coalesce(supersedes, 0) = version - 1)`

const partTables = (text: string): string[] =>
  ['raw', 'column'].map(
    (what) => `create table ${what}_parts (sha256 ${text} not null, part integer not null, bytes bytea not null,
      primary key (sha256, part))`,
  )
