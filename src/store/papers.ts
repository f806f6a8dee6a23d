import type { Outcome, Sha256 } from '../core/terms/index.ts'
import type { Change, ChangeNote } from './change.ts'

/** What a paper is about. */
export type PaperSubject = 'lab' | 'study' | 'record'

/** Kinds of papers, each with what it may be about. Those of the lab have a name each: there may be many materials. */
export const paperKinds = {
  question: ['study'],
  runSheet: ['study', 'record'],
  decision: ['study'],
  notes: ['study'],
  mends: ['record'],
  material: ['lab'],
  liquid: ['lab'],
  rig: ['lab'],
  fixture: ['lab'],
  limit: ['study'],
  watch: ['lab'],
  answer: ['lab'],
} as const satisfies Readonly<Record<string, readonly PaperSubject[]>>

/** Name of one such kind. */
export type PaperKind = keyof typeof paperKinds

/** Where a paper has its place. */
export interface PaperPlace {
  readonly subject: PaperSubject
  /** Id of the study or the record; `'lab'` for the lab itself, of which there is one. */
  readonly subjectId: string
  readonly kind: PaperKind
  /** Small letters, digits and hyphens; empty where a subject has one of a kind. */
  readonly name: string
}

/** One version of a JSON document that people keep about a study, a record or the lab. */
export interface Paper extends PaperPlace {
  /** From 1. */
  readonly version: number
  /** The version before this one, null for the first. */
  readonly supersedes: number | null
  readonly content: unknown
  /** Of the content as canonical JSON. */
  readonly sha256: Sha256
  readonly change: ChangeNote
}

/** A place with `name` empty where it is left out. */
export type NamedPlace = Omit<PaperPlace, 'name'> & { readonly name?: string }

/** A paper on its way in. */
export type NewPaper = NamedPlace & {
  readonly content: unknown
  /** The version that its author saw; 0 where there was none. */
  readonly after: number
}

/** What became of it: the new version, or the one that somebody wrote in between; undefined where there is none. */
export type PaperKept =
  | { readonly end: 'kept'; readonly paper: Paper }
  | { readonly end: 'superseded'; readonly paper: Paper | undefined }

export interface Papers {
  /**
   * Adds a version, even of the same content. Nothing is kept where `after` is not the latest version.
   * A version after the first needs a reason. Throws RangeError for content that JSON would change.
   */
  keepPaper(paper: NewPaper, change: Change): Promise<Outcome<PaperKept>>
  /** The latest version of each paper about a subject, in order of kind and name. */
  papersOf(subject: PaperSubject, subjectId: string): Promise<Outcome<Paper[]>>
  /** One version, the latest by default; undefined where there is none. Refuses with `paperChanged` what is not as it was kept. */
  paper(place: NamedPlace, version?: number): Promise<Outcome<Paper | undefined>>
  /** All versions of one paper, oldest first; none where it was never kept. */
  paperVersions(place: NamedPlace): Promise<Outcome<Paper[]>>
}

/** How the history calls a paper: `study/drawer-runners/question`, `lab/material/birch-plywood`. */
export const paperId = ({ subject, subjectId, kind, name }: PaperPlace): string =>
  [subject, ...(subject === 'lab' ? [] : [subjectId]), kind, ...(name === '' ? [] : [name])].join('/')
