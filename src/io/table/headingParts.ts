import { unitsOf } from '../../core/quantity/index.ts'

/** One way to take a heading apart; `unit` is "" where it has none. */
export interface HeadingParts {
  readonly words: string
  readonly unit: string
  /** The form leaves no doubt that `unit` is meant as a unit, even if we do not know it. */
  readonly sure: boolean
}

/** Longest heading that is looked at; what is longer is no heading. */
const longestHeading = 300

/**
 * All ways to read a heading as words and a unit, the likeliest first: `t [min]`, `Torque (mN·m)`, `M / mN·m`,
 * `Zeit in s`, `Torque, mN·m`, `torque_mNm`, `Torque mN·m`, and at last as words alone. `unitBelow` is the text in a
 * row of units under the headings.
 */
export function headingParts(heading: string, unitBelow: string): readonly HeadingParts[] {
  const text = heading.slice(0, longestHeading).replace(/\s+/g, ' ').trim()
  const below = unitBelow.trim()
  const ways: HeadingParts[] = []
  if (below !== '') ways.push({ words: withoutBrackets(text), unit: below, sure: true })
  ways.push({ words: text, unit: below, sure: below !== '' })
  const found = [...inBrackets(text), ...afterMark(text)].filter(({ unit }) => unit !== '')
  // The whole heading as words comes before readings that only guess where the unit begins, so that F_N stays a symbol.
  return below === '' ? [...found.filter(({ sure }) => sure), ...ways, ...found.filter(({ sure }) => !sure)] : ways
}

function inBrackets(text: string): HeadingParts[] {
  const ways: HeadingParts[] = []
  for (const [group, square, round, curly, angle] of text.matchAll(
    /\[([^[\]]*)\]|\(([^()]*)\)|\{([^{}]*)\}|<([^<>]*)>/g,
  )) {
    const unit = (square ?? round ?? curly ?? angle ?? '').trim()
    const words = text.replace(group, ' ').trim()
    const known = unitsOf(unit).length > 0
    if (known || square !== undefined || text.endsWith(group)) ways.push({ words, unit, sure: true })
  }
  // A group that is a known unit goes before a remark in brackets.
  return ways.sort((a, b) => Number(unitsOf(b.unit).length > 0) - Number(unitsOf(a.unit).length > 0))
}

function afterMark(text: string): HeadingParts[] {
  const ways: HeadingParts[] = []
  for (const { index, 0: mark } of text.matchAll(/ ?\/ ?| in |, ?|; ?|: ?| |_|-/gi)) {
    const words = text.slice(0, index).trim()
    const unit = text.slice(index + mark.length).trim()
    if (words === '' || unitsOf(unit).length === 0) continue
    ways.push({ words, unit, sure: /^(?: \/ | in )$/i.test(mark) })
  }
  return ways
}

const withoutBrackets = (text: string): string => {
  const bare = text.replace(/\[[^[\]]*\]|\([^()]*\)/g, ' ').trim()
  return bare === '' ? text : bare
}
