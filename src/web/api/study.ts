import type { RemarkKind } from '../../core/terms/index.ts'

/** A record as the shelf shows it. */
export interface RecordBrief {
  readonly id: string
  readonly name: string
  readonly sample?: string | null
  readonly replicate?: number | null
  readonly state: string
  readonly points?: readonly { readonly slidingSpeed: number; readonly friction: number | null }[]
  readonly line?: readonly { readonly slidingSpeed: number; readonly friction: number }[]
  readonly remarks?: readonly { readonly kind: RemarkKind; readonly count: number }[]
}

/** A study with all that a rail, a shelf and a sign need. */
export interface StudyView {
  readonly id: string
  readonly name: string
  readonly samples: readonly { readonly id: string; readonly name: string }[]
  readonly records: readonly RecordBrief[]
  readonly papers: readonly {
    readonly kind: string
    readonly version: number
    readonly by?: string
    readonly at?: string
  }[]
}

/** A study in the lab's list. */
export interface StudyBrief {
  readonly id: string
  readonly name: string
  readonly records?: number
}

/** The lab's own line. */
export interface LabView {
  readonly name: string
  readonly people: readonly string[]
}
