import { heldTogether } from '../words/heldTogether.ts'

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** Text for an element or a quoted attribute of HTML. What people wrote is text, never markup. */
export const escapeHtml = (text: string): string =>
  heldTogether(text)
    .toWellFormed()
    .replace(/[&<>"']/g, (letter) => entities[letter])
    .replace(unprintable, '\ufffd')

/** Control characters that HTML forbids (HTML 13.2.3.5), all but tab and line ends. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const unprintable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/g
