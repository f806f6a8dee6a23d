import type { CopyReport } from '../bench/lab/index.ts'
import { schemaVersion } from '../core/terms/index.ts'
import { sayProblems } from './complain.ts'
import { exitCodes } from './exitCodes.ts'
import type { Desk } from './verb.ts'

/** What a copy holds. Bytes that the original had lost are a finding: the copy is as whole as it can be. */
export function answerCopy(copied: CopyReport, { screen }: Desk, json: boolean): number {
  const { where, raws, bytes, problems } = copied
  sayProblems(problems, screen)
  const lost = problems.length === 0 ? '' : ` ${problems.length} could not be copied: they were damaged before.`
  const words = `${where}: ${raws.toLocaleString('en')} ${raws === 1 ? 'record' : 'records'}, ${bytes.toLocaleString('en')} bytes, each held against its checksum.${lost}\n`
  screen.out(json ? `${JSON.stringify({ schemaVersion, ...copied }, null, 2)}\n` : words)
  return problems.length === 0 ? exitCodes.ok.code : exitCodes.finding.code
}
