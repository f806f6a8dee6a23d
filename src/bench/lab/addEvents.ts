import type { Problem } from '../../core/terms/index.ts'
import type { KeptRecord } from '../../store/index.ts'
import type { Brief } from './brief.ts'

/** What became of one file or record, told as soon as it is certain. What is told as kept or reduced is on the disk. */
export type AddEvent =
  | { readonly what: 'kept'; readonly file: string; readonly record: KeptRecord }
  /** The same bytes were there before, under the name and with the facts of `record`. */
  | { readonly what: 'known'; readonly file: string; readonly record: KeptRecord }
  /** Nothing of it was kept. */
  | { readonly what: 'refused'; readonly file: string; readonly problems: readonly Problem[] }
  | { readonly what: 'reduced'; readonly record: KeptRecord; readonly brief: Brief }
  /** The record is kept and has no result. */
  | { readonly what: 'notReduced'; readonly record: KeptRecord; readonly problems: readonly Problem[] }
  /** A mistake of ours; the record is kept and has no result. */
  | { readonly what: 'fault'; readonly record: KeptRecord; readonly message: string }

export type OnAdd = (event: AddEvent) => void
