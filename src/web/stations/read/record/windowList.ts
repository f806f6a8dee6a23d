import type { MovedWindow } from '../../../../server/contract/index.ts'

/** What people changed about the reading of a record: the record's `mends` paper. */
export interface Mends {
  readonly windows: readonly MovedWindow[]
  readonly answers?: readonly RemarkAnswer[]
}

/** A remark that a person answered with a reason. `step` is null for one on the whole record. */
export interface RemarkAnswer {
  readonly kind: string
  readonly step: number | null
  readonly answer: string
}

export const noMends: Mends = { windows: [], answers: [] }

/** The windows with that of one step put to another place, or back to the program's where it is null. */
export const withWindow = (
  windows: readonly MovedWindow[],
  step: number,
  window: Pick<MovedWindow, 'from' | 'to'> | null,
): readonly MovedWindow[] =>
  [...windows.filter((one) => one.step !== step), ...(window === null ? [] : [{ step, ...window }])].sort(
    (a, b) => a.step - b.step,
  )

/** The answers with one more, or without it where the text is empty. */
export const withAnswer = (answers: readonly RemarkAnswer[], said: RemarkAnswer): readonly RemarkAnswer[] => [
  ...answers.filter(({ kind, step }) => kind !== said.kind || step !== said.step),
  ...(said.answer.trim() === '' ? [] : [{ ...said, answer: said.answer.trim() }]),
]
