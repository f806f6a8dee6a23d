import { existsSync, readFileSync } from 'node:fs'
import { basename, extname } from 'node:path'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import { readSetup, type SetupFile } from '../../io/index.ts'
import { fileProblem } from '../fileProblem.ts'

/** A setup as its author wrote it, and what it says. */
export interface SetupText extends SetupFile {
  readonly text: string
}

/** Reads a setup file; all its problems at once. */
export function readSetupText(file: string): Outcome<SetupText> {
  let text: string
  try {
    text = readFileSync(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  const read = readSetup(text, basename(file))
  return read.ok ? done({ ...read.value, text }) : read
}

/** Finds the setup of each record: the one that was named for all, else the one beside it, `drawer-b.setup.yaml` for `drawer-b.csv`. */
export function setupFinder(named: string | undefined): (record: string) => Outcome<SetupText> {
  const read = new Map<string, Outcome<SetupText>>()
  return (record) => {
    const file = named ?? setupBeside(record)
    if (file === undefined) return failed(setupMissing(record))
    const known = read.get(file) ?? readSetupText(file)
    read.set(file, known)
    return known
  }
}

/** The setup file that lies beside a record, where there is one. */
export function setupBeside(record: string): string | undefined {
  const stem = record.slice(0, record.length - extname(record).length)
  return ['yaml', 'yml'].map((ending) => `${stem}.setup.${ending}`).find(existsSync)
}

const setupMissing = (record: string): Problem => ({
  kind: 'setupMissing',
  class: 'wrongUse',
  place: { file: record },
  what: 'No setup is given, and none lies beside the record.',
  mend: 'Name it with --setup FILE, or call it as the record with .setup.yaml at the end.',
})
