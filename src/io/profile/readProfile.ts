import { unitsOf } from '../../core/quantity/index.ts'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'

/** A profile across a track, m; positions rise. */
export interface Profile {
  readonly position: Float64Array
  readonly height: Float64Array
}

/** All that can be wrong with a profile. */
export type ProfileProblemKind = 'profileTooShort' | 'profileUnits' | 'profileNumber' | 'profileTooLong'

/** Some hundred thousand places. */
const longest = 16 * 1024 * 1024
const fewest = 20

/**
 * Reads a profile: two columns, position along the trace and height, with their units in the lines above the numbers
 * (`x (mm); z (µm)`, or a row `mm, µm`), or given as `units`. Commas, semicolons, tabs or blanks; decimal points or commas. Never throws.
 */
export function readProfile(text: string, file: string, units?: readonly [string, string]): Outcome<Profile> {
  if (text.length > longest) return failed(problem('profileTooLong', file))
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/)
  const cellsOf = splitter(lines)
  const head: string[][] = []
  const rows: (readonly [number, number])[] = []
  const problems: Problem[] = []
  for (const [index, line] of lines.entries()) {
    if (line.trim() === '') continue
    const cells = cellsOf(line)
    const numbers = cells.slice(0, 2).map(numberOf)
    if (cells.length >= 2 && numbers.every(Number.isFinite)) rows.push([numbers[0], numbers[1]])
    else if (rows.length === 0) head.push(cells)
    else if (problems.length < 20) problems.push(problem('profileNumber', file, index + 1))
  }
  const factors = factorsOf(head, units)
  if (factors === undefined) problems.push(problem('profileUnits', file, 1))
  if (rows.length < fewest) problems.push(problem('profileTooShort', file))
  if (problems.length > 0 || factors === undefined) return failed(...problems)
  rows.sort((a, b) => a[0] - b[0])
  return done({
    position: Float64Array.from(rows, ([x]) => x * factors[0]),
    height: Float64Array.from(rows, ([, z]) => z * factors[1]),
  })
}

/** By the mark that most lines with numbers have; a decimal comma never parts cells where another mark does. */
function splitter(lines: readonly string[]): (line: string) => string[] {
  const sample = lines.filter((line) => /\d/.test(line)).slice(-50)
  const mark = [';', '\t', ','].find((one) => sample.filter((line) => line.includes(one)).length > sample.length / 2)
  if (mark === undefined) return (line) => line.trim().split(/\s+/)
  return (line) => line.split(mark).map((cell) => cell.trim())
}

function numberOf(cell: string): number {
  const text = cell.includes('.') ? cell : cell.replace(',', '.')
  return /^[-+−]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(text) ? Number(text.replace('−', '-')) : Number.NaN
}

/** Metres of both columns: as given, or the last words above the numbers that are units of length. */
function factorsOf(head: readonly string[][], units: readonly [string, string] | undefined): number[] | undefined {
  const factor = (text: string | undefined): number | undefined =>
    unitsOf((text ?? '').trim()).find(({ dimension }) => dimension === 'length')?.factor
  const found = [0, 1].map((column) => {
    if (units !== undefined) return factor(units[column])
    const cells = head.map((row) => row[column]).reverse()
    return cells
      .map((cell) => factor(/[([]([^)\]]+)[)\]]/.exec(cell ?? '')?.[1] ?? cell))
      .find((one) => one !== undefined)
  })
  const known = found.filter((one) => one !== undefined)
  return known.length === 2 ? known : undefined
}

const words: Readonly<Record<ProfileProblemKind, { readonly what: string; readonly mend: string }>> = {
  profileTooLong: { what: 'This is no profile: more than 16 MB.', mend: 'Write out one trace across the track.' },
  profileTooShort: { what: 'The profile has fewer than 20 places.', mend: 'Write two columns: position and height.' },
  profileUnits: {
    what: 'The units of position and height are not given.',
    mend: 'Write "x (mm); z (µm)" above the numbers, or add --profile-units "mm, µm".',
  },
  profileNumber: { what: 'This line holds no two numbers.', mend: 'Correct it or take it out.' },
}

const problem = (kind: ProfileProblemKind, file: string, line?: number): Problem => ({
  kind,
  class: 'badInput',
  place: line === undefined ? { file } : { file, line },
  ...words[kind],
})
