import type { Origin, Point, Sha256 } from '../../core/terms/index.ts'

/** Who changed something, when (UTC) and why; `number` is its place in the history of the lab that it came from. */
export interface PackageChange {
  readonly number: number
  readonly at: string
  readonly who: string
  readonly why: string
}

/** One version of a lab's own title, a study or a sample. */
export interface PackageTitled {
  readonly id: string
  readonly version: number
  readonly supersedes: number | null
  readonly title: string
  readonly note: string
  readonly facts: Readonly<Record<string, unknown>>
  readonly change: PackageChange
}

/** A setup as its author wrote it. */
export interface PackageSetup {
  readonly sha256: Sha256
  readonly text: string
  readonly change: PackageChange
}

/** One version of what people say about a record. `name` is the name of the file as it came: a text, never a path. */
export interface PackageRecordVersion {
  readonly name: string
  readonly study: string | null
  readonly sample: string | null
  readonly replicate: number | null
  readonly mountedBy: string | null
  readonly ballSet: string | null
  readonly day: string | null
  readonly setup: Sha256 | null
  readonly version: number
  readonly supersedes: number | null
  readonly change: PackageChange
}

/** A record with all that was ever said about it, oldest version first. Its bytes are asked for when it is their turn. */
export interface PackageRecord {
  /** SHA-256 of the raw bytes. */
  readonly id: Sha256
  readonly versions: readonly PackageRecordVersion[]
  bytes(): Promise<Uint8Array>
}

/** A result as it is kept: its text is JSON, and its bytes are what counts. It is asked for when it is its turn. */
export interface PackageResult {
  readonly id: Sha256
  readonly kind: string
  readonly origin: Origin
  /** Of the text. */
  readonly sha256: Sha256
  readonly change: PackageChange
  text(): Promise<string>
}

/** One version of a JSON document that people keep about a study, a record or the lab itself, whose `subjectId` is `lab`. */
export interface PackagePaper {
  readonly subject: string
  readonly subjectId: string
  readonly kind: string
  readonly name: string
  readonly version: number
  readonly supersedes: number | null
  readonly content: unknown
  readonly change: PackageChange
}

/** All of a lab, or a part of it, as a lab gives it out and takes it in. */
export interface PackagedLab {
  /** Versions of the lab's own title, oldest first; so with the others. */
  readonly about: readonly PackageTitled[]
  readonly studies: readonly PackageTitled[]
  readonly samples: readonly PackageTitled[]
  readonly setups: readonly PackageSetup[]
  readonly records: readonly PackageRecord[]
  readonly results: readonly PackageResult[]
  readonly papers: readonly PackagePaper[]
}

/** A licence under which the data may be used. */
export interface PackageLicence {
  /** Identifier such as CC-BY-4.0. */
  readonly name: string
  readonly title?: string
  /** Address of its text. */
  readonly path?: string
}

/** What lies beside the raw bytes of a record. */
export interface BesideRecord {
  /** They go out as tables; null where there are none. */
  readonly points: readonly Point[] | null
  readonly documents: readonly PackageDocument[]
}

/** A picture or a report of one record. `name` is a plain file name such as `curve.svg`. */
export interface PackageDocument {
  readonly name: string
  readonly title: string
  readonly mediaType: string
  readonly bytes: Uint8Array
}

/** What a data package is made from. */
export interface PackageContent {
  readonly title: string
  readonly description: string
  /** When it was made, UTC, as `Date.toISOString` writes it. */
  readonly created: string
  /** People or bodies that answer for it. */
  readonly creators: readonly string[]
  /** null where nobody has said: then nobody else may use the data. */
  readonly licence: PackageLicence | null
  /** Program and version that made it. */
  readonly program: string
  readonly lab: PackagedLab
  /** Asked for record by record, so that a large lab is never wholly in memory. */
  beside(record: Sha256): Promise<BesideRecord>
}
