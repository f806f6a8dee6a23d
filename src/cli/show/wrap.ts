/** Lines no longer than `width`, broken at blanks but never before %, ± or …; `indent` before each. */
export function wrap(text: string, width: number, { indent = '' }: { readonly indent?: string } = {}): string {
  const lines: string[] = []
  let line = indent
  let empty = true
  for (const word of text.split(/\s+(?![%±…])/).filter((piece) => piece !== '')) {
    if (!empty && [...line].length + 1 + [...word].length > width) {
      lines.push(line)
      line = indent
      empty = true
    }
    line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line].join('\n')
}
