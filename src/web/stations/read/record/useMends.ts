import { useRef, useState } from 'react'
import { printQuantity } from '../../../../core/quantity/index.ts'
import { type RemarkKind, remarkWords } from '../../../../core/terms/index.ts'
import type { RecordAnswer } from '../../../../server/contract/index.ts'
import { onReturn } from '../../../api/connection.ts'
import { refresh } from '../../../api/kept.ts'
import { Away, Refusal } from '../../../api/request.ts'
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
  // As the server has it, and as this page has made it since: whichever is newer.
  const kept = useRef({ mends, version: 0 })
  const own = useRef({ mends, version: -1 })
  kept.current = { mends, version: paper?.version ?? 0 }
  const stop = useRef<AbortController>(undefined)
  const line = useRef(Promise.resolve())
  const send = async (turn: Turn, why: string): Promise<void> => {
    const stopping = new AbortController()
    stop.current = stopping
    const { signal } = stopping
    setRefusal(undefined)
    setDoing(`Keeping ${why}`)
    try {
      const { mends: seen, version } = own.current.version >= kept.current.version ? own.current : kept.current
      const next = turn(seen)
      await keepMends({ record, version, mends: next, why, signal, progress: setDoing })
      own.current = { mends: next, version: version + 1 }
    } catch (error) {
      own.current = { mends: noMends, version: -1 }
      if (error instanceof Away) {
        setDoing(`The server is away; kept in this page until it is back: ${why}`)
        await serverBack(signal)
        if (!signal.aborted) return send(turn, why)
      }
      refresh('/api/records')
      if (error instanceof Refusal) setRefusal(error)
      else if (!(error instanceof Stopped || error instanceof Away || signal.aborted)) throw error
    } finally {
      setDoing(undefined)
    }
  }
  /** One after the other: each change rests on what the one before made. */
  const inTurn = (turn: Turn, why: string): void => {
    line.current = line.current.then(() => send(turn, why))
  }
  /** Sends a change and notes the way back. */
  const change = (words: string, there: Turn, back: Turn): void => {
    inTurn(there, words)
    noteChange({ words, undo: () => inTurn(back, `undone: ${words}`), redo: () => inTurn(there, words) })
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

/** Settles when the server answers again, or when somebody stops waiting. */
const serverBack = (signal: AbortSignal): Promise<void> =>
  new Promise((resolve) => {
    const letGo = onReturn(() => {
      letGo()
      resolve()
    })
    signal.addEventListener('abort', () => resolve())
  })

/** "step 4: window 304.2 s to 318 s, before 304 s to 320 s". */
function windowWords(step: number, before: Window, after: Window | null): string {
  const print = ({ from, to }: Window): string =>
    `${printQuantity(from, 'time', { digits: 5, unit: 's' })} to ${printQuantity(to, 'time', { digits: 5, unit: 's' })}`
  return after === null
    ? `step ${step}: the program’s own window again, before ${print(before)}`
    : `step ${step}: window ${print(after)}, before ${print(before)}`
}
