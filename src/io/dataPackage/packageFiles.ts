import { crate } from './crate.ts'
import { descriptor } from './descriptor.ts'
import { plainName, shortIds } from './fileNames.ts'
import { type LabPaths, labDocument } from './labDocument.ts'
import type { PackageContent, PackagedLab } from './packageContent.ts'
import { type DescribedFile, type NewFile, type PackageFile, sha256Of, utf8 } from './packageFile.ts'
import { readMe } from './readMe.ts'
import { filesOfRecord, folderOf, rawName } from './recordFiles.ts'
import { type ListedRecord, recordColumns } from './recordsTable.ts'
import { tableCsv } from './tableCsv.ts'
import { tableSchema } from './tableSchema.ts'

/**
 * The files of a data package, one after the other, so that a large lab is never wholly in memory; the descriptors come last, as
 * they hold the checksums of all others. Equal content gives equal files. Throws RangeError for something that
 * others hang on and that is left out, and for a document whose name is no plain file name: mistakes of ours.
 */
export async function* dataPackageFiles(content: PackageContent): AsyncGenerator<PackageFile> {
  const { lab } = content
  checkWhole(lab)
  const paths = pathsOf(content)
  const described: DescribedFile[] = []
  const listed: ListedRecord[] = []
  const put = (file: NewFile): PackageFile => {
    const { bytes, ...about } = file
    if (described.some(({ path }) => path === file.path)) throw new RangeError(`${file.path} is put in twice`)
    described.push({ ...about, size: bytes.length, sha256: sha256Of(bytes) })
    return { path: file.path, bytes }
  }
  for (const setup of lab.setups) {
    yield put({ path: paths.setup(setup), bytes: utf8(setup.text), title: 'Setup', mediaType: 'application/yaml' })
  }
  const setups = new Map(lab.setups.map((setup) => [setup.sha256, setup]))
  const results = Map.groupBy(lab.results, ({ origin }) => origin.raw)
  for (const record of lab.records) {
    const bytes = await record.bytes()
    listed.push({
      record,
      latest: record.versions[record.versions.length - 1],
      size: bytes.length,
      path: paths.raw(record),
    })
    const context = { paths, setups, results: results.get(record.id) ?? [], beside: await content.beside(record.id) }
    for await (const file of filesOfRecord(record, bytes, context)) yield put(file)
  }
  const list = utf8(tableCsv(recordColumns, listed))
  yield put({
    path: 'records.csv',
    bytes: list,
    title: 'All records',
    mediaType: 'text/csv',
    schema: tableSchema(recordColumns),
  })
  const document = utf8(labDocument(lab, paths))
  yield put({
    path: 'lab.json',
    bytes: document,
    title: 'Studies, samples, records and their history',
    mediaType: 'application/json',
  })
  yield put({ path: 'README.md', bytes: utf8(readMe(content)), title: 'What lies where', mediaType: 'text/markdown' })
  yield* descriptors(content, described)
}

/** Whatever something in the package hangs on must be in it as well, or nobody could take it in. */
function checkWhole({ studies, samples, setups, records, results, papers }: PackagedLab): void {
  const there = {
    study: new Set(studies.map(({ id }) => id)),
    sample: new Set(samples.map(({ id }) => id)),
    setup: new Set<string>(setups.map(({ sha256 }) => sha256)),
    record: new Set<string>(records.map(({ id }) => id)),
  }
  const need = (kind: keyof typeof there, id: string | null, who: string): void => {
    if (id !== null && !there[kind].has(id)) throw new RangeError(`${who} needs ${kind} ${id}, which is left out`)
  }
  for (const { id, versions } of records) {
    for (const kind of ['study', 'sample', 'setup'] as const) {
      for (const version of versions) need(kind, version[kind], `record ${id}`)
    }
  }
  for (const { id, origin } of results) {
    need('record', origin.raw, `result ${id}`)
    need('setup', origin.setup, `result ${id}`)
  }
  for (const { subject, subjectId, kind } of papers) {
    if (subject === 'study' || subject === 'record') need(subject, subjectId, `a ${kind}`)
  }
}

function* descriptors(content: PackageContent, described: readonly DescribedFile[]): Generator<PackageFile> {
  const last: PackageFile[] = [
    { path: 'datapackage.json', bytes: utf8(descriptor(content, described)) },
    { path: 'ro-crate-metadata.json', bytes: utf8(crate(content, described)) },
  ]
  yield* last
  const sums = [...described, ...last.map(({ path, bytes }) => ({ path, sha256: sha256Of(bytes) }))]
  yield { path: 'checksums.sha256', bytes: utf8(sums.map(({ path, sha256 }) => `${sha256}  ${path}\n`).join('')) }
}

function pathsOf({ lab }: PackageContent): LabPaths {
  const short = shortIds([
    ...lab.records.map(({ id }) => id),
    ...lab.setups.map(({ sha256 }) => sha256),
    ...lab.results.map(({ id }) => id),
  ])
  const folders = new Map(lab.records.map((record) => [record.id, folderOf(record, short)]))
  return {
    setup: ({ sha256 }) => `setups/${short(sha256)}.yaml`,
    raw: (record) => `${folders.get(record.id)}/${rawName(record)}`,
    result: ({ id, kind, origin }) => `${folders.get(origin.raw)}/${plainName(kind)}-${short(id)}.result.json`,
  }
}
