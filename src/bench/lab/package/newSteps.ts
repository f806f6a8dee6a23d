import { done, type Outcome, type Sha256 } from '../../../core/terms/index.ts'
import type { HistoryEntry, Lab } from '../../../store/index.ts'
import type { ImportStep } from './importSteps.ts'

export interface NewSteps {
  /** The lab is that of the package so far: what follows goes on with the same history. */
  readonly isSame: boolean
  readonly steps: readonly ImportStep[]
}

/** The steps that a lab does not have yet. Of what is there already under the same id, nothing is changed. */
export async function newSteps(lab: Lab, steps: readonly ImportStep[]): Promise<Outcome<NewSteps>> {
  const history: HistoryEntry[] = []
  for (;;) {
    const page = await lab.history.list({ after: history.at(-1)?.change.number })
    if (!page.ok) return page
    if (page.value.length === 0) break
    history.push(...page.value)
  }
  const isSame = history.length <= steps.length && history.every((entry, i) => isEqual(entry, steps[i].entry))
  if (isSame) return done({ isSame, steps: steps.slice(history.length) })
  const results = await lab.results.list()
  if (!results.ok) return results
  const sums = new Map(results.value.map(({ id, sha256 }) => [id, sha256]))
  return done({ isSame, steps: withoutKnown(steps, history, sums) })
}

/**
 * Without what happened already, and what came into being otherwise: that has a history of its own. A result of the same
 * origin with another text stays among them, so that the store can refuse it.
 */
function withoutKnown(
  steps: readonly ImportStep[],
  history: readonly HistoryEntry[],
  sums: ReadonlyMap<Sha256, Sha256>,
): ImportStep[] {
  const lineOf = ({ what, kind, id, version, change: { at, who, why } }: HistoryEntry): string =>
    JSON.stringify([what, kind, id, version, at, who, why])
  const thingOf = ({ kind, id }: HistoryEntry): string => `${kind} ${id}`
  const ours = new Set(steps.map(({ entry }) => lineOf(entry)))
  const happened = new Set(history.map(lineOf))
  const others = new Set(history.filter((entry) => entry.what === 'created' && !ours.has(lineOf(entry))).map(thingOf))
  return steps.filter(({ entry, deed }) => {
    if (entry.kind === 'lab') return false
    if (deed.kind === 'result') return sums.get(entry.id) !== deed.sha256
    return !happened.has(lineOf(entry)) && !others.has(thingOf(entry))
  })
}

/** The same line; its number may differ, since a package can hold a part of a lab. */
const isEqual = (a: HistoryEntry, b: HistoryEntry): boolean =>
  a.what === b.what &&
  a.kind === b.kind &&
  a.id === b.id &&
  a.version === b.version &&
  a.change.at === b.change.at &&
  a.change.who === b.change.who &&
  a.change.why === b.change.why
