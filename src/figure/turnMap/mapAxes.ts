import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Box, Sheet } from '../sheet.ts'
import { linearTicks } from '../ticks.ts'
import type { TurnCells, TurnMapFigureData } from './turnMapData.ts'

/** Height below the map that the axis of the angle takes. */
export const angleAxisHeight = 44

/** The angle across, from 0 to a full turn. */
export function angleAxis(plot: Box, { palette }: Sheet): Markup {
  const wide = plot.right - plot.left
  const every = wide >= 400 ? 45 : 90
  const degrees = Array.from({ length: 360 / every + 1 }, (_, index) => index * every)
  const x = (angle: number): number => plot.left + (angle / 360) * wide
  return element(
    'g',
    {},
    element('path', {
      d: degrees.map((angle) => `M${rounded(x(angle))} ${plot.bottom}v6`).join(''),
      stroke: palette.ink,
      fill: 'none',
    }),
    ...degrees.map((angle) =>
      lettering(String(angle), {
        x: x(angle),
        y: plot.bottom + 19,
        fill: palette.quiet,
        size: sizes.small,
        anchor: 'middle',
      }),
    ),
    lettering('place in the turn (°)', {
      x: (plot.left + plot.right) / 2,
      y: plot.bottom + 37,
      fill: palette.ink,
      anchor: 'middle',
    }),
  )
}

/** Pixels of a turn, from top to bottom; rows are of one height, however many turns they hold. */
const turnScale =
  ({ turns, rows }: TurnCells, { top, bottom }: Box) =>
  (turn: number): number => {
    let row = 0
    while (row < rows - 1 && turn >= turns[row + 1]) row++
    const within = (turn - turns[row]) / (turns[row + 1] - turns[row])
    return top + ((row + Math.min(1, Math.max(0, within))) / rows) * (bottom - top)
  }

/** Whether all rows hold as many turns as each other, to a tenth. */
export function isEven({ turns }: TurnCells): boolean {
  const sizes = turns.slice(1).map((turn, row) => turn - turns[row])
  return Math.max(...sizes) <= 1.1 * Math.min(...sizes)
}

/** Distance between labels of turns. */
const turnPitch = 24

/** Round numbers of turns where rows are even, else the turns at which rows begin, as far as they keep apart. */
function turnTicks(map: TurnCells, plot: Box): readonly number[] {
  const { turns, rows } = map
  if (isEven(map)) {
    return linearTicks(turns[0], turns[rows], turnPitch / (plot.bottom - plot.top)).filter(Number.isInteger)
  }
  const y = turnScale(map, plot)
  let last = Number.NEGATIVE_INFINITY
  return turns.filter((turn) => {
    if (y(turn) - last < turnPitch) return false
    last = y(turn)
    return true
  })
}

/** Turns down the left side; whole numbers only. */
export function turnAxis(map: TurnCells, plot: Box, { palette }: Sheet): Markup {
  const y = turnScale(map, plot)
  const ticks = turnTicks(map, plot)
  const middle = (plot.top + plot.bottom) / 2
  return element(
    'g',
    {},
    element('path', {
      d: ticks.map((tick) => `M${rounded(plot.left)} ${rounded(y(tick))}h-6`).join(''),
      stroke: palette.ink,
      fill: 'none',
    }),
    ...ticks.map((tick) =>
      lettering(String(tick), {
        x: plot.left - 9,
        y: y(tick) + 4,
        fill: palette.quiet,
        size: sizes.small,
        anchor: 'end',
      }),
    ),
    lettering('turns of the shaft', { x: 17, y: middle, fill: palette.ink, anchor: 'middle', turn: -90 }),
  )
}

/** Distance between the numbers of steps. */
const stepPitch = 14

/** Where steps begin, at the right; steps that begin too close for a number of their own share one. */
export function stepTicks({ map, steps = [] }: TurnMapFigureData, plot: Box, { palette }: Sheet): Markup {
  const y = turnScale(map, plot)
  const inside = steps
    .map(({ number, turn }) => ({ number, y: y(turn) }))
    .filter((step) => step.y >= plot.top - 0.5 && step.y <= plot.bottom)
  const groups: { y: number; label: number; first: number; last: number }[] = []
  for (const step of inside) {
    const label = Math.max(step.y + 4, plot.top + 8)
    const group = groups[groups.length - 1]
    if (group !== undefined && label - group.label < stepPitch) group.last = step.number
    else groups.push({ y: step.y, label, first: step.number, last: step.number })
  }
  if (groups.length === 0) return ''
  const labels = groups.map(({ label, first, last }) =>
    lettering(first === last ? String(first) : `${first}–${last}`, {
      x: plot.right + 11,
      y: label,
      fill: palette.quiet,
      size: sizes.small,
    }),
  )
  return element(
    'g',
    {},
    element('path', {
      d: inside.map((step) => `M${rounded(plot.right)} ${rounded(step.y)}h7`).join(''),
      stroke: palette.ink,
      'stroke-width': 0.8,
      fill: 'none',
    }),
    element('path', {
      d: groups.map((group) => `M${rounded(plot.left)} ${rounded(group.y)}H${rounded(plot.right)}`).join(''),
      stroke: palette.paper,
      'stroke-width': 0.8,
      fill: 'none',
    }),
    lettering('step', { x: plot.right + 11, y: plot.top - 8, fill: palette.quiet, size: sizes.small }),
    ...labels,
  )
}
