import { done, type Outcome } from '../../core/terms/index.ts'
import { readSetup, type SetupFile } from '../../io/index.ts'
import type { KeptResult, Lab } from '../../store/index.ts'
import { readResult } from '../readResult.ts'
import type { ReducedRecord } from '../reducedRecord.ts'

/** A kept result with its text and the setup that it was made with. */
export interface ReadKept {
  readonly reduced: ReducedRecord
  /** As it is kept: what "kufe reduce --json" printed. */
  readonly text: string
  readonly setup: SetupFile & { readonly text: string }
}

/** Fetches a result as it was kept; nothing is computed. Refuses where its text or its setup is not what was kept. */
export async function readKept(lab: Lab, { id, origin }: KeptResult): Promise<Outcome<ReadKept>> {
  const text = await lab.results.text(id)
  if (!text.ok) return text
  const setup = await lab.setups.get(origin.setup)
  if (!setup.ok) return setup
  const read = readSetup(setup.value.text, `setup ${origin.setup.slice(0, 12)}`)
  if (!read.ok) return read
  const reduced = readResult(text.value, read.value.setup)
  return reduced.ok
    ? done({ reduced: reduced.value, text: text.value, setup: { ...read.value, text: setup.value.text } })
    : reduced
}
