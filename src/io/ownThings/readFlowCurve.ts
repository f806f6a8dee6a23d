import type { FlowPoint } from '../../core/material/index.ts'
import { type Dimension, readNumber, toSi, type Unit, unitsOf } from '../../core/quantity/index.ts'
import { done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'
import { headingParts } from '../table/headingParts.ts'

/** Columns that a flow curve may have. */
const columnWords = {
  shearRate: /shear[ _-]?rate|scherrate|schergeschw|gefälle|γ̇|gamma ?dot/i,
  viscosity: /viscosity|viskosit|\beta\b|^η/i,
  shearStress: /shear[ _-]?stress|schubspannung|scherspannung|\btau\b|^[τσ]/i,
} as const

type ColumnName = keyof typeof columnWords

const columnDimensions: Readonly<Record<ColumnName, Dimension>> = {
  shearRate: 'frequency',
  viscosity: 'viscosity',
  shearStress: 'pressure',
}

interface Column {
  readonly name: ColumnName
  readonly at: number
  readonly unit: Unit
}

/** Lines in which a heading is looked for. */
const headLines = 60

/**
 * Points of a flow curve from a plain table: a line of headings with units (or a line of units below it), then numbers. Columns
 * for shear rate and viscosity, or shear stress instead of the latter. All problems at once; never throws on bad input.
 */
export function readFlowCurve(text: string, file: string): Outcome<readonly FlowPoint[]> {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/)
  const mark = separatorOf(lines.slice(0, headLines))
  const rows = lines.map((line) => line.split(mark).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1')))
  const head = rows.slice(0, headLines).findIndex((row) => row.some((cell) => columnWords.shearRate.test(cell)))
  if (head < 0)
    return failed(
      problem(
        { file },
        'No column is called shear rate.',
        'Head the columns "shear rate [1/s]" and "viscosity [Pa·s]".',
      ),
    )
  const below = rows[head + 1] ?? []
  const hasUnits = below.every((cell) => !/^[-+]?[\d.,]+(e[-+]?\d+)?$/i.test(cell))
  const found = columnsOf(rows[head], hasUnits ? below : [])
  const missing = missingColumns(found)
  if (missing !== undefined)
    return failed(
      problem({ file, line: head + 1 }, missing, 'Head them like "shear rate [1/s]" and "viscosity [mPa·s]".'),
    )
  const points: FlowPoint[] = []
  const problems: Problem[] = []
  for (let i = head + (hasUnits ? 2 : 1); i < rows.length; i++) {
    if (rows[i].every((cell) => cell === '')) continue
    const point = pointIn(rows[i], found, mark)
    if (typeof point === 'string')
      problems.push(problem({ file, line: i + 1 }, point, 'Write plain numbers above zero, or take the line out.'))
    else points.push(point)
  }
  return problems.length > 0 ? failed(...problems.slice(0, 20)) : done(points)
}

/** A comma separates only where nothing else does: it may be a decimal mark. */
function separatorOf(lines: readonly string[]): string | RegExp {
  for (const mark of ['\t', ';', ','])
    if (lines.some((line) => line.includes(mark) && columnWords.shearRate.test(line))) return mark
  return /\s{2,}|\s+\|\s*/
}

function columnsOf(headings: readonly string[], unitsBelow: readonly string[]): readonly Column[] {
  const columns: Column[] = []
  for (const [at, heading] of headings.entries()) {
    for (const name of Object.keys(columnWords) as ColumnName[]) {
      if (!columnWords[name].test(heading) || columns.some((known) => known.name === name)) continue
      const unit = headingParts(heading, unitsBelow[at] ?? '')
        .flatMap(({ unit }) => unitsOf(unit))
        .find(({ dimension }) => dimension === columnDimensions[name])
      if (unit !== undefined) columns.push({ name, at, unit })
      break
    }
  }
  return columns
}

function missingColumns(columns: readonly Column[]): string | undefined {
  const has = (name: ColumnName): boolean => columns.some((column) => column.name === name)
  if (!has('shearRate')) return 'The column of the shear rate has no unit that is known.'
  return has('viscosity') || has('shearStress')
    ? undefined
    : 'No column holds a viscosity or a shear stress with a unit.'
}

/** The point of a row, or what is wrong with it. */
function pointIn(row: readonly string[], columns: readonly Column[], mark: string | RegExp): FlowPoint | string {
  const values: Partial<Record<ColumnName, number>> = {}
  for (const { name, at, unit } of columns) {
    const cell = row[at] ?? ''
    const read = readNumber(mark === ',' ? cell : cell.replace(',', '.'))
    if (!read.ok || read.rest !== '') return `"${cell.slice(0, 40)}" is no number.`
    values[name] = toSi(read.value, unit)
  }
  const { shearRate = 0, viscosity, shearStress = 0 } = values
  const thick = viscosity ?? shearStress / shearRate
  if (!(shearRate > 0 && thick > 0 && thick < Number.POSITIVE_INFINITY))
    return 'Shear rate and viscosity must be above zero.'
  return { shearRate, viscosity: thick }
}

const problem = (place: Problem['place'], what: string, mend: string): Problem => ({
  kind: 'flowCurveUnreadable',
  class: 'badInput',
  place,
  what,
  mend,
})
