import type { AnsweredSheet, OrderedSheet, SheetAnswer, SheetEntry, SheetPart } from '../../../core/terms/index.ts'

/** The study's `runSheet` paper: what was read and done at the rig so far. */
export interface SheetPaper {
  /** The sheet as it was when somebody last wrote on it: a plan may change afterwards. */
  readonly sheet: OrderedSheet | null
  readonly answers: readonly SheetAnswer[]
  /** Ids of the entries that somebody ticked. */
  readonly ticked: readonly string[]
}

export const emptySheet: SheetPaper = { sheet: null, answers: [], ticked: [] }

/** One entry in the order of the sheet, numbered over all parts. */
export interface NumberedEntry {
  readonly number: number
  readonly part: SheetPart
  readonly entry: SheetEntry
}

/** All entries from first to last. */
export const numbered = ({ parts }: OrderedSheet): readonly NumberedEntry[] =>
  parts
    .flatMap((part) => part.entries.map((entry) => ({ part, entry })))
    .map((one, index) => ({ ...one, number: index + 1 }))

/** The paper with an answer given or, where it says nothing, taken back. */
export function withAnswer(paper: SheetPaper, answer: SheetAnswer): SheetPaper {
  const others = paper.answers.filter(({ id }) => id !== answer.id)
  const silent = answer.value === null && (answer.note ?? '') === ''
  return { ...paper, answers: silent ? others : [...others, answer] }
}

/** The paper with an entry ticked or not. */
export const withTick = (paper: SheetPaper, id: string, done: boolean): SheetPaper => ({
  ...paper,
  ticked: [...paper.ticked.filter((one) => one !== id), ...(done ? [id] : [])],
})

/** The first entry that nobody has ticked; the last where all are done. */
export function firstOpen(entries: readonly NumberedEntry[], { ticked }: SheetPaper): NumberedEntry | undefined {
  return entries.find(({ entry }) => !ticked.includes(entry.id)) ?? entries.at(-1)
}

/** What goes with a record that was measured by this sheet: the sheet and the answers to its checks. undefined where nothing was written. */
export function sheetForRecord({ sheet, answers }: SheetPaper): AnsweredSheet | undefined {
  if (sheet === null || answers.length === 0) return undefined
  const asked = new Set(numbered(sheet).flatMap(({ entry }) => (entry.check === null ? [] : [entry.id])))
  return { sheet, answers: answers.filter(({ id }) => asked.has(id)) }
}
