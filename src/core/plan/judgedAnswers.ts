import { printQuantity } from '../quantity/index.ts'
import type { JudgedAnswer, OrderedSheet, SheetAnswer, SheetCheck } from '../terms/index.ts'

/** Every check of a sheet with its answer, in the order of the sheet; `open` where nobody has answered. */
export function judgedAnswers(sheet: OrderedSheet, answers: readonly SheetAnswer[]): readonly JudgedAnswer[] {
  const given = new Map(answers.map((answer) => [answer.id, answer]))
  return sheet.parts.flatMap(({ entries }) =>
    entries.flatMap(({ id, check }) => (check === null ? [] : [judged(check, given.get(id) ?? { id, value: null })])),
  )
}

/** Answers that no check of the sheet asked for. */
export function strangeAnswers(sheet: OrderedSheet, answers: readonly SheetAnswer[]): readonly string[] {
  const asked = new Set(
    sheet.parts.flatMap(({ entries }) => entries.filter(({ check }) => check !== null).map(({ id }) => id)),
  )
  return answers.map(({ id }) => id).filter((id) => !asked.has(id))
}

function judged(check: SheetCheck, answer: SheetAnswer): JudgedAnswer {
  const { value } = answer
  if (value === null || Number.isNaN(value))
    return { ...answer, state: 'open', sentence: `Not answered: ${check.read}, ${check.accept}.` }
  const within =
    typeof value === 'boolean'
      ? value
      : check.dimension !== 'yes' &&
        value >= (check.low ?? Number.NEGATIVE_INFINITY) &&
        value <= (check.high ?? Number.POSITIVE_INFINITY)
  const said =
    typeof value === 'boolean' || check.dimension === 'yes'
      ? value === true
        ? 'yes'
        : 'no'
      : printQuantity(value, check.dimension, { digits: 4 })
  const found = `${check.read}: ${said} (wanted: ${check.accept}).`
  return within
    ? { ...answer, state: 'within', sentence: found }
    : { ...answer, state: 'outside', sentence: `${found} ${check.otherwise}` }
}
