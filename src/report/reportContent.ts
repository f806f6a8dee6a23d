/**
 * Everything that a report shows, in the order in which it is read. All of it is plain text: the renderers escape it and
 * decide nothing but looks, so HTML and PDF hold the same. Equal content gives equal bytes.
 */
export interface ReportContent {
  readonly title: string
  /** What slid on what, at which load, in one line. */
  readonly subtitle: string
  /** Day of the report, 2026-11-25; null where nobody said. */
  readonly date: string | null
  /** Who answers for it; null where nobody said. */
  readonly author: string | null
  /** The few sentences that a hurried reader gets. */
  readonly summary: readonly string[]
  readonly sections: readonly ReportSection[]
  /** A line at the foot of every page that tells one report from another. */
  readonly identity: string
}

/** Parts of a report, in their order. */
export const sectionNames = [
  'question',
  'pair',
  'rig',
  'conditions',
  'asFound',
  'zeroes',
  'method',
  'record',
  'curve',
  'beyond',
  'limit',
  'budget',
  'remarks',
  'rigWatch',
  'points',
  'completeness',
  'cautions',
  'provenance',
] as const

/** Name of one part. */
export type SectionName = (typeof sectionNames)[number]

/** Parts of the report of a decision between samples, in their order. */
export const decisionSectionNames = [
  'decision',
  'differences',
  'speeds',
  'ranking',
  'scatter',
  'replicates',
  'how',
  'records',
] as const

/** Name of one such part. */
export type DecisionSectionName = (typeof decisionSectionNames)[number]

export interface ReportSection {
  readonly name: SectionName | DecisionSectionName
  readonly heading: string
  readonly blocks: readonly ReportBlock[]
}

/** What a section is made of. */
export type ReportBlock =
  /** `lead` is a run-in heading. */
  | { readonly kind: 'paragraph'; readonly text: string; readonly lead?: string }
  | { readonly kind: 'facts'; readonly facts: readonly Fact[] }
  | { readonly kind: 'table'; readonly table: ReportTable }
  | { readonly kind: 'figure'; readonly figure: NumberedFigure }
  | { readonly kind: 'remarks'; readonly remarks: readonly RemarkEntry[] }
  | { readonly kind: 'checklist'; readonly items: readonly CheckedItem[] }
  | { readonly kind: 'list'; readonly items: readonly string[] }

/** A term and what it is here. */
export interface Fact {
  readonly term: string
  readonly value: string
  /** True for what is copied letter by letter: a checksum, a command. */
  readonly code?: true
}

/** `number` is counted over the whole report; every cell is text. */
export interface ReportTable {
  readonly number: number
  readonly caption: string
  readonly columns: readonly ReportColumn[]
  readonly rows: readonly (readonly string[])[]
  /** Sentences below the table. */
  readonly notes: readonly string[]
}

/** `point` lines numbers up at their decimal point. */
export interface ReportColumn {
  readonly head: string
  /** In the row of units below the head; empty for none. */
  readonly unit: string
  readonly align: 'left' | 'right' | 'point'
}

/** Something that a record says beside its curve, in sentences, with a figure and a table where they help. */
export interface ReportFinding {
  readonly heading: string
  readonly sentences: readonly string[]
  readonly figure?: ReportFigure['name']
  readonly table?: {
    readonly caption: string
    readonly columns: readonly string[]
    readonly rows: readonly (readonly string[])[]
  }
}

/** A picture as SVG text. The renderers put it in as it is, so it must come from the room of figures. */
export interface ReportFigure {
  readonly name:
    | 'fixture'
    | 'strip'
    | 'turnMap'
    | 'curve'
    | 'remarks'
    | 'budget'
    | 'limit'
    | 'stickSlip'
    | 'wear'
    | 'loop'
    | 'hold'
    | 'breakaway'
    | 'difference'
    | 'ranking'
    | 'replicates'
  readonly svg: string
  /** The same for a dark page; null where there is none. */
  readonly darkSvg: string | null
  readonly caption: string
}

/** `words` say to those who hear the report what the picture shows: the description that the picture itself carries. */
export interface NumberedFigure extends ReportFigure {
  readonly number: number
  readonly words: string
}

/** Findings of one kind. */
export interface RemarkEntry {
  readonly weight: 'stops' | 'caution' | 'note'
  /** Letter under which the table of points and the pictures show it; empty for a finding on the whole record. */
  readonly letter: string
  readonly words: string
  /** Steps it was found on; empty for the whole record. */
  readonly where: string
  /** Every sentence once, each with its steps where they differ. */
  readonly sentences: readonly string[]
  /** What to do next, every sentence once. */
  readonly next: readonly string[]
}

/** One thing that a complete friction report holds. */
export interface CheckedItem {
  readonly item: string
  readonly state: 'present' | 'partly' | 'lacking'
  /** What is there, or where to fill it in. */
  readonly text: string
}
