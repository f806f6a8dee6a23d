/**
 * Width of a text in pixels, guessed without a font: shares of the size for narrow, usual and wide letters of a
 * wide sans-serif face, so that the guess errs on the long side. Holds to about a tenth; enough to keep words apart.
 */
export function textWidth(text: string, size: number): number {
  let shares = 0
  for (const letter of text) {
    if ("iIljtf.,:;'!|()[] ".includes(letter)) shares += 0.36
    else if ('mwMW%@–—±'.includes(letter)) shares += 0.92
    else if (letter >= 'A' && letter <= 'Z') shares += 0.7
    else shares += 0.6
  }
  return shares * size
}

/** The text cut to a width at a word's end, with an ellipsis where something was cut. */
export function fitted(text: string, size: number, width: number): string {
  if (textWidth(text, size) <= width) return text
  const letters = [...text]
  while (letters.length > 0 && textWidth(`${letters.join('')}…`, size) > width) letters.pop()
  const cut = letters.join('')
  const atWord = cut.lastIndexOf(' ')
  const kept = atWord > cut.length / 2 ? cut.slice(0, atWord) : cut
  return `${kept.replace(/[\s·,]+$/, '')}…`
}

/** The text broken at spaces into lines of at most `width`; a longer word is cut. */
export function wrapped(text: string, size: number, width: number): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/).filter((piece) => piece !== '')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && textWidth(longer, size) > width) {
      lines.push(line)
      line = fitted(word, size, width)
    } else line = line === '' ? fitted(word, size, width) : longer
  }
  return line === '' ? lines : [...lines, line]
}
