import { contactWords } from './contactWords.ts'
import { decidingWords } from './decidingWords.ts'
import { measuringWords } from './measuringWords.ts'
import remarkEntries from './remarkEntries.json' with { type: 'json' }
import type { Word } from './word.ts'

/** Remarks as words, out of docs/remarks.md (scripts/remarkEntries.ts): what one means, its limit, and what to do. */
const remarks: readonly Word[] = remarkEntries.map(({ kind, words, means, limit, act }) => ({
  key: kind,
  name: words,
  meaning: `${capital(means)} ${capital(act)}`,
  source: `Limit: ${limit}`,
}))

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** The glossary in its parts. */
export const wordParts: readonly { readonly name: string; readonly words: readonly Word[] }[] = [
  { name: 'Measuring', words: measuringWords },
  { name: 'Contact and film', words: contactWords },
  { name: 'Deciding', words: decidingWords },
  { name: 'Remarks', words: remarks },
]

/** Every word that the bench uses. */
export const words: readonly Word[] = wordParts.flatMap((part) => part.words)
