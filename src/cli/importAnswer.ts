import type { Imported } from '../bench/lab/package/index.ts'
import { schemaVersion } from '../core/terms/index.ts'
import { sayProblems } from './complain.ts'
import { exitCodes } from './exitCodes.ts'
import type { Desk } from './verb.ts'

/** What a lab took in. A result that it has already with other bytes is a finding: both stay where they are. */
export function answerImported(imported: Imported, { screen }: Desk, json: boolean): number {
  const { where, isNew, records, results, known, problems } = imported
  sayProblems(problems, screen)
  const parts = [
    `${counted(records, 'record')} and ${counted(results, 'result')} taken in`,
    ...(known > 0 ? [`${counted(known, 'record')} known before`] : []),
    ...(problems.length > 0 ? [`${counted(problems.length, 'result')} left out`] : []),
  ]
  const words = `${isNew ? 'Made the lab' : 'Lab'} ${where}: ${parts.join(', ')}.\n`
  screen.out(json ? `${JSON.stringify({ schemaVersion, ...imported }, null, 2)}\n` : words)
  return problems.length === 0 ? exitCodes.ok.code : exitCodes.finding.code
}

const counted = (count: number, one: string): string => `${count.toLocaleString('en')} ${one}${count === 1 ? '' : 's'}`
