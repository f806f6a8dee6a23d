import type { Point, Sha256 } from '../../core/terms/index.ts'
import { plainExtension, plainName, stemOf } from './fileNames.ts'
import type { LabPaths } from './labDocument.ts'
import type { BesideRecord, PackageDocument, PackageRecord, PackageResult, PackageSetup } from './packageContent.ts'
import { type NewFile, utf8 } from './packageFile.ts'
import { pointColumns } from './pointColumns.ts'
import { pointsCsv, pointsJson, pointsParquet } from './pointTables.ts'
import { tableSchema } from './tableSchema.ts'

const latestName = ({ versions }: PackageRecord): string => versions[versions.length - 1].name

/** Folder of a record: what it is called for people, and digits of its checksum for certainty. */
export const folderOf = (record: PackageRecord, short: (id: Sha256) => string): string =>
  `records/${plainName(stemOf(latestName(record)))}-${short(record.id)}`

export const rawName = (record: PackageRecord): string => `raw.${plainExtension(latestName(record))}`

const mediaTypes: Readonly<Record<string, string>> = {
  csv: 'text/csv',
  tsv: 'text/tab-separated-values',
  txt: 'text/plain',
  dat: 'text/plain',
  asc: 'text/plain',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  parquet: 'application/vnd.apache.parquet',
}

/** What a record's folder is made from. */
export interface RecordContext {
  readonly paths: LabPaths
  readonly setups: ReadonlyMap<Sha256, PackageSetup>
  readonly results: readonly PackageResult[]
  readonly beside: BesideRecord
}

/** The files of one record: raw bytes, results, points as tables, pictures and reports. */
export async function* filesOfRecord(
  record: PackageRecord,
  bytes: Uint8Array,
  { paths, setups, results, beside }: RecordContext,
): AsyncGenerator<NewFile> {
  const raw = paths.raw(record)
  const folder = raw.slice(0, raw.lastIndexOf('/'))
  const name = latestName(record)
  const mediaType = mediaTypes[plainExtension(name)] ?? 'application/octet-stream'
  yield { path: raw, bytes, title: `Raw bytes of ${name}`, mediaType }
  for (const result of results) {
    const setup = setups.get(result.origin.setup)
    yield {
      path: paths.result(result),
      bytes: utf8(await result.text()),
      title: `Result (${result.kind}) of ${name}`,
      mediaType: 'application/json',
      from: [raw, ...(setup === undefined ? [] : [paths.setup(setup)])],
    }
  }
  if (beside.points !== null) yield* pointFiles(beside.points, { folder, raw, name })
  for (const document of beside.documents) yield documentFile(document, { folder, raw })
}

interface Folder {
  readonly folder: string
  readonly raw: string
}

function* pointFiles(
  points: readonly Point[],
  { folder, raw, name }: Folder & { readonly name: string },
): Generator<NewFile> {
  const title = `Points of ${name}`
  const from = [raw]
  const schema = tableSchema(pointColumns)
  yield { path: `${folder}/points.csv`, bytes: utf8(pointsCsv(points)), title, mediaType: 'text/csv', schema, from }
  yield { path: `${folder}/points.json`, bytes: utf8(pointsJson(points)), title, mediaType: 'application/json', from }
  const parquet = pointsParquet(points)
  yield { path: `${folder}/points.parquet`, bytes: parquet, title, mediaType: mediaTypes.parquet, from }
}

function documentFile({ name, title, mediaType, bytes }: PackageDocument, { folder, raw }: Folder): NewFile {
  if (!/^[a-z0-9-]+\.[a-z0-9]+$/.test(name)) throw new RangeError(`a document's name must be a plain one, got ${name}`)
  return { path: `${folder}/${name}`, bytes, title, mediaType, from: [raw] }
}
