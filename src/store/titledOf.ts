import { attempt } from './attempt.ts'
import type { Engine } from './engine.ts'
import { checkSeen, notThere } from './notThere.ts'
import type { TitledKind, TitledThings } from './titled.ts'
import { addTitled, latestTitled, putTitled, titledVersions } from './titledRows.ts'

/** The lab, the studies or the samples of a lab. */
export const titledThings = (engine: Engine, kind: TitledKind): TitledThings => ({
  add: (thing, change) =>
    attempt(engine.place, () =>
      engine.write(async (writing) => {
        await addTitled(writing, { kind, thing, change })
        return latestTitled(writing, kind, thing.id)
      }),
    ),
  correct: (id, titles, correction) =>
    attempt(engine.place, () =>
      engine.write(async (writing) => {
        const { version, title, note, facts } = await latestTitled(writing, kind, id)
        checkSeen(`${kind} ${id}`, version, correction.supersedes)
        const whole = { title: titles.title ?? title, note: titles.note ?? note, facts: titles.facts ?? facts }
        await putTitled(writing, { kind, id, version: version + 1, titles: whole, change: correction })
        return latestTitled(writing, kind, id)
      }),
    ),
  get: (id) => attempt(engine.place, () => latestTitled(engine.read, kind, id)),
  list: () => attempt(engine.place, () => titledVersions(engine.read, kind, { latest: true })),
  versions: (id) =>
    attempt(engine.place, async () => {
      const all = await titledVersions(engine.read, kind, { id })
      return all.length > 0 ? all : notThere(kind, id)
    }),
})
