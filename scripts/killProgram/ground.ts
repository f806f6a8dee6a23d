import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import manifest from '../../package.json' with { type: 'json' }
import { simulate } from '../../src/bench/index.ts'
import { addRecords, makeLab } from '../../src/bench/lab/index.ts'
import type { Outcome, Outside, Sha256 } from '../../src/core/terms/index.ts'
import { type Lab, openLab } from '../../src/store/index.ts'

/** What is to come out, however often the program is killed on the way. */
export interface Ground {
  readonly folder: string
  /** Folder of invented records with the setup of all of them. */
  readonly records: string
  readonly setup: string
  /** Names by the ids of the records. */
  readonly names: ReadonlyMap<Sha256, string>
  /** Checksums of the texts by the ids of the results. */
  readonly results: ReadonlyMap<Sha256, Sha256>
}

const outside: Outside = {
  now: () => new Date('2026-11-25T09:00:00Z'),
  progress: () => {},
  stop: { aborted: false },
  program: `kufe ${manifest.version}`,
}

/** The value, or an error with all that stood in its way. */
export function value<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  throw new Error(outcome.problems.map(({ kind, what }) => `${kind}: ${what}`).join('\n'))
}

/** Few draws, so that a run takes no longer than it must. */
export const words = ['--draws', '100'] as const
const said = { names: {}, facts: {}, reading: { units: [], columns: [], mappings: '' }, options: { bandDraws: 100 } }

/** Makes the records, and a lab of them without any kill to hold the others against. */
export async function layGround(folder: string, count: number): Promise<Ground> {
  const records = join(folder, 'records')
  mkdirSync(records)
  for (let seed = 1; seed <= count; seed++) {
    value(simulate({ folder: records, name: `run-${seed}`, seed, rows: 240, force: true }, outside))
  }
  const setup = join(records, 'run-1.setup.yaml')
  const place = join(folder, 'unharmed')
  await freshLab(place)
  const call = { place, who: 'MK', why: '' }
  value(await addRecords({ ...said, paths: [records], setup, threads: 1 }, call, { outside, onAdd: () => {} }))
  return inLab(place, async (lab) => ({ folder, records, setup, ...(await contentOf(lab)) }))
}

/** An empty lab. */
export const freshLab = async (place: string): Promise<unknown> =>
  value(await makeLab({ place, who: 'MK', why: '' }, 'Invented workshop', outside))

/** Opens a lab as the next start of the program would, and closes it. */
export async function inLab<T>(place: string, look: (lab: Lab) => Promise<T>): Promise<T> {
  const change = { at: outside.now().toISOString(), who: 'MK', why: 'looking after a kill' }
  await using lab = value(await openLab(place, { change, program: outside.program }))
  return await look(lab)
}

/** Everything in a lab that must not depend on kills: its records and its results. */
export async function contentOf(lab: Lab): Promise<Pick<Ground, 'names' | 'results'>> {
  const records = value(await lab.records.list())
  const results = value(await lab.results.list())
  return {
    names: new Map(records.map(({ id, name }) => [id, name])),
    results: new Map(results.map(({ id, sha256 }) => [id, sha256])),
  }
}
