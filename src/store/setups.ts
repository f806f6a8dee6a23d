import type { Outcome, Place, Sha256 } from '../core/terms/index.ts'
import { attempt } from './attempt.ts'
import { type Change, type ChangeNote, checkedChange } from './change.ts'
import { checksum } from './checksum.ts'
import type { Engine } from './engine.ts'
import { note } from './history.ts'
import { notThere } from './notThere.ts'
import { plainText } from './plainText.ts'
import type { Reading } from './schema/tables.ts'
import { refuse } from './storeProblem.ts'

/** A setup as its author wrote it, comments and all. Another text is another setup. */
export interface KeptSetup {
  readonly sha256: Sha256
  readonly text: string
  readonly change: ChangeNote
}

export interface Setups {
  /** Keeps the YAML text; a text that is there already is recognised. */
  add(text: string, change: Change): Promise<Outcome<{ readonly setup: KeptSetup; readonly isNew: boolean }>>
  /** Refuses with `setupChanged` when the text is not what was kept. */
  get(sha256: Sha256): Promise<Outcome<KeptSetup>>
  /** All checksums, in the order in which they were added. */
  list(): Promise<Outcome<Sha256[]>>
}

export const setupsOf = (engine: Engine): Setups => ({
  add: (text, said) =>
    attempt(engine.place, async () => {
      const sha256 = checksum(plainText(text, 'setup'))
      const known = await find(engine.read, engine.place, sha256)
      if (known !== undefined) return { setup: known, isNew: false }
      return engine.write(async (writing) => {
        const meanwhile = await find(writing, engine.place, sha256)
        if (meanwhile !== undefined) return { setup: meanwhile, isNew: false }
        const change = checkedChange(said, 'created')
        const [number] = await note(writing, change, [{ what: 'created', kind: 'setup', id: sha256, version: null }])
        await writing.insertInto('setups').values({ sha256, text, change: number }).execute()
        return { setup: { sha256, text, change: { ...change, number } }, isNew: true }
      })
    }),
  get: (sha256) =>
    attempt(engine.place, async () => (await find(engine.read, engine.place, sha256)) ?? notThere('setup', sha256)),
  list: () =>
    attempt(engine.place, async () => {
      const rows = await engine.read.selectFrom('setups').select('sha256').orderBy('change').execute()
      return rows.map((row) => row.sha256)
    }),
})

async function find(on: Reading, place: Place, sha256: Sha256): Promise<KeptSetup | undefined> {
  const row = await on
    .selectFrom('setups as s')
    .innerJoin('history as h', 'h.seq', 's.change')
    .select(['s.text', 'h.seq', 'h.at', 'h.who', 'h.why'])
    .where('s.sha256', '=', sha256)
    .executeTakeFirst()
  if (row === undefined) return undefined
  if (checksum(row.text) !== sha256) refuse('setupChanged', setupChanged(place, sha256))
  return { sha256, text: row.text, change: { number: row.seq, at: row.at, who: row.who, why: row.why } }
}

/** Words for a setup whose text is not the one that was kept. */
export const setupChanged = (place: Place, sha256: Sha256) => ({
  place: { ...place, cell: sha256 },
  what: `The text of setup ${sha256} is not the one that was kept.`,
  mend: 'Restore the lab from a backup into a new place, and find out who changed it.',
})
