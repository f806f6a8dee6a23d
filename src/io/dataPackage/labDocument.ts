import type {
  PackagedLab,
  PackagePaper,
  PackageRecord,
  PackageResult,
  PackageSetup,
  PackageTitled,
} from './packageContent.ts'

/** Name and version of the format of `lab.json`. A reader refuses a version that it does not know. */
export const labFormat = 'kufe lab'
export const labFormatVersion = 1

/** What `lab.json` holds. */
export interface LabDocument {
  readonly format: string
  readonly version: number
  readonly about: readonly PackageTitled[]
  readonly studies: readonly PackageTitled[]
  readonly samples: readonly PackageTitled[]
  readonly setups: readonly (Omit<PackageSetup, 'text'> & { readonly path: string })[]
  readonly records: readonly (Omit<PackageRecord, 'bytes'> & { readonly path: string })[]
  readonly results: readonly (Omit<PackageResult, 'text'> & { readonly path: string })[]
  /** Absent in packages of early programs. */
  readonly papers?: readonly PackagePaper[]
}

/** Where the things of a lab lie in the package. */
export interface LabPaths {
  readonly setup: (setup: PackageSetup) => string
  readonly raw: (record: PackageRecord) => string
  readonly result: (result: PackageResult) => string
}

/** `lab.json`: everything that people said, every version with who, when and why, and where bytes and texts lie. */
export function labDocument(lab: PackagedLab, paths: LabPaths): string {
  const { about, studies, samples, setups, records, results, papers } = lab
  const document: LabDocument = {
    format: labFormat,
    version: labFormatVersion,
    about,
    studies,
    samples,
    setups: setups.map((setup) => ({ sha256: setup.sha256, path: paths.setup(setup), change: setup.change })),
    records: records.map((record) => ({ id: record.id, path: paths.raw(record), versions: record.versions })),
    results: results.map((result) => {
      const { id, kind, origin, sha256, change } = result
      return { id, kind, origin, sha256, path: paths.result(result), change }
    }),
    papers,
  }
  return `${JSON.stringify(document, null, 1)}\n`
}
