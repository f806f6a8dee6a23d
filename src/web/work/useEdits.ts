import type { PaperHold } from '../api/usePaper.ts'
import { noteChange } from './undo.ts'

/** A way to change a paper that can be undone: `words` say the change, such as `load 5 N → 8 N`. */
export const useEdits =
  <T>(paper: PaperHold<T>): ((content: T, words: string) => void) =>
  (content, words) => {
    const before = paper.content
    paper.edit(content, words)
    noteChange({
      words,
      // An emptied paper cannot be kept: the first content stays.
      undo: () => before !== null && paper.edit(before, `undone: ${words}`),
      redo: () => paper.edit(content, words),
    })
  }
