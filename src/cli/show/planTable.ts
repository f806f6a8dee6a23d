import type { Plan, PlannedPoint } from '../../core/plan/index.ts'
import { fromSi, printQuantity, readableUnit } from '../../core/quantity/index.ts'
import { type TableColumn, textTable } from './textTable.ts'

const digits = (value: number, count: number): string => String(Number(value.toPrecision(count)))

const percent = (value: number): string => digits(100 * value, 2)

const span = (low: number, high: number): string => `${digits(low, 2)}–${digits(high, 2)}`

/** One line for each step of one way: what is done, and what it will give. */
export function planTable({ points }: Plan): string {
  const first = points[0]
  const way = points.filter(({ direction }) => direction === first?.direction)
  const middle = [...way].sort((a, b) => a.slidingSpeed - b.slidingSpeed)[way.length >> 1]
  const unit = readableUnit(middle?.slidingSpeed ?? 1e-3, 'velocity')
  const column = (head: string, unitText: string, cell: (point: PlannedPoint) => string): TableColumn => ({
    head,
    unit: unitText,
    align: 'right',
    cells: way.map(cell),
  })
  const films = way.some(({ friction }) => friction.lambda !== null)
  return textTable([
    column('step', '', ({ step }) => String(step)),
    { ...column('speed', unit.text, (point) => digits(fromSi(point.slidingSpeed, unit), 3)), align: 'point' },
    column('dwell', '', ({ dwell }) => printQuantity(dwell, 'time', { digits: 2, unit: 's' })),
    { ...column('turns', '', ({ turns }) => turns.toFixed(2)), align: 'point' },
    column('friction', 'expected', ({ friction }) => span(friction.low, friction.high)),
    { ...column('uncertainty', '%', ({ uncertainty }) => percent(uncertainty.total)), align: 'point' },
    { ...column('own', '%', ({ uncertainty }) => percent(uncertainty.own)), align: 'point' },
    ...(films ? [column('λ', '', lambda), { ...column('regime', '', regime), align: 'left' } as const] : []),
  ])
}

const lambda = ({ friction }: PlannedPoint): string =>
  friction.lambda === null ? '' : span(friction.lambda.low, friction.lambda.high)

const words = { boundary: 'boundary', mixed: 'mixed', fullFilm: 'full film' } as const

const regime = ({ regime: name, regimeSurvives }: PlannedPoint): string =>
  name === null ? '' : regimeSurvives ? words[name] : `${words[name]}?`
