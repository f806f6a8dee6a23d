import { done, type Outcome, type Sha256 } from '../../../core/terms/index.ts'
import type {
  PackagedLab,
  PackagePaper,
  PackageRecord,
  PackageRecordVersion,
  PackageResult,
  PackageSetup,
  PackageTitled,
} from '../../../io/dataPackage/index.ts'
import { type KeptRecord, type Lab, type PaperPlace, StoreTrouble, type TitledThings } from '../../../store/index.ts'

/** All that a lab knows about some of its records, or all of it, with every version. Bytes and texts are read when they are asked for. */
export async function gatherLab(lab: Lab, some: readonly KeptRecord[] | undefined): Promise<Outcome<PackagedLab>> {
  const records = some === undefined ? await lab.records.list() : done(some)
  if (!records.ok) return records
  const packaged = await each(records.value, (record) => packageRecord(lab, record))
  if (!packaged.ok) return packaged
  const results = await each(records.value, (record) => resultsOf(lab, record))
  if (!results.ok) return results
  const versions = packaged.value.flatMap((record) => record.versions)
  const needed = <T>(named: readonly (T | null)[]): ReadonlySet<T> | undefined =>
    some === undefined ? undefined : new Set(named.filter((one) => one !== null))
  const used = needed([
    ...versions.map(({ setup }) => setup),
    ...results.value.flat().map(({ origin }) => origin.setup),
  ])
  const about = await titled(lab.about, undefined)
  if (!about.ok) return about
  const studies = await titled(lab.studies, needed(versions.map(({ study }) => study)))
  if (!studies.ok) return studies
  const samples = await titled(lab.samples, needed(versions.map(({ sample }) => sample)))
  if (!samples.ok) return samples
  const setups = await setupsOf(lab, used)
  if (!setups.ok) return setups
  const papers = await papersOf(lab, { records: packaged.value, studies: studies.value })
  if (!papers.ok) return papers
  return done({
    about: about.value,
    studies: studies.value,
    samples: samples.value,
    setups: setups.value,
    records: packaged.value,
    results: results.value.flat(),
    papers: papers.value,
  })
}

async function each<T, R>(things: readonly T[], act: (thing: T) => Promise<Outcome<R>>): Promise<Outcome<R[]>> {
  const all: R[] = []
  for (const thing of things) {
    const one = await act(thing)
    if (!one.ok) return one
    all.push(one.value)
  }
  return done(all)
}

async function packageRecord(lab: Lab, { id }: KeptRecord): Promise<Outcome<PackageRecord>> {
  const versions = await lab.records.versions(id)
  if (!versions.ok) return versions
  return done({
    id,
    versions: versions.value.map(saidIn),
    bytes: async () => orThrow(await lab.records.bytes(id)),
  })
}

/** Only what people said: id and size follow from the bytes, and when it was added from the first version. */
const saidIn = (kept: KeptRecord): PackageRecordVersion => ({
  name: kept.name,
  study: kept.study,
  sample: kept.sample,
  replicate: kept.replicate,
  mountedBy: kept.mountedBy,
  ballSet: kept.ballSet,
  day: kept.day,
  setup: kept.setup,
  version: kept.version,
  supersedes: kept.supersedes,
  change: kept.change,
})

async function resultsOf(lab: Lab, { id }: KeptRecord): Promise<Outcome<PackageResult[]>> {
  const results = await lab.results.list({ record: id })
  if (!results.ok) return results
  return done(
    results.value.map((result) => ({ ...result, text: async () => orThrow(await lab.results.text(result.id)) })),
  )
}

async function titled(
  things: Pick<TitledThings, 'list' | 'versions'>,
  wanted: ReadonlySet<string> | undefined,
): Promise<Outcome<PackageTitled[]>> {
  const latest = await things.list()
  if (!latest.ok) return latest
  const ids = latest.value.map(({ id }) => id).filter((id) => wanted?.has(id) ?? true)
  const versions = await each(ids, (id) => things.versions(id))
  return versions.ok ? done(versions.value.flat()) : versions
}

async function setupsOf(lab: Lab, wanted: ReadonlySet<Sha256> | undefined): Promise<Outcome<PackageSetup[]>> {
  const all = await lab.setups.list()
  if (!all.ok) return all
  return each(
    all.value.filter((sha256) => wanted?.has(sha256) ?? true),
    (sha256) => lab.setups.get(sha256),
  )
}

/** What people wrote about these records and studies, and what the lab knows of its own: a question may name its materials. */
async function papersOf(
  lab: Lab,
  { records, studies }: { readonly records: readonly PackageRecord[]; readonly studies: readonly PackageTitled[] },
): Promise<Outcome<PackagePaper[]>> {
  const places = await each<Pick<PaperPlace, 'subject' | 'subjectId'>, readonly PaperPlace[]>(
    [
      { subject: 'lab', subjectId: 'lab' },
      ...[...new Set(studies.map(({ id }) => id))].map((id) => ({ subject: 'study', subjectId: id }) as const),
      ...records.map(({ id }) => ({ subject: 'record', subjectId: id }) as const),
    ],
    ({ subject, subjectId }) => lab.papersOf(subject, subjectId),
  )
  if (!places.ok) return places
  const versions = await each(places.value.flat(), (place) => lab.paperVersions(place))
  return versions.ok ? done(versions.value.flat().map(({ sha256: _, ...paper }) => paper)) : versions
}

/** Bytes are asked for in the midst of writing a package; problems find their way out as those of the store do. */
function orThrow<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  throw new StoreTrouble(...outcome.problems)
}
