import { existsSync } from 'node:fs'
import { done, type Origin, type Outcome, type Outside, type Problem, schemaVersion } from '../../core/terms/index.ts'
import type { ReducedRecord } from '../reducedRecord.ts'
import type { ReduceFileArgs } from '../reduceFile.ts'

/** What stands at the head of every answer for machines. */
export interface AnswerHead {
  readonly schemaVersion: typeof schemaVersion
  readonly record: { readonly file: string }
  readonly origin: Origin
}

export const headOf = ({ file, origin }: Pick<ReducedRecord, 'file' | 'origin'>): AnswerHead => ({
  schemaVersion,
  record: { file },
  origin,
})

/** One field a line, with a line end. NaN and infinities become null. */
export const textOf = (document: object): string => `${JSON.stringify(document, null, 2)}\n`

/** Several records with one way of reading them. */
export type ManyFilesArgs = Omit<ReduceFileArgs, 'file'> & { readonly files: readonly string[] }

/** Each file in turn; all problems of all files together. A file without a setup of its own takes the one beside it, NAME.setup.yaml. */
export async function forEachFile<T>(
  { files, ...args }: ManyFilesArgs,
  outside: Outside,
  look: (args: ReduceFileArgs) => Promise<Outcome<T>>,
): Promise<Outcome<readonly T[]>> {
  const values: T[] = []
  const problems: Problem[] = []
  for (const [i, file] of files.entries()) {
    outside.progress('records', i, files.length)
    const one = await look({ ...args, file, setup: args.setup ?? setupBeside(file) })
    if (one.ok) values.push(one.value)
    else problems.push(...one.problems)
  }
  outside.progress('records', files.length, files.length)
  return problems.length > 0 ? { ok: false, problems } : done(values)
}

/** NAME.setup.yaml beside NAME.csv, where there is one. */
function setupBeside(file: string): string | undefined {
  const beside = `${file.replace(/\.[^./\\]*$/, '')}.setup.yaml`
  return existsSync(beside) ? beside : undefined
}
