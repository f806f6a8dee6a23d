import { globSync } from 'node:fs'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import { recordFiles } from '../lab/recordFiles.ts'

/** A record's file and the sample that it was said to belong to; undefined where its setup must say. */
export interface SampleFile {
  readonly file: string
  readonly sample: string | undefined
}

/**
 * Records out of words such as `A=runs/a-*.csv`, `B=runs/b` or `c-1.csv`: a sample's name, then files, a pattern or a folder. A
 * pattern in quotation marks is worked out here, one without by the shell; of what the shell gives, `A=` holds for its first
 * file alone, so that is refused.
 */
export function sampleFiles(words: readonly string[]): Outcome<readonly SampleFile[]> {
  const files: SampleFile[] = []
  const problems: Problem[] = []
  for (const word of words) {
    const [, sample, pattern] = word.match(/^([^=/\\]+)=(.+)$/s) ?? [undefined, undefined, word]
    const paths = /[*?{[]/.test(pattern) ? globSync(pattern) : [pattern]
    const found = recordFiles(paths)
    problems.push(...found.problems)
    if (found.problems.length === 0 && found.files.length === 0) problems.push(nothingFound(word))
    files.push(...found.files.toSorted(byCount).map((file) => ({ file, sample })))
  }
  const seen = files.map(({ file }) => file)
  const twice = [...new Set(seen.filter((file, i) => seen.indexOf(file) !== i))]
  problems.push(...twice.map(namedTwice))
  return problems.length > 0 ? failed(...problems) : done(files)
}

const counting = new Intl.Collator('en', { numeric: true })

const byCount = (a: string, b: string): number => counting.compare(a, b)

const nothingFound = (word: string): Problem => ({
  kind: 'noRecordFound',
  class: 'wrongUse',
  place: { name: word },
  what: 'No record lies there.',
  mend: 'Name a file, a folder, or a pattern in quotation marks: "A=runs/a-*.csv".',
})

const namedTwice = (file: string): Problem => ({
  kind: 'recordTwice',
  class: 'wrongUse',
  place: { file },
  what: 'This record is named twice.',
  mend: 'Leave it to one sample.',
})
