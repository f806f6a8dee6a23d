import { plainText } from './plainText.ts'
import { refuse } from './storeProblem.ts'

/** Who changes the lab, when and why. The store has no clock and knows no users, so each call that changes something says it. */
export interface Change {
  /** UTC, as `Date.toISOString` writes it. */
  readonly at: string
  readonly who: string
  /** May be empty where something is new; a correction needs a reason. */
  readonly why: string
}

/** A change as the history holds it. Numbers count up by one over the whole lab. */
export interface ChangeNote extends Change {
  readonly number: number
}

const instant = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/

/** The same change with its texts looked at. Throws RangeError for a time that no clock of ours writes. */
export function checkedChange({ at, who, why }: Change, kind: 'created' | 'corrected'): Change {
  if (!instant.test(at)) throw new RangeError(`at must be UTC as in 2026-11-25T09:30:00.000Z, got ${at}`)
  if (who.trim() === '') throw new RangeError('who must name somebody, got an empty text')
  if (kind === 'corrected' && why.trim() === '') {
    refuse('notUsable', {
      place: { name: 'why' },
      what: 'A correction needs a reason.',
      mend: 'Say in a few words why it is corrected.',
    })
  }
  return { at, who: plainText(who, 'who'), why: plainText(why, 'why') }
}
