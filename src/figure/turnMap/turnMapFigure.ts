import { lettering, sizes } from '../lettering.ts'
import { element, type Markup } from '../markup.ts'
import { type Box, footNote, heading, picture, type Sheet, sheetOf } from '../sheet.ts'
import { tickLabel } from '../ticks.ts'
import { hatching } from '../windowShade.ts'
import { cellImage, mapFrame } from './cellImage.ts'
import { colourBar, colourGradient, quantityScale } from './colourBar.ts'
import { colourStops } from './colourScale.ts'
import { angleAxis, angleAxisHeight, isEven, stepTicks, turnAxis } from './mapAxes.ts'
import {
  type TurnCells,
  type TurnMapFigureData,
  type TurnMapFigureOptions,
  turnMapFigureDefaults,
} from './turnMapData.ts'

/** Margins beside the map; the right one holds the steps and the bar of colours. */
const margins = { left: 66, steps: 64, bar: 86 } as const

/**
 * Turn number down, place in the turn across, the value as colour: what repeats every turn stands upright, what changes
 * with time runs from top to bottom, what belongs to a step ends with it. Empty cells are hatched.
 */
export function turnMapFigure(data: TurnMapFigureData, options: Partial<TurnMapFigureOptions> = {}): Markup {
  const chosen = { ...turnMapFigureDefaults, ...options }
  if (!(chosen.plotHeight >= 80 && chosen.plotHeight <= 1200)) {
    throw new RangeError(`plotHeight must be 80 to 1200 px, got ${chosen.plotHeight} px`)
  }
  const sheet = sheetOf(chosen)
  const { map } = data
  const cells = looked(map)
  const head = heading(data, sheet)
  const top = head.height + 18
  const right = chosen.width - margins.bar - (data.steps === undefined ? 20 : margins.steps)
  const plot: Box = { left: margins.left, right, top, bottom: top + chosen.plotHeight }
  const bar: Box = {
    left: chosen.width - margins.bar,
    right: chosen.width - margins.bar + 14,
    top: top + 32,
    bottom: plot.bottom - 40,
  }
  const stops = colourStops(chosen.palette, data.diverging === true)
  const notes = [
    map.rows > 0 && !isEven(map) ? 'Rows hold more turns where the shaft is fast.' : '',
    cells.below || cells.above ? 'The colours span the middle 99 % of the cells.' : '',
    data.note ?? '',
  ]
  const note = notes.filter((sentence) => sentence !== '').join(' ')
  const foot = footNote({ title: '', note }, { left: plot.left, top: plot.bottom + angleAxisHeight }, sheet)
  const body = [
    head.markup,
    emptyTone(plot, sheet),
    cellImage(map, stops, plot),
    mapFrame(plot, sheet.palette.ink),
    map.range === null ? nothingThere(plot, sheet) : '',
    map.rows === 0 ? '' : turnAxis(map, plot, sheet),
    map.rows === 0 ? '' : stepTicks(data, plot, sheet),
    angleAxis(plot, sheet),
    colourBar({ data, box: bar, beyond: [cells.below, cells.above] }, sheet),
    cells.empty > 0 && map.range !== null ? emptyKey({ left: bar.left, top: bar.bottom + 24 }, sheet) : '',
    foot.markup,
  ]
  return picture({
    sheet,
    title: data.title,
    words: inWords(data, cells.empty),
    height: plot.bottom + angleAxisHeight + foot.height + 12,
    defs: [hatching(sheet), colourGradient(stops, sheet.id)],
    body,
  })
}

interface Looked {
  readonly empty: number
  readonly below: boolean
  readonly above: boolean
}

function looked({ mean, range }: TurnCells): Looked {
  const [low, high] = range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  let empty = 0
  let below = false
  let above = false
  for (let cell = 0; cell < mean.length; cell++) {
    const value = mean[cell]
    if (Number.isNaN(value)) empty++
    else if (value < low) below = true
    else if (value > high) above = true
  }
  return { empty, below, above }
}

const emptyTone = (plot: Box, { id }: Sheet): Markup =>
  element('rect', {
    x: plot.left,
    y: plot.top,
    width: plot.right - plot.left,
    height: plot.bottom - plot.top,
    fill: `url(#${id}-hatch)`,
  })

const nothingThere = (plot: Box, { palette }: Sheet): Markup =>
  lettering('no value in any turn', {
    x: (plot.left + plot.right) / 2,
    y: (plot.top + plot.bottom) / 2 + 4,
    fill: palette.ink,
    anchor: 'middle',
  })

const emptyKey = ({ left, top }: { left: number; top: number }, { palette, id }: Sheet): Markup =>
  element('rect', { x: left, y: top, width: 14, height: 12, fill: `url(#${id}-hatch)`, stroke: palette.shade }) +
  lettering('empty', { x: left + 23, y: top + 10, fill: palette.quiet, size: sizes.small })

/** The map in words, for people who hear it. */
function inWords({ map, quantity }: TurnMapFigureData, empty: number): string {
  if (map.range === null) return 'A turn map without a value.'
  const { words, unit, inUnit } = quantityScale(quantity, map.range)
  const [low, high] = map.range.map((value) => tickLabel(Number(inUnit(value).toPrecision(3))))
  const [first, last] = [map.turns[0], map.turns[map.rows]]
  const share = Math.round((100 * empty) / Math.max(1, map.mean.length))
  const rows = map.rows === last - first ? 'one turn a row' : `${map.rows} rows`
  return (
    `${words} as colour over turns ${first} to ${last} (down, ${rows}) and the place in the turn (across, ` +
    `${map.columns} cells): from ${low} to ${high}${unit === '1' ? '' : ` ${unit}`} in the middle 99 % of the cells; ${share} % of the cells are empty.`
  )
}
