import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inject, onTestFinished } from 'vitest'
import { serverAt } from '../../scripts/postgresForTests.ts'
import type { Outcome } from '../../src/core/terms/index.ts'
import { type Change, type Lab, type NewTitled, newLab, type Opening, openLab } from '../../src/store/index.ts'

/** One kind of database under test. */
interface TestedEngine {
  readonly name: 'sqlite' | 'postgres'
  /** A place for a new lab. */
  readonly place: () => Promise<string>
}

const postgres = inject('postgres')

/** Why PostgreSQL is not tested; undefined where it is. */
export const withoutPostgres = 'why' in postgres ? postgres.why : undefined

const narrowed = process.env.KUFE_TEST_ENGINE

/** A lab in a folder, for what only a folder can suffer. */
export const folderEngine: TestedEngine = { name: 'sqlite', place: async () => join(temporaryFolder(), 'lab') }

/** Both engines, or the one that the environment variable KUFE_TEST_ENGINE names. */
export const engines: readonly TestedEngine[] = [
  folderEngine,
  ...('why' in postgres ? [] : [{ name: 'postgres' as const, place: serverAt(postgres.address).newDatabase }]),
].filter(({ name }) => narrowed === undefined || narrowed === name)

/** A folder that goes with the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-store-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** A change at a second of a made-up day. */
export const change = (second = 0, why = 'first day'): Change => ({
  at: new Date(Date.UTC(2026, 10, 25, 9, 0, second)).toISOString(),
  who: 'Ada',
  why,
})

export const opening: Opening = { change: change(), program: 'kufe 0.1.0' }

/** The value, or a failure of the test that shows the problems. */
export function value<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  throw new Error(outcome.problems.map(({ kind, what, mend }) => `${kind}: ${what} ${mend}`).join('\n'))
}

/** Kinds of the problems; empty where all went well. */
export const kinds = (outcome: Outcome<unknown>): string[] =>
  outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)

/** The lab of the made-up workshop. */
export const workshop: NewTitled = { id: 'workshop', title: 'Lacquer workshop (invented)' }

/** Makes a lab that is closed with the test. */
export async function freshLab(where: string): Promise<Lab> {
  return closing(value(await newLab(where, workshop, opening)))
}

/** Opens a lab that is closed with the test. */
export async function openedLab(where: string, more: Partial<Opening> = {}): Promise<Lab> {
  return closing(value(await openLab(where, { ...opening, ...more })))
}

function closing(lab: Lab): Lab {
  onTestFinished(() => lab.close())
  return lab
}

/** Bytes of a made-up raw file. */
export const rawBytes = (number: number, length = 200): Uint8Array =>
  Uint8Array.from({ length }, (_, i) => (i * 31 + number * 17 + (i >> 8)) % 251)
