import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { onTestFinished } from 'vitest'
import { type AddEvent, type AddWords, addRecords, type LabCall, makeLab } from '../../../src/bench/lab/index.ts'
import type { Outcome, Outside } from '../../../src/core/terms/index.ts'
import { type Lab, openLab } from '../../../src/store/index.ts'

/** A made-up outside whose clock stands still. */
export const outside: Outside = {
  now: () => new Date('2026-11-25T09:00:00Z'),
  progress: () => {},
  stop: { aborted: false },
  program: 'kufe 0.0.0-test',
}

/** The same program in another version. */
export const later: Outside = { ...outside, program: 'kufe 0.0.1-test' }

/** The value, or a failure of the test that shows the problems. */
export function value<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  throw new Error(outcome.problems.map(({ kind, what, mend }) => `${kind}: ${what} ${mend}`).join('\n'))
}

/** Kinds of the problems; empty where all went well. */
export const kinds = (outcome: Outcome<unknown>): string[] =>
  outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)

/** A folder that goes with the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'kufe-lab-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** A new lab in a folder that goes with the test. */
export async function freshLab(): Promise<LabCall> {
  const call = { place: join(temporaryFolder(), 'lab'), who: 'MK', why: '' }
  value(await makeLab(call, 'Lacquer workshop (invented)', outside))
  return call
}

/** Looks into a lab. */
export async function look<T>(call: LabCall, act: (lab: Lab) => Promise<T>): Promise<T> {
  const change = { at: outside.now().toISOString(), who: call.who, why: call.why }
  await using lab = value(await openLab(call.place, { change, program: outside.program }))
  return await act(lab)
}

/** Nothing said but few draws, so that fits are quick. */
export const quick: AddWords = {
  names: {},
  facts: {},
  reading: { units: [], columns: [], mappings: '' },
  options: { bandDraws: 100 },
  threads: 0,
}

/** Adds files; what was told, with the files by their names alone. */
export async function add(
  call: LabCall,
  paths: readonly string[],
  more: Partial<AddWords> & { readonly outside?: Outside } = {},
) {
  const events: AddEvent[] = []
  const { outside: own = outside, ...words } = more
  const done = await addRecords({ ...quick, ...words, paths }, call, {
    outside: own,
    onAdd: (event) => void events.push(event),
  })
  const told = events.map((event) => `${event.what} ${basename('file' in event ? event.file : event.record.name)}`)
  return { done, events, told }
}

/** Demo records with their setups beside them, copied to a folder of their own. */
export function demoFolder(...names: readonly string[]): string {
  const folder = temporaryFolder()
  for (const name of names) {
    for (const ending of ['csv', 'setup.yaml']) {
      cpSync(`examples/lacquer/${name}.${ending}`, join(folder, `${name}.${ending}`))
    }
  }
  return folder
}
