import type { AddEvent, Added } from '../bench/lab/index.ts'
import { type Problem, schemaVersion } from '../core/terms/index.ts'
import { sayProblems } from './complain.ts'
import { codeOf, exitCodes } from './exitCodes.ts'
import { addEventInWords, addedInWords } from './show/addInWords.ts'
import type { Desk } from './verb.ts'

/** Puts the cursor of a terminal at the beginning of an empty line. */
export const clearedLine = '\r\u001b[K'

/** Tells what becomes of records that are added: to people at once, one line each; to machines as one document at the end. */
export class AddAnswer {
  readonly #desk: Desk
  readonly #json: boolean
  readonly #events: AddEvent[] = []

  constructor(desk: Desk, json: boolean) {
    this.#desk = desk
    this.#json = json
  }

  readonly onAdd = (event: AddEvent): void => {
    const { screen } = this.#desk
    this.#events.push(event)
    if (screen.watched) screen.err(clearedLine) // a line of progress may stand where the next word goes
    if ('problems' in event) sayProblems(placedProblems(event), screen)
    if (!this.#json) screen.out(addEventInWords(event, screen))
  }

  /** Sums up, and answers the exit code: that of the first problem, a fault of ours before all. */
  end(added: Added): number {
    const events = this.#events
    const document = { schemaVersion, events: events.map(eventDocument), ...added }
    this.#desk.screen.out(this.#json ? `${JSON.stringify(document, null, 2)}\n` : addedInWords(events, added))
    if (events.some(({ what }) => what === 'fault')) return exitCodes.fault.code
    const problems = events.flatMap((event) => ('problems' in event ? event.problems : []))
    return problems.length === 0 ? exitCodes.ok.code : codeOf(problems)
  }
}

/** An event for machines: the record by its id and name alone. */
export function eventDocument(event: AddEvent): object {
  if (!('record' in event)) return event
  const { id, name, version } = event.record
  return { ...event, record: { id, name, version } }
}

/** Problems that do not say in which file they are get its name. */
export function placedProblems(event: AddEvent & { readonly problems: readonly Problem[] }): readonly Problem[] {
  const file = 'file' in event ? event.file : event.record.name
  return event.problems.map((problem) => ({ ...problem, place: { file, ...problem.place } }))
}
