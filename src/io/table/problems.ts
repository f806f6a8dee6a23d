import type { Place, Problem, ProblemClass } from '../../core/terms/index.ts'

/** All that can be wrong with a table, its file, or what was said about it. */
export const tableProblemKinds = [
  'fileUnreadable',
  'fileEmpty',
  'notATable',
  'noRows',
  'lineTooLong',
  'tooManyColumns',
  'separatorUnclear',
  'decimalUnclear',
  'headingUnknown',
  'headingsChange',
  'headingsShort',
  'columnMissing',
  'columnTwice',
  'unitMissing',
  'unitUnknown',
  'unitUnfit',
  'unitUnclear',
  'notANumber',
  'tooFewCells',
  'tooManyCells',
  'noTime',
  'tooManyDamaged',
  'timeBackwards',
  'fileDamaged',
  'fileTooLarge',
  'sheetUnknown',
  'mappingNameRefused',
  'mappingUnreadable',
  'optionUnreadable',
  'andMore',
] as const

export type TableProblemKind = (typeof tableProblemKinds)[number]

export interface TableProblem extends Problem {
  readonly kind: TableProblemKind
}

/** Problems of one file that are told one by one; the rest is counted. */
export const mostProblems = 20

/** Longest piece of a cell that is shown. */
const longestCell = 60

export function tableProblem(
  kind: TableProblemKind,
  said: { readonly what: string; readonly mend: string; readonly place?: Place; readonly class?: ProblemClass },
): TableProblem {
  const place = said.place ?? {}
  const cell = place.cell === undefined ? {} : { cell: shown(place.cell) }
  const name = place.name === undefined ? {} : { name: shown(place.name) }
  return {
    kind,
    class: said.class ?? 'badInput',
    place: { ...place, ...name, ...cell },
    what: said.what,
    mend: said.mend,
  }
}

/** A text of the file as it can be shown: short, and without letters that would disturb a terminal. */
export function shown(text: string): string {
  const clean = text.replace(/[\p{Cc}\p{Cf}\p{Co}\p{Cn}\p{Cs}]/gu, '\uFFFD')
  const letters = [...clean.slice(0, 4 * longestCell)]
  return letters.length > longestCell ? `${letters.slice(0, longestCell - 1).join('')}…` : letters.join('')
}

/** The first problems, with a last one that counts the others; `uncounted` are such as were never made. */
export function capped(problems: readonly TableProblem[], uncounted: number, file: string | undefined): TableProblem[] {
  const told = problems.slice(0, mostProblems)
  const more = problems.length - told.length + uncounted
  if (more <= 0) return told
  return [
    ...told,
    tableProblem('andMore', {
      what: `and ${more} more.`,
      mend: 'Mend those above first, then read the file again.',
      place: { file },
    }),
  ]
}
