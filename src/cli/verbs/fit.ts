import { complain } from '../complain.ts'
import { addReadingOptions, type ReadingOptions, reduceArgs } from '../readingOptions.ts'
import type { Desk, Verb } from '../verb.ts'

export const fitVerb: Verb = {
  name: 'fit',
  summary: 'fit the friction curve of a record, and show how sure it is',
  description:
    'Reduces one record and fits its friction curve: which member of the family the data choose, its parameters and ' +
    'features with 95 % intervals, and why the fit stopped. Its JSON is that of "kufe reduce".',
  examples: [
    'kufe fit drawer-b.csv --setup drawer.yaml',
    'kufe fit drawer-b.csv --setup drawer.yaml --draws 5000 --seed 7 --svg drawer-b.svg',
  ],
  define: (command, run) => {
    addReadingOptions(command).action((file: string, options: ReadingOptions) =>
      run((desk) => fitted(file, options, desk)),
    )
  },
}

async function fitted(file: string, options: ReadingOptions, desk: Desk): Promise<number> {
  const { fitRecord, reduceFile } = await import('../../bench/reduce/index.ts')
  const reduced = await reduceFile(reduceArgs(file, options, desk), desk.outside)
  if (!reduced.ok) return complain(reduced.problems, desk, options.json === true)
  const { answerFit } = await import('../answer.ts')
  return answerFit(fitRecord(reduced.value, desk.outside), options, desk)
}
