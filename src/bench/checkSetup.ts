import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { type FixtureGeometry, fixtureGeometry } from '../core/fixture/index.ts'
import { done, failed, type Outcome } from '../core/terms/index.ts'
import { readSetup, type SetupFile } from '../io/index.ts'
import { fileProblem } from './fileProblem.ts'

/** A setup that holds together, and what follows from its fixture. */
export interface CheckedSetup extends SetupFile {
  readonly geometry: FixtureGeometry
}

/** Reads a setup file and works out its fixture; all problems of the file at once. */
export async function checkSetup(file: string): Promise<Outcome<CheckedSetup>> {
  let text: string
  try {
    text = await readFile(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  const read = readSetup(text, basename(file))
  return read.ok ? done({ ...read.value, geometry: fixtureGeometry(read.value.setup.fixture) }) : read
}
