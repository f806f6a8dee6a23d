/** Foreign text for a terminal: without control characters, cut to a length. */
export function printable(text: string, most = 120): string {
  const letters = [...text].map((letter) => (/[\p{C}\p{Zl}\p{Zp}]/u.test(letter) ? '·' : letter))
  return letters.length <= most ? letters.join('') : `${letters.slice(0, most - 1).join('')}…`
}
