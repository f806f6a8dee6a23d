import type { Remark } from '../../core/terms/index.ts'

/** What was found, then each remark with its next step; a remark that says what was said adds its next step alone. */
export function sentencesWith(sentences: readonly string[], remarks: readonly Remark[]): readonly string[] {
  const said = sentences.join(' ')
  const added = remarks.map(({ sentence, next }) => (said.includes(sentence) ? next : `${sentence} ${next}`))
  return [...new Set([...sentences, ...added])]
}
