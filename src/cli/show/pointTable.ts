import type { Sign } from '../../bench/index.ts'
import { fromSi, printWithUncertainty, readableUnit, type Unit } from '../../core/quantity/index.ts'
import type { Point } from '../../core/terms/index.ts'
import { type TableColumn, textTable } from './textTable.ts'
import { weightSigns } from './weightSigns.ts'

/** Unit in which the speeds of a record are printed: the readable one of their middle. */
export function speedUnitOf(points: readonly Point[]): Unit {
  const speeds = points.map(({ slidingSpeed }) => slidingSpeed).filter((speed) => speed > 0)
  speeds.sort((a, b) => a - b)
  return readableUnit(speeds[speeds.length >> 1] ?? 1e-3, 'velocity')
}

/** One line a step. The uncertainty decides the digits of friction; remarks stand as the letters that the list of remarks explains. */
export function pointTable(points: readonly Point[], signs: readonly Sign[]): string {
  const unit = speedUnitOf(points)
  const speeds = points.map((point) => digits(fromSi(point.slidingSpeed, unit), 4))
  const columns: readonly TableColumn[] = [
    { head: 'step', unit: '', align: 'right', cells: points.map(({ step }) => String(step)) },
    { head: 'speed', unit: unit.text, align: 'point', cells: speeds },
    { head: 'friction ± own (95 %)', unit: '', align: 'point', cells: points.map(frictionInWords) },
    { head: 'turns', unit: '', align: 'point', cells: points.map(({ turns }) => turns.toFixed(2)) },
    { head: 'in the fit', unit: '', align: 'left', cells: points.map(({ trusted }) => (trusted ? 'yes' : 'no')) },
    { head: 'remarks', unit: '', align: 'left', cells: points.map((point) => letters(point, signs)) },
  ]
  return textTable(columns)
}

const letters = ({ step }: Point, signs: readonly Sign[]): string =>
  signs
    .filter(({ steps }) => steps.includes(step))
    .map(({ weight, letter }) => `${weightSigns[weight]}${letter}`)
    .join(' ')

function frictionInWords({ friction, low, high }: Point): string {
  if (friction === null) return 'none'
  if (low === null || high === null || !Number.isFinite(high - low)) return digits(friction, 3)
  return printWithUncertainty(friction, (high - low) / 2)
}

const digits = (value: number, count: number): string =>
  Number.isFinite(value) ? String(Number(value.toPrecision(count))) : 'none'
