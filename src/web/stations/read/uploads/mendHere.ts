/** Options of the terminal in the words of this page. */
export function mendHere(mend: string): string {
  if (/--(separator|decimal|encoding|sheet)/.test(mend)) return 'Say below how the file is written, or mend the rows.'
  if (/--(column|unit)/.test(mend))
    return 'Click the heading of its column below and say what it holds and in which unit.'
  return mend
}
