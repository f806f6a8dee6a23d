/** One item of a complete report as the report itself judges it. */
export interface LackingItem {
  readonly state: 'present' | 'partly' | 'lacking'
  readonly item: string
  readonly text: string
  /** Key of the note that completes it; null where none is asked for. */
  readonly note: string | null
  /** Keys of the setup that are asked for. */
  readonly setup: readonly string[]
}
