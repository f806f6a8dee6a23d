import type { DecimalMark } from './rawRecord.ts'

/** What one cell says about the marks in numbers. */
export type NumberShape =
  | 'empty'
  | 'text'
  /** Numbers with marks between that can be none of one number, as where the separator was taken wrongly. */
  | 'joined'
  /** Digits without marks. */
  | 'whole'
  /** `1.5`, `1e-3`; `1,5`. */
  | 'point'
  | 'comma'
  /** `1.234`, `1,234`: a decimal, or a thousands mark. */
  | 'pointOrThousands'
  | 'commaOrThousands'
  | GroupedNumber

/** Groups of three digits: `1.234,5` says both marks, `1 234` only one. */
export interface GroupedNumber {
  readonly thousands: string
  readonly decimal: DecimalMark | undefined
}

const number = /^[-+\u2212]?(\d[\d.,'’ \u00A0\u2009\u202F]*|[.,]\d+)([eEdD][-+]?\d{1,3})?$/

const severalNumbers = /^[-+]?\d[-+\d.,eE]*[\s;|,][-+\d.,eE\s;|]*$/

/** Longest text that may be one number. */
const longestNumber = 80

export function numberShape(cell: string): NumberShape {
  if (cell === '') return 'empty'
  if (cell.length > longestNumber) return 'text'
  const found = number.exec(cell)
  if (found === null) return severalNumbers.test(cell) ? 'joined' : 'text'
  const body = found[1]
  const marks = body.replace(/\d/g, '')
  if (marks === '') return 'whole'
  if (marks === '.' || marks === ',') {
    const either = found[2] === undefined && /^[1-9]\d{0,2}.\d{3}$/.test(body)
    if (marks === '.') return either ? 'pointOrThousands' : 'point'
    return either ? 'commaOrThousands' : 'comma'
  }
  return grouped(body, marks)
}

function grouped(body: string, marks: string): NumberShape {
  const last = marks[marks.length - 1]
  const first = marks[0]
  const inner = last === first ? marks : marks.slice(0, -1)
  if ([...inner].some((mark) => mark !== first)) return 'text'
  if (last !== first && last !== '.' && last !== ',') return 'text'
  const decimal = last === first ? undefined : last === '.' ? '.' : ','
  const whole = decimal === undefined ? body : body.slice(0, body.lastIndexOf(decimal))
  const groups = whole.split(first)
  const right = groups.every((group, index) => (index === 0 ? /^\d{1,3}$/.test(group) : /^\d{3}$/.test(group)))
  return right ? { thousands: first, decimal } : /\s/.test(first) ? 'joined' : 'text'
}

/** What a cell says for the separator that cut it out. Groups of digits may also be two columns in one. */
export function separatorWeight(shape: NumberShape): number {
  if (shape === 'empty' || shape === 'text') return 0
  if (shape === 'joined') return -5
  return typeof shape === 'string' ? 1 : /\s/.test(shape.thousands) ? -0.5 : 0.3
}

export const isNumber = (shape: NumberShape): boolean => shape !== 'empty' && shape !== 'text' && shape !== 'joined'
