import type { StudyView } from '../api/study.ts'
import type { PaperHold } from '../api/usePaper.ts'
import type { QuestionPaper } from '../question/questionPaper.ts'

/**
 * What a station gets. A station is one folder `src/web/stations/<name>/` with a default export in `index.tsx`, loaded when
 * somebody goes there. How it works with the rest of the bench:
 *
 * - **Data.** `useKept<T>('/api/…')` (api/kept.ts) gives `{ value, refusal, waiting }`, shared, and asked again by itself when the
 *   server says that something kept changed. While `waiting`, show `<Waiting what="Reading the record" stop={…} />`: it appears
 *   after 0.3 s. A `refusal` goes into `<Refused refusal={…} />`, put where its cause is. For anything that is not a plain
 *   read: `request(path, { method, body, headers, signal })` (api/request.ts), which throws `Refusal` or `Away`.
 * - **Papers.** `usePaper<T>(studyPaper(study.id, 'runSheet'))` (also `recordPaper`, `labPaper`) gives content and `edit(content,
 *   why)`. Edits are in the browser's store at once and on the server half a second later with If-Match; they survive a dead
 *   server and a closed tab. Show `<PaperLine paper={…} what="the run sheet" />` beside what is edited: it tells how saving stands
 *   and asks where another tab wrote in between. Use `useEdits(paper)` (work/useEdits.ts) instead of `paper.edit` so that `z` undoes.
 * - **Addresses.** `rest` is what follows the station in the path, `search` the switches. `go({ rest: [record, step] })`,
 *   `go({ search: { view: 'load' } }, 'replace')`, `<Link to={{ rest: [record] }}>`; nothing that can be seen lives in state alone.
 *   The drawer opens with `go({ search: { lab: 'rigs' } })`.
 * - **Keys.** `useKeys('Read', [{ key: 'ArrowRight', words: 'next point', press }])` (work/keys.ts); inner groups win, `?` lists them.
 * - **Numbers in sentences.** `<Quantity …>` (sentence/Quantity.tsx) for what a person may change, `<Computed …>`
 *   (sentence/Computed.tsx) for what the program computed: it can be asked "why?" by a click, Enter, or hovering.
 * - **Pictures.** `<Picture draw={(width, look) => curveFigure(data, { palette: look, width, id: 'curve' })} />` (pictures/Picture.tsx)
 *   draws at the width of its place and again when the look changes.
 * - **Words.** `<Term word="lambda">λ</Term>` (glossary/Term.tsx) opens the glossary; every remark kind is a word.
 * - **Empty.** `<Empty shows="…" todo={…}>{picture}</Empty>` (frame/Empty.tsx): what the station will show, drawn from the demo and
 *   marked so, with one thing to do.
 */
export interface StationProps {
  readonly study: StudyView
  /** The study's question, shared by the title and all stations. */
  readonly question: PaperHold<QuestionPaper>
  readonly rest: readonly string[]
  readonly search: Readonly<Record<string, string>>
}

/** What the Lab drawer (stations/lab) gets; `part` is which part is open: rigs, bodies, liquids … */
export interface DrawerProps {
  readonly study: StudyView | undefined
  readonly part: string
  readonly close: () => void
}
