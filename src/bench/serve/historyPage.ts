import { done, type Outcome } from '../../core/terms/index.ts'
import type { HistoryEntry } from '../../store/index.ts'
import type { HeldLab } from './heldLab.ts'

/** A part of the history. */
export interface HistoryWish {
  /** Only lines after this number. */
  readonly after: number
  readonly limit: number
  /** The last lines instead, the newest first. */
  readonly newest: boolean
}

/** A part of the history of the lab. */
export async function labHistoryPage(
  { lab, pulse }: HeldLab,
  { after, limit, newest }: HistoryWish,
): Promise<Outcome<readonly HistoryEntry[]>> {
  const beat = await pulse.beat()
  if (!beat.ok) return beat
  if (!newest) return lab.history.list({ after, limit })
  const page = await lab.history.list({ after: Math.max(after, pulse.last - limit), limit })
  return page.ok ? done([...page.value].reverse()) : page
}
