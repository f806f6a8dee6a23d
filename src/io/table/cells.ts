import type { Separator } from './rawRecord.ts'

/**
 * Cuts a line into cells: blanks around and quotation marks taken away, doubled quotation marks made single.
 * For headings and odd lines; the numbers themselves are read by `CellReader`.
 */
export function splitCells(line: string, separator: Separator): string[] {
  return separator === ' ' ? splitAtBlanks(line) : splitAtMark(line, separator)
}

function splitAtMark(line: string, mark: string): string[] {
  const cells: string[] = []
  let from = 0
  while (from <= line.length) {
    const start = skipBlanks(line, from)
    const quoted = line[start] === '"' ? quotedCell(line, start) : undefined
    const search = quoted?.end ?? from
    const found = line.indexOf(mark, search)
    const end = found < 0 ? line.length : found
    cells.push(quoted === undefined ? line.slice(from, end).trim() : quoted.text + line.slice(search, end).trimEnd())
    from = end + 1
  }
  return cells
}

function splitAtBlanks(line: string): string[] {
  const cells: string[] = []
  let at = 0
  for (;;) {
    while (isBlank(line[at])) at++
    if (at >= line.length) return cells
    const quoted = line[at] === '"' ? quotedCell(line, at) : undefined
    const from = quoted?.end ?? at
    let end = from
    while (end < line.length && !isBlank(line[end])) end++
    cells.push((quoted?.text ?? '') + line.slice(from, end))
    at = end
  }
}

/** Text between the quotation mark at `start` and its partner, and the place after; undefined when there is no partner. */
function quotedCell(line: string, start: number): { readonly text: string; readonly end: number } | undefined {
  for (let at = line.indexOf('"', start + 1); at >= 0; at = line.indexOf('"', at + 2)) {
    if (line[at + 1] !== '"')
      return {
        text: line
          .slice(start + 1, at)
          .replaceAll('""', '"')
          .trim(),
        end: at + 1,
      }
  }
  return undefined
}

function skipBlanks(line: string, from: number): number {
  let at = from
  while (line[at] === ' ') at++
  return at
}

const isBlank = (letter: string | undefined): boolean => letter === ' ' || letter === '\t'
