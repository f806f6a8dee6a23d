import { type Dirent, existsSync, readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Problem } from '../../core/terms/index.ts'
import { fileProblem } from '../fileProblem.ts'

/** Endings of the files in a folder that are taken for records. A file that is named itself is always tried. */
const recordEndings = ['csv', 'tsv', 'tab', 'txt', 'dat', 'asc', 'xlsx', 'parquet'] as const

/** A flow curve, `oat-drink.flow.csv`, is a table too, but belongs to a liquid. */
const recordEnding = new RegExp(`(?<!\\.flow)\\.(${recordEndings.join('|')})$`, 'i')

export interface RecordFiles {
  /** Paths in the order in which people count: run 2 before run 10. */
  readonly files: readonly string[]
  /** How many files of the folders were left aside because of their names. */
  readonly aside: number
  /** Paths that cannot be read at all. */
  readonly problems: readonly Problem[]
}

/** The records that paths of files and folders lead to, those of folders within folders too. */
export function recordFiles(paths: readonly string[]): RecordFiles {
  const files: string[] = []
  const problems: Problem[] = []
  let aside = 0
  for (const path of paths) {
    try {
      if (statSync(path).isDirectory()) {
        const found = filesUnder(path)
        const records = found.filter((file) => recordEnding.test(file)).sort(byCount)
        aside += found.length - records.length
        files.push(...records)
      } else files.push(path)
    } catch (error) {
      problems.push(fileProblem(error, path, 'read'))
    }
  }
  return { files: [...new Set(files)], aside, problems }
}

const counting = new Intl.Collator('en', { numeric: true })

const byCount = (a: string, b: string): number => counting.compare(a, b) || (a < b ? -1 : 1)

/** All files below a folder but hidden ones and those of a lab. */
function filesUnder(folder: string): string[] {
  if (existsSync(join(folder, 'lab.json')) && existsSync(join(folder, 'kufe.sqlite'))) return []
  return readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => !name.startsWith('.'))
    .flatMap((entry) => {
      const path = join(folder, entry.name)
      if (entry.isDirectory()) return filesUnder(path)
      return isFile(entry, path) ? [path] : []
    })
}

/** A link to a file counts as the file; a link to a folder is not followed, it may lead in a circle. */
const isFile = (entry: Dirent, path: string): boolean =>
  entry.isFile() || (entry.isSymbolicLink() && statSync(path, { throwIfNoEntry: false })?.isFile() === true)
