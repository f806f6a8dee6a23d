import { failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import type { KeptRecord, Lab, ResultKind } from '../../store/index.ts'
import type { Given } from '../given.ts'
import type { ComputedResult } from './computeResult.ts'
import type { Computing } from './computing.ts'
import { rawSource } from './rawSource.ts'

/** What is to be computed of a record that the lab keeps. */
export interface KeptTask {
  readonly record: KeptRecord
  /** Name of the file as it came: a result bears it, whatever the record is called later. */
  readonly file: string
  /** Checksum of the setup; null where nobody has said. */
  readonly setup: string | null
  readonly given: Given
  readonly kind: ResultKind
  readonly program: string
}

/** Computes a result from what the lab keeps. Mistakes of ours are thrown. */
export async function computeKept(
  lab: Lab,
  task: KeptTask,
  by: Pick<Computing, 'compute'>,
): Promise<Outcome<ComputedResult>> {
  const { record, file, given, kind, program } = task
  if (task.setup === null) return failed(withoutSetup(record))
  const setup = await lab.setups.get(task.setup)
  if (!setup.ok) return setup
  const raw = await rawSource(lab, record)
  if (!raw.ok) return raw
  try {
    return await by.compute({ source: raw.value.source, file, setupText: setup.value.text, given, kind, program })
  } finally {
    raw.value.dispose()
  }
}

const withoutSetup = ({ id, name }: KeptRecord): Problem => ({
  kind: 'setupMissing',
  class: 'badInput',
  place: { name, cell: id },
  what: 'Nobody has said with which setup this record was measured.',
  mend: `Say it: kufe amend ${id.slice(0, 12)} --setup FILE --why "…".`,
})
