import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { fillPair, type OwnThings } from '../core/plan/index.ts'
import { done, failed, type Outcome } from '../core/terms/index.ts'
import { readSetup, writeSetup } from '../io/index.ts'
import { fileProblem } from './fileProblem.ts'

/** A setup with the numbers that tables and own things know. */
export interface FilledSetup {
  readonly text: string
  /** One sentence for each value that was taken over, with its source. */
  readonly taken: readonly string[]
}

/**
 * Closes gaps of a setup by the names of its bodies and its liquid. The values go into the text, so that a result follows from its
 * setup alone, whatever the tables say later.
 */
export async function fillSetup(file: string, own: OwnThings): Promise<Outcome<FilledSetup>> {
  let text: string
  try {
    text = await readFile(file, 'utf8')
  } catch (error) {
    return failed(fileProblem(error, file, 'read'))
  }
  const name = basename(file)
  const read = readSetup(text, name)
  if (!read.ok) return read
  const { setup, columns } = read.value
  const filled = fillPair(setup, own)
  if (!filled.ok) return failed(...filled.problems.map((one) => ({ ...one, place: { file: name, ...one.place } })))
  const { pair, liquid, taken } = filled.value
  const whole = { ...setup, pair, ...(liquid === undefined ? {} : { liquid }) }
  const heading = [`From ${name}, with what tables and own things know:`, ...taken]
  return done({ text: writeSetup(whole, { columns, heading: taken.length === 0 ? [] : heading }), taken })
}
