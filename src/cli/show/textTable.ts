/** One column of a table for people. `point` lines numbers up at their decimal point, and at ± where they have one. */
export interface TableColumn {
  readonly head: string
  /** Unit below the heading, "" for none. */
  readonly unit: string
  readonly align: 'left' | 'right' | 'point'
  readonly cells: readonly string[]
}

/** The table as lines, headings and units on top, a rule below them. No blanks at line ends. */
export function textTable(columns: readonly TableColumn[], indent = 2): string {
  const set = columns.map(setColumn)
  const rows = Math.max(0, ...columns.map(({ cells }) => cells.length))
  const lines: string[] = []
  for (let row = 0; row < rows + 3; row++) lines.push(set.map((column) => column[row] ?? '').join('  '))
  const units = columns.some(({ unit }) => unit !== '')
  return lines
    .filter((_, row) => row !== 1 || units)
    .map((line) => `${' '.repeat(indent)}${line}`.trimEnd())
    .join('\n')
}

/** Heading, unit, rule and cells of a column, all of one width. */
function setColumn({ head, unit, align, cells }: TableColumn): readonly string[] {
  const aligned = align === 'point' ? atPoint(cells) : cells
  const width = Math.max(length(head), length(unit), ...aligned.map(length))
  const pad = (text: string): string =>
    align === 'left' ? text + ' '.repeat(width - length(text)) : ' '.repeat(width - length(text)) + text
  return [pad(head), pad(unit), '─'.repeat(width), ...aligned.map(pad)]
}

/** Pads the first number of every cell so that the decimal points, and what follows the numbers, stand below each other. */
function atPoint(cells: readonly string[]): readonly string[] {
  const parts = cells.map((cell) => {
    const [number = ''] = cell.match(/^\S+/) ?? []
    const at = number.indexOf('.')
    const whole = at < 0 ? number : number.slice(0, at)
    return { whole, fraction: at < 0 ? '' : number.slice(at), rest: cell.slice(number.length) }
  })
  const before = Math.max(0, ...parts.map(({ whole }) => length(whole)))
  const after = Math.max(0, ...parts.map(({ fraction }) => length(fraction)))
  const end = Math.max(0, ...parts.map(({ rest }) => length(rest)))
  return parts.map(({ whole, fraction, rest }) => whole.padStart(before) + fraction.padEnd(after) + rest.padEnd(end))
}

/** Letters as a terminal counts them; we print no wide or combining ones of our own. */
const length = (text: string): number => [...text].length
