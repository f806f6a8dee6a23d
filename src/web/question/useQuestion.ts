import { useMemo, useState } from 'react'
import type { PlanQuestion } from '../../core/plan/index.ts'
import type { PaperHold } from '../api/usePaper.ts'
import { noteChange } from '../work/undo.ts'
import { questionKey } from './questionKeys.ts'
import { type FlatPaper, flatPaper, nestedPaper, type QuestionPaper } from './questionPaper.ts'
import { type PaperTrouble, quantityAt, readPaper } from './readPaper.ts'
import { completePaper, type FixtureWords, starterFixture } from './starterPaper.ts'
import { written } from './written.ts'

/** The question as sentences and pictures use it. */
export interface QuestionHold {
  /** Everything that a plan needs, with the value under a moving hand. */
  readonly question: PlanQuestion
  readonly troubles: readonly PaperTrouble[]
  /** True while a hand moves a value: pictures follow, what takes longer rests. */
  readonly moving: boolean
  /** All keys that have a value, said or assumed. */
  readonly paths: readonly string[]
  readonly text: (path: string) => string | undefined
  /** SI, with what a moving hand holds; the program's default where nothing is said. */
  readonly value: (path: string) => number | undefined
  /** Nobody has said or confirmed it. */
  readonly assumed: (path: string) => boolean
  /** Sets a quantity, SI, or takes a key out with undefined. `typed` keeps the unit as somebody wrote it. */
  readonly set: (path: string, value: number | undefined, typed?: string) => void
  readonly setText: (path: string, text: string | undefined) => void
  readonly setFixture: (kind: FixtureWords) => void
  readonly preview: (path: string, value: number | undefined) => void
  /** All defaults of these paths are right. */
  readonly confirm: (paths: readonly string[]) => void
}

const listOf = (flat: FlatPaper): ReadonlySet<string> =>
  new Set(
    (flat.get('assumed') ?? '')
      .split(',')
      .map((path) => path.trim())
      .filter((path) => path !== ''),
  )

/** The study's question and the ways to change it; every change is kept, and can be undone key by key. */
export function useQuestion(paper: PaperHold<QuestionPaper>): QuestionHold {
  const { content } = paper
  const [under, setUnder] = useState<ReadonlyMap<string, number>>(new Map())
  const { said, full } = useMemo(() => {
    const flat = flatPaper(content)
    return { said: flat, full: completePaper(flat) }
  }, [content])
  const { question, troubles } = useMemo(() => readPaper(full, under), [full, under])
  const assumedList = listOf(said)

  const change = (entries: ReadonlyMap<string, string | undefined>, words: string, open = nothing): void => {
    const before = new Map([...entries.keys()].map((path) => [path, paperNow(paper).get(path)]))
    const listed = new Map([...entries.keys()].map((path) => [path, isAssumed(paperNow(paper), path)]))
    apply(paper, { entries, assumed: open }, words)
    noteChange({
      words,
      undo: () => apply(paper, { entries: before, assumed: listed }, `undone: ${words}`),
      redo: () => apply(paper, { entries, assumed: open }, words),
    })
  }
  return {
    question,
    troubles,
    moving: under.size > 0,
    paths: [...full.keys()],
    text: (path) => full.get(path),
    value: (path) => {
      const text = full.get(path)
      const read = text === undefined ? undefined : quantityAt(path, text)
      return under.get(path) ?? (read?.ok === true ? read.value : questionKey(path).otherwise)
    },
    assumed: (path) => !said.has(path) || assumedList.has(path),
    set: (path, value, typed) => {
      const next = value === undefined ? undefined : (typed ?? written(path, value))
      const old = full.get(path) ?? 'not said'
      if (next === said.get(path) && !assumedList.has(path)) return
      change(new Map([[path, next]]), `${questionKey(path).name} ${old} → ${next ?? 'not said'}`)
    },
    setText: (path, text) => {
      if (text === said.get(path) && !assumedList.has(path)) return
      change(new Map([[path, text]]), `${wordsOf(path)} ${full.get(path) ?? 'not said'} → ${text ?? 'not said'}`)
    },
    setFixture: (kind) => {
      const gone = [...full.keys()].filter((path) => path.startsWith('fixture.'))
      const sizes = starterFixture(kind)
      const entries = new Map<string, string | undefined>([...gone.map((path) => [path, undefined] as const), ...sizes])
      const open = new Map([...sizes.keys()].map((path) => [path, path !== 'fixture.kind']))
      change(entries, `fixture ${full.get('fixture.kind')} → ${kind}`, open)
    },
    preview: (path, value) => setUnder(value === undefined ? new Map() : new Map([[path, value]])),
    confirm: (paths) => {
      const open = paths.filter((path) => full.has(path) && (!said.has(path) || assumedList.has(path)))
      change(new Map(open.map((path) => [path, full.get(path)])), `${open.length} defaults confirmed`)
    },
  }
}

const nothing: ReadonlyMap<string, boolean> = new Map()

const wordsOf = (path: string): string =>
  path.replace(/^.*\./, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)

interface Edit {
  readonly entries: ReadonlyMap<string, string | undefined>
  /** Keys that go back into the list of what nobody confirmed; those that are not named leave it. */
  readonly assumed: ReadonlyMap<string, boolean>
}

const paperNow = (paper: PaperHold<QuestionPaper>): FlatPaper => flatPaper(paper.latest())

const isAssumed = (flat: FlatPaper, path: string): boolean => !flat.has(path) || listOf(flat).has(path)

/** Writes entries into the paper as it stands now: what others changed meanwhile stays. */
function apply(paper: PaperHold<QuestionPaper>, { entries, assumed }: Edit, why: string): void {
  const now = paperNow(paper)
  const full = new Map(completePaper(now))
  const open = new Set([...full.keys()].filter((path) => path !== 'assumed' && isAssumed(now, path)))
  for (const [path, value] of entries) {
    if (value === undefined) full.delete(path)
    else full.set(path, value)
    if (assumed.get(path) === true && value !== undefined) open.add(path)
    else open.delete(path)
  }
  // A key that was taken out and is needed all the same goes back to what a new study starts from.
  for (const [path, value] of completePaper(full)) {
    if (full.has(path)) continue
    full.set(path, value)
    open.add(path)
  }
  if (open.size === 0) full.delete('assumed')
  else full.set('assumed', [...open].filter((path) => full.has(path)).join(', '))
  paper.edit(nestedPaper(full), why)
}
