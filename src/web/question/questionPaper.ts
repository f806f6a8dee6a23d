/**
 * The study's `question` paper: the document that `kufe plan` reads, as JSON, with values as people write them ("0.5 mm/s",
 * "5 N"). A key that is absent stands at the program's default; `assumed` lists the keys that have a value which nobody has
 * confirmed. Both are printed in lighter ink.
 */
export interface QuestionPaper {
  readonly [key: string]: string | number | QuestionPaper | undefined
}

/** The paper with its keys in one row: `ask.slowest` → `0.1 mm/s`. */
export type FlatPaper = ReadonlyMap<string, string>

export function flatPaper(paper: QuestionPaper | null): FlatPaper {
  const flat = new Map<string, string>()
  const walk = (section: QuestionPaper, path: string): void => {
    for (const [key, value] of Object.entries(section)) {
      if (value === undefined || value === null) continue
      if (typeof value === 'object') walk(value, `${path}${key}.`)
      else flat.set(path + key, String(value))
    }
  }
  if (paper !== null) walk(paper, '')
  return flat
}

/** Back into sections, in the order of the row. */
export function nestedPaper(flat: FlatPaper): QuestionPaper {
  const root: Section = {}
  for (const [path, value] of flat) {
    const keys = path.split('.')
    const last = keys.pop() ?? path
    let section = root
    for (const key of keys) {
      const inner = section[key]
      if (typeof inner === 'object') section = inner
      else {
        const made: Section = {}
        section[key] = made
        section = made
      }
    }
    section[last] = value
  }
  return root
}

interface Section {
  [key: string]: string | Section
}

/** The question in one sentence, where it is said. */
export const titleOf = (paper: QuestionPaper | null): string | undefined =>
  typeof paper?.title === 'string' ? paper.title : undefined
