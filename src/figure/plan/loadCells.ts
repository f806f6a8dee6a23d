import { element, type Markup, rounded } from '../markup.ts'
import type { Stage } from '../stage.ts'
import type { FigureLimit } from './limitKey.ts'
import type { LoadWindowData } from './loadWindowData.ts'
import { limitSign } from './plane.ts'

/** Stretches of neighbouring cells of one row that one limit forbids. */
interface Run {
  readonly limit: number
  readonly row: number
  readonly from: number
  readonly to: number
}

/** The forbidden cells as hatched land with a border, and the letter of its limit in each part that is large enough. */
export function loadCells(
  data: LoadWindowData,
  stage: Stage,
): { readonly markup: Markup; readonly shown: readonly FigureLimit[] } {
  const columns = data.speeds.length
  const rows = data.loads.length
  const { plot, palette, id } = stage
  const wide = (plot.right - plot.left) / columns
  const high = (plot.bottom - plot.top) / rows
  const left = (i: number): number => plot.left + i * wide
  const top = (j: number): number => plot.bottom - (j + 1) * high
  const runs = Array.from({ length: rows }, (_, row) => runsOf(data.cells, row, columns)).flat()
  const land = runs.map(({ row, from, to }) => box(left(from), top(row), { wide: (to - from) * wide, high })).join('')
  const borders = bordersOf(data.cells, { columns, rows }, { left, top, wide, high })
  const seats = seatsOf(runs, data.limits.length)
  const signs = seats.flatMap((seat, limit) =>
    seat === undefined || (seat.to - seat.from) * wide < 20
      ? []
      : [
          limitSign(
            data.limits[limit].sign,
            { x: (left(seat.from) + left(seat.to)) / 2, y: top(seat.row) + high / 2 },
            stage,
          ),
        ],
  )
  const shown = data.limits.filter((_, limit) => seats[limit] !== undefined)
  return {
    shown,
    markup:
      land === ''
        ? ''
        : element(
            'g',
            {},
            element('path', { d: land, fill: palette.shade, 'fill-opacity': 0.1 }),
            element('path', { d: land, fill: `url(#${id}-hatch)` }),
            element('path', { d: borders, stroke: palette.quiet, 'stroke-width': 1.1, fill: 'none' }),
            ...signs,
          ),
  }
}

function runsOf(cells: ArrayLike<number>, row: number, columns: number): Run[] {
  const runs: Run[] = []
  let from = 0
  for (let i = 1; i <= columns; i++) {
    const limit = cells[row * columns + from]
    if (i < columns && cells[row * columns + i] === limit) continue
    if (limit > 0) runs.push({ limit: limit - 1, row, from, to: i })
    from = i
  }
  return runs
}

const box = (x: number, y: number, { wide, high }: { readonly wide: number; readonly high: number }): string =>
  `M${rounded(x)} ${rounded(y)}h${rounded(wide)}v${rounded(high)}h${rounded(-wide)}z`

interface Grid {
  readonly left: (i: number) => number
  readonly top: (j: number) => number
  readonly wide: number
  readonly high: number
}

/** Lines between neighbours that differ, neighbouring pieces drawn as one. */
function bordersOf(
  cells: ArrayLike<number>,
  { columns, rows }: { readonly columns: number; readonly rows: number },
  { left, top }: Grid,
): string {
  let path = ''
  for (let j = 1; j < rows; j++) {
    let from = -1
    for (let i = 0; i <= columns; i++) {
      const differs = i < columns && cells[j * columns + i] !== cells[(j - 1) * columns + i]
      if (differs && from < 0) from = i
      if (differs || from < 0) continue
      path += `M${rounded(left(from))} ${rounded(top(j - 1))}H${rounded(left(i))}`
      from = -1
    }
  }
  for (let i = 1; i < columns; i++) {
    let from = -1
    for (let j = 0; j <= rows; j++) {
      const differs = j < rows && cells[j * columns + i] !== cells[j * columns + i - 1]
      if (differs && from < 0) from = j
      if (differs || from < 0) continue
      path += `M${rounded(left(i))} ${rounded(top(from - 1))}V${rounded(top(j - 1))}`
      from = -1
    }
  }
  return path
}

/** For each limit the run in the middle of its largest block of equally long neighbours: there its letter has most room. */
function seatsOf(runs: readonly Run[], count: number): readonly (Run | undefined)[] {
  return Array.from({ length: count }, (_, limit) => {
    const own = runs.filter((run) => run.limit === limit)
    const longest = Math.max(0, ...own.map(({ from, to }) => to - from))
    const wide = own.filter(({ from, to }) => to - from >= 0.85 * longest)
    return wide[wide.length >> 1]
  })
}
