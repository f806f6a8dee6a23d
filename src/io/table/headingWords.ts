import type { ChannelName } from '../../core/terms/index.ts'
import { compoundEnds, otherBeginnings, otherMeanings, stepWords, type Term, terms } from './vocabulary.ts'

/** One sense of a heading's words. */
export interface WordMatch {
  readonly channel: ChannelName
  readonly term: Term
  /** The word or symbol of the vocabulary that was found. */
  readonly found: string
  /** All that the heading says, and not only a part of it. */
  readonly whole: boolean
}

/** What the words of a heading may mean. */
export interface WordMeaning {
  readonly matches: readonly WordMatch[]
  /** Why the column is nevertheless not the measured channel: "what was commanded …". */
  readonly other: string | undefined
  /** A word for time, but of the clock of one step. */
  readonly stepClock: boolean
}

/** Looks up the longest words that the heading holds; symbols such as M or T count only when they stand alone. */
export function meaningOf(words: string): WordMeaning {
  const symbol = words.normalize('NFC').replace(/\s+/g, '').replace(/[{}]/g, '')
  const bySymbol = terms
    .filter((term) => term.symbols.includes(symbol))
    .map((term) => ({ channel: term.channel, term, found: symbol, whole: true }))
  const folded = foldWords(words)
  const tokens = folded.split(' ')
  // "Interval time" speaks of a time, and only "interval number" of the step.
  const beside = tokens.filter((token) => !stepWords.includes(token)).join(' ')
  const besides = beside === folded ? [] : longest(beside).map((match) => ({ ...match, whole: false }))
  const byWord = besides.length > 0 ? besides : longest(folded)
  const matches = byWord.some(({ whole }) => whole) || bySymbol.length === 0 ? [...byWord, ...bySymbol] : bySymbol
  const other =
    otherMeanings.find(({ words: some }) => tokens.some((token) => some.includes(token)))?.meaning ??
    otherBeginnings.find(({ begin }) => tokens.some((token) => token.startsWith(begin)))?.meaning
  return { matches, other, stepClock: tokens.some((token) => stepWords.includes(token)) }
}

/** Lower case, without umlauts and punctuation, single blanks. */
export function foldWords(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/ß/g, 'ss')
    .replace(/([a-z])([A-Z][a-z])/g, '$1 $2')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}

function longest(folded: string): WordMatch[] {
  const padded = ` ${folded} `
  let most = 0
  let matches: WordMatch[] = []
  for (const term of terms) {
    for (const word of term.words) {
      if (word.length < most || !padded.includes(` ${word} `)) continue
      if (word.length > most) matches = []
      most = word.length
      matches.push({ channel: term.channel, term, found: word, whole: word === folded })
    }
  }
  return matches.length > 0 ? matches : compound(folded)
}

function compound(folded: string): WordMatch[] {
  const end = compoundEnds.find((word) => folded.split(' ').some((token) => token.endsWith(word)))
  if (end === undefined) return []
  return terms
    .filter((term) => term.words.includes(end))
    .map((term) => ({ channel: term.channel, term, found: end, whole: false }))
}
