import { useRef, useState } from 'react'
import { printQuantity } from '../../../../core/quantity/index.ts'
import { type RemarkKind, remarkWords } from '../../../../core/terms/index.ts'
import type { RecordAnswer } from '../../../../server/contract/index.ts'
import { refresh } from '../../../api/kept.ts'
import { Refusal } from '../../../api/request.ts'
import { noteChange } from '../../../work/undo.ts'
import { Stopped } from '../uploads/followJob.ts'
import { keepMends } from './mends.ts'
import { type Mends, noMends, type RemarkAnswer, withAnswer, withWindow } from './windowList.ts'

export type Window = { readonly from: number; readonly to: number }

/** The changes that people made to a record, and the way to make more; each is noted so that it can be undone. */
export interface MendsHold {
  readonly mends: Mends
  /** What goes on now, in words; undefined at rest. */
  readonly doing: string | undefined
  readonly refusal: Refusal | undefined
  /** Moves the window of a step, or puts back what the program chose. */
  readonly move: (step: number, window: Window | null, before: Window) => void
  readonly answer: (said: RemarkAnswer) => void
  readonly stop: () => void
}

type Turn = (seen: Mends) => Mends

export function useMends(record: string, papers: RecordAnswer['papers']): MendsHold {
  const paper = papers.filter(({ kind }) => kind === 'mends').sort((a, b) => b.version - a.version)[0]
  const mends = { ...noMends, ...(paper?.content as Mends | undefined) } // the contract of this kind of paper
  const [doing, setDoing] = useState<string>()
  const [refusal, setRefusal] = useState<Refusal>()
  const latest = useRef({ mends, version: 0 })
  latest.current = { mends, version: paper?.version ?? 0 }
  const stop = useRef<AbortController>(undefined)
  const send = async (turn: Turn, why: string): Promise<void> => {
    const stopping = new AbortController()
    stop.current = stopping
    const { signal } = stopping
    setRefusal(undefined)
    setDoing(`Keeping ${why}`)
    try {
      const { mends: seen, version } = latest.current
      const next = turn(seen)
      latest.current = { mends: next, version: version + 1 }
      await keepMends({ record, version, mends: next, why, signal, progress: setDoing })
    } catch (error) {
      refresh('/api/records')
      if (error instanceof Refusal) setRefusal(error)
      else if (!(error instanceof Stopped) && !signal.aborted) throw error
    } finally {
      setDoing(undefined)
    }
  }
  /** Sends a change and notes the way back. */
  const change = (words: string, there: Turn, back: Turn): void => {
    void send(there, words)
    noteChange({ words, undo: () => void send(back, `undone: ${words}`), redo: () => void send(there, words) })
  }
  const move = (step: number, window: Window | null, before: Window): void => {
    const was = mends.windows.find((one) => one.step === step)
    const earlier = was === undefined ? null : { from: was.from, to: was.to }
    const to = (place: Window | null) => (seen: Mends) => ({ ...seen, windows: withWindow(seen.windows, step, place) })
    change(windowWords(step, before, window), to(window), to(earlier))
  }
  const answer = (said: RemarkAnswer): void => {
    const { kind, step } = said
    const was = mends.answers?.find((one) => one.kind === kind && one.step === step)?.answer ?? ''
    const to = (text: string) => (seen: Mends) => ({
      ...seen,
      answers: withAnswer(seen.answers ?? [], { kind, step, answer: text }),
    })
    const words = remarkWords[kind as RemarkKind]?.words ?? kind
    change(`answer to “${words}”${step === null ? '' : `, step ${step}`}`, to(said.answer), to(was))
  }
  return { mends, doing, refusal, move, answer, stop: () => stop.current?.abort() }
}

/** "step 4: window 304.2 s to 318 s, before 304 s to 320 s". */
function windowWords(step: number, before: Window, after: Window | null): string {
  const print = ({ from, to }: Window): string =>
    `${printQuantity(from, 'time', { digits: 5, unit: 's' })} to ${printQuantity(to, 'time', { digits: 5, unit: 's' })}`
  return after === null
    ? `step ${step}: the program’s own window again, before ${print(before)}`
    : `step ${step}: window ${print(after)}, before ${print(before)}`
}
