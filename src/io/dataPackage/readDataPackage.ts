import { done, failed, type Outcome, type Problem, type Sha256 } from '../../core/terms/index.ts'
import { isSafePath } from './fileNames.ts'
import { type LabDocument, labFormat, labFormatVersion } from './labDocument.ts'
import { descriptorSchema, labSchema } from './labSchema.ts'
import { missingThings } from './missingThings.ts'
import type { PackagedLab, PackageSetup } from './packageContent.ts'
import { sha256Of } from './packageFile.ts'
import { packageProblem } from './packageProblem.ts'
import type { PackageSource } from './packageSource.ts'
import { readJson } from './readJson.ts'

interface Descriptor {
  readonly resources: readonly { readonly path: string; readonly bytes: number; readonly hash: string }[]
}

/**
 * A lab out of a data package of ours. Every file is held against its checksum first, and all problems come at once; what is given
 * back reads its bytes when asked, and throws should they have changed meanwhile.
 */
export async function readDataPackage(source: PackageSource): Promise<Outcome<PackagedLab>> {
  const place = { file: source.name }
  const [descriptorBytes, labBytes] = [await source.read('datapackage.json'), await source.read('lab.json')]
  if (descriptorBytes === undefined) {
    return failed(packageProblem('packageUnreadable', place, 'it has no datapackage.json'))
  }
  if (labBytes === undefined) return failed(packageProblem('packageForeign', place))
  const descriptor = readJson<Descriptor>(descriptorBytes, descriptorSchema, 'datapackage.json')
  const newer = newerFormat(labBytes)
  if (newer !== undefined) return failed(newer)
  const lab = readJson<LabDocument>(labBytes, labSchema, 'lab.json')
  if (!descriptor.ok || !lab.ok) {
    return failed(...(descriptor.ok ? [] : descriptor.problems), ...(lab.ok ? [] : lab.problems))
  }
  const wanted = wantedFiles(descriptor.value, lab.value)
  const problems = [...(await filesChanged(source, wanted)), ...missingThings(lab.value)]
  return problems.length > 0 ? failed(...problems) : packagedLab(source, lab.value)
}

/** A later format may look wholly different, so this comes before all else. */
function newerFormat(bytes: Uint8Array): Problem | undefined {
  try {
    const { format, version } = JSON.parse(new TextDecoder().decode(bytes)) ?? {}
    if (format !== labFormat) return packageProblem('packageForeign', { file: 'lab.json' })
    return version === labFormatVersion
      ? undefined
      : packageProblem('packageNewer', { file: 'lab.json' }, String(version).slice(0, 20))
  } catch {
    return undefined
  }
}

/** Paths with the checksums that they must have: one from each list that names them. */
function wantedFiles({ resources }: Descriptor, { setups, records, results }: LabDocument): [string, Sha256][] {
  return [
    ...resources.map(({ path, hash }): [string, Sha256] => [path, hash.slice('sha256:'.length)]),
    ...[...setups, ...results].map(({ path, sha256 }): [string, Sha256] => [path, sha256]),
    ...records.map(({ path, id }): [string, Sha256] => [path, id]),
  ]
}

async function filesChanged(source: PackageSource, wanted: readonly [string, Sha256][]): Promise<Problem[]> {
  const problems: Problem[] = []
  for (const [path, asked] of Map.groupBy(wanted, ([name]) => name)) {
    const place = { file: path.slice(0, 200) }
    if (!isSafePath(path)) {
      problems.push(packageProblem('pathUnsafe', place))
      continue
    }
    const bytes = await source.read(path)
    if (bytes === undefined) problems.push(packageProblem('fileMissing', place))
    else if (asked.some(([, sha256]) => sha256 !== sha256Of(bytes))) problems.push(packageProblem('fileChanged', place))
  }
  return problems
}

async function packagedLab(source: PackageSource, document: LabDocument): Promise<Outcome<PackagedLab>> {
  const { about, studies, samples, papers = [] } = document
  const bytesOf = async (path: string, sha256: Sha256): Promise<Uint8Array> => {
    const bytes = await source.read(path)
    if (bytes === undefined || sha256Of(bytes) !== sha256) throw new Error(`${path} changed while it was read`)
    return bytes
  }
  const textOf = async (path: string, sha256: Sha256): Promise<string> =>
    new TextDecoder('utf-8', { ignoreBOM: true }).decode(await bytesOf(path, sha256))
  const setups: PackageSetup[] = []
  for (const { path, sha256, change } of document.setups) {
    setups.push({ sha256, change, text: await textOf(path, sha256) })
  }
  return done({
    about,
    studies,
    samples,
    setups,
    records: document.records.map(({ path, id, versions }) => ({ id, versions, bytes: () => bytesOf(path, id) })),
    results: document.results.map(({ path, ...kept }) => ({ ...kept, text: () => textOf(path, kept.sha256) })),
    papers,
  })
}
