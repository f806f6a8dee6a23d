import type { Outcome, Outside } from '../../core/terms/index.ts'
import { type CopyReport, restoreLab } from '../../store/index.ts'
import { inLab } from './inLab.ts'
import type { LabCall } from './labCall.ts'

/** Copies a lab as it stands now into a new folder or an empty database; the copy is a lab itself. Others may go on working. */
export const backupLab = (to: string, call: LabCall, outside: Outside): Promise<Outcome<CopyReport>> =>
  inLab(call, outside, (lab) => lab.backup(to, outside.progress))

/** Makes a lab out of a backup, in a new folder or an empty database. The backup is only read. */
export const restoreBackup = (from: string, to: string, outside: Outside): Promise<Outcome<CopyReport>> =>
  restoreLab(from, to, { progress: outside.progress })
