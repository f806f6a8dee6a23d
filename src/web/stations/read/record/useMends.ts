import { useRef, useState } from 'react'
import { printQuantity } from '../../../../core/quantity/index.ts'
import { Refusal } from '../../../api/request.ts'
import { type PaperHold, recordPaper, usePaper } from '../../../api/usePaper.ts'
import { noteChange } from '../../../work/undo.ts'
import { Stopped } from '../uploads/followJob.ts'
import { keepMends, type Mends, noMends, withWindow } from './mends.ts'

export type Window = { readonly from: number; readonly to: number }

/** The changes that people made to a record, and the way to make more. */
export interface MendsHold {
  readonly paper: PaperHold<Mends>
  readonly mends: Mends
  /** What goes on now, in words; undefined at rest. */
  readonly doing: string | undefined
  readonly refusal: Refusal | undefined
  /** Moves the window of a step, or puts back what the program chose; noted so that it can be undone. */
  readonly move: (step: number, window: Window | null, before: Window) => void
  readonly stop: () => void
}

export function useMends(record: string): MendsHold {
  const paper = usePaper<Mends>(recordPaper(record, 'mends'))
  const mends = paper.content ?? noMends
  const [doing, setDoing] = useState<string>()
  const [refusal, setRefusal] = useState<Refusal>()
  const latest = useRef({ mends, version: paper.version })
  latest.current = { mends, version: paper.version }
  const stop = useRef<AbortController>(undefined)
  const send = async (step: number, window: Window | null, why: string): Promise<void> => {
    stop.current?.abort()
    stop.current = new AbortController()
    setRefusal(undefined)
    setDoing(`Reducing again with ${why}`)
    try {
      const { mends: seen, version } = latest.current
      const next = { ...seen, windows: withWindow(seen.windows, step, window) }
      await keepMends({ record, version, mends: next, why, signal: stop.current.signal, progress: setDoing })
    } catch (error) {
      if (error instanceof Refusal) setRefusal(error)
      else if (!(error instanceof Stopped) && !stop.current.signal.aborted) throw error
    } finally {
      setDoing(undefined)
    }
  }
  const move = (step: number, window: Window | null, before: Window): void => {
    const was = mends.windows.find((one) => one.step === step)
    const earlier = was === undefined ? null : { from: was.from, to: was.to }
    const why = windowWords(step, before, window)
    void send(step, window, why)
    noteChange({
      words: why,
      undo: () => void send(step, earlier, `undone: ${why}`),
      redo: () => void send(step, window, why),
    })
  }
  return { paper, mends, doing, refusal, move, stop: () => stop.current?.abort() }
}

/** "step 4: rows from 304.2 to 318 s count, before 304 to 320 s". */
function windowWords(step: number, before: Window, after: Window | null): string {
  const print = ({ from, to }: Window): string =>
    `${printQuantity(from, 'time', { digits: 5, unit: 's' })} to ${printQuantity(to, 'time', { digits: 5, unit: 's' })}`
  return after === null
    ? `step ${step}: the program's own window again, before ${print(before)}`
    : `step ${step}: window ${print(after)}, before ${print(before)}`
}
