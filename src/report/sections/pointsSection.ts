import { fromSi, printWithUncertainty, readableUnit } from '../../core/quantity/index.ts'
import type { Point } from '../../core/terms/index.ts'
import { type Sign, signsOf } from '../../figure/index.ts'
import type { ReportColumn, ReportTable } from '../reportContent.ts'
import { decimals, plain, significant } from '../words/printed.ts'
import type { SectionOf } from './sectionOf.ts'

/** One line a step. The uncertainty decides the digits of friction; remarks stand as the letters of the section before. */
export const pointsSection: SectionOf = ({ reduction: { points } }, numbers) => ({
  heading: 'Points',
  blocks: points.length === 0 ? [] : [numbers.table(tableOf(points))],
})

interface Column extends ReportColumn {
  readonly cell: (point: Point) => string
}

function tableOf(points: readonly Point[]): Omit<ReportTable, 'number'> {
  const columns = columnsOf(points)
  return {
    caption: `The points. Intervals hold the own part alone${points.some(isSharedFelt) ? '; u is the standard uncertainty of the shared part' : ''}.`,
    columns: columns.map(({ head, unit, align }) => ({ head, unit, align })),
    rows: points.map((point) => columns.map(({ cell }) => cell(point))),
    notes: points.some(({ remarks }) => remarks.length > 0) ? ['Letters: see Remarks.'] : [],
  }
}

function columnsOf(points: readonly Point[]): readonly Column[] {
  const signs = signsOf(points)
  const speed = readableUnit(middle(points.map(({ slidingSpeed }) => slidingSpeed)) ?? 1e-3, 'velocity')
  const torque = readableUnit(middle(points.map((point) => Math.abs(point.torque))) ?? 1e-3, 'torque')
  const columns: Column[] = [
    { head: 'step', unit: '', align: 'right', cell: ({ step }) => String(step) },
    { head: 'speed', unit: speed.text, align: 'point', cell: (point) => digits(fromSi(point.slidingSpeed, speed), 4) },
    { head: 'friction ± own', unit: '95 %', align: 'point', cell: frictionInWords },
    ...(points.some(isSharedFelt) ? [sharedColumn] : []),
    { head: 'torque', unit: torque.text, align: 'point', cell: (point) => digits(fromSi(point.torque, torque), 4) },
    { head: 'axial force', unit: 'N', align: 'point', cell: (point) => digits(point.axialForce, 4) },
    { head: 'turns', unit: '', align: 'point', cell: ({ turns }) => decimals(turns, 2) },
    { head: 'rows kept', unit: '', align: 'right', cell: ({ rows }) => String(rows.to - rows.kept) },
  ]
  if (points.some(({ temperature }) => temperature !== null)) {
    const cell = ({ temperature }: Point): string => (temperature === null ? '' : decimals(temperature - 273.15, 1))
    columns.push({ head: 'temp.', unit: '°C', align: 'point', cell })
  }
  if (points.some(({ trusted }) => !trusted)) {
    columns.push({ head: 'in the curve', unit: '', align: 'left', cell: ({ trusted }) => (trusted ? 'yes' : 'no') })
  }
  if (signs.length > 0) {
    columns.push({ head: 'remarks', unit: '', align: 'left', cell: (point) => letters(point, signs) })
  }
  return columns
}

const sharedColumn: Column = {
  head: 'u shared',
  unit: '',
  align: 'point',
  cell: ({ sharedUncertainty: u }) => (u === null || !Number.isFinite(u) ? '' : u < 1e-5 ? '0' : plain(u, 2)),
}

/** Less than this share of friction is told nowhere. */
const leastShared = 1e-5

const isSharedFelt = ({ friction, sharedUncertainty }: Point): boolean =>
  friction !== null && (sharedUncertainty ?? 0) > leastShared * Math.abs(friction)

const middle = (values: readonly number[]): number | undefined => {
  const sorted = values.filter((value) => value > 0).sort((a, b) => a - b)
  return sorted[sorted.length >> 1]
}

function frictionInWords({ friction, low, high }: Point): string {
  if (friction === null) return 'none'
  if (low === null || high === null || !Number.isFinite(high - low)) return digits(friction, 3)
  return printWithUncertainty(friction, (high - low) / 2)
}

const digits = (value: number, count: number): string => (Number.isFinite(value) ? significant(value, count) : '–')

const letters = ({ step }: Point, signs: readonly Sign[]): string =>
  signs
    .filter(({ steps }) => steps.includes(step))
    .map(({ letter }) => letter)
    .join(' ')
