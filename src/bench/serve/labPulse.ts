import { done, type Outcome } from '../../core/terms/index.ts'
import type { HistoryEntry, Lab } from '../../store/index.ts'

/** Reads on in the history of a lab: what is new since the last look, whoever wrote it, this process or another. */
export class LabPulse {
  readonly #lab: Lab
  readonly #people = new Map<string, number>()
  #last = 0

  constructor(lab: Lab) {
    this.#lab = lab
  }

  /** Number of the last line that was seen. What was worked out from the lab holds until it changes. */
  get last(): number {
    return this.#last
  }

  /** Whoever stands in the history, the last one first. */
  get people(): readonly string[] {
    return [...this.#people].sort(([, a], [, b]) => b - a).map(([name]) => name)
  }

  /** Lines since the last beat, oldest first. */
  async beat(): Promise<Outcome<readonly HistoryEntry[]>> {
    const news: HistoryEntry[] = []
    for (;;) {
      const page = await this.#lab.history.list({ after: this.#last })
      if (!page.ok) return page
      // Two beats may run at once: each line is told by the one that moves the mark.
      const fresh = page.value.filter(({ change }) => change.number > this.#last)
      if (fresh.length === 0) return done(news)
      for (const { change } of fresh) {
        this.#last = Math.max(this.#last, change.number)
        this.#people.set(change.who, change.number)
      }
      news.push(...fresh)
    }
  }
}
