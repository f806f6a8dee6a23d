import { type Dimension, fromSi, readableUnit } from '../../core/quantity/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Box, Sheet } from '../sheet.ts'
import { linearTicks, tickLabel } from '../ticks.ts'
import type { TurnMapFigureData } from './turnMapData.ts'

/** Each quantity's name and what it measures. */
const quantityWords: Readonly<
  Record<TurnMapFigureData['quantity'], { readonly words: string; readonly dimension: Dimension }>
> = {
  friction: { words: 'friction µ', dimension: 'ratio' },
  frictionSwing: { words: 'friction swing', dimension: 'ratio' },
  axialForce: { words: 'axial force', dimension: 'force' },
  gap: { words: 'gap', dimension: 'length' },
}

/** A quantity's name, its unit for a range, and its values in that unit. */
export function quantityScale(quantity: TurnMapFigureData['quantity'], [low, high]: readonly [number, number]) {
  const { words, dimension } = quantityWords[quantity]
  if (quantity === 'friction') return { words, unit: '1', inUnit: (value: number): number => value }
  if (quantity === 'frictionSwing') return { words, unit: '%', inUnit: (value: number): number => 100 * value }
  const unit = readableUnit(Math.max(Math.abs(low), Math.abs(high)), dimension)
  return { words, unit: unit.text, inUnit: (value: number): number => fromSi(value, unit) }
}

/** The colours as a gradient for `defs`, bright at the top. */
export const colourGradient = (stops: readonly string[], id: string): Markup =>
  element(
    'linearGradient',
    { id: `${id}-colours`, x1: 0, y1: 1, x2: 0, y2: 0 },
    ...stops.map((stop, index) =>
      element('stop', { offset: (index / (stops.length - 1)).toFixed(4), 'stop-color': stop }),
    ),
  )

interface Bar {
  readonly data: TurnMapFigureData
  readonly box: Box
  /** Whether cells lie beyond either end. */
  readonly beyond: readonly [boolean, boolean]
}

/** The bar that tells values from colours, with a tip at an end beyond which there are cells. */
export function colourBar({ data, box, beyond }: Bar, { palette, id }: Sheet): Markup {
  const { range } = data.map
  if (range === null) return ''
  const { words, unit, inUnit } = quantityScale(data.quantity, range)
  const [low, high] = [inUnit(range[0]), inUnit(range[1])]
  const y = (value: number): number =>
    high > low ? box.bottom - ((value - low) / (high - low)) * (box.bottom - box.top) : (box.bottom + box.top) / 2
  const ticks = high > low ? linearTicks(low, high, 30 / (box.bottom - box.top)) : [low]
  const labels = ticks.map((tick) =>
    lettering(tickLabel(tick), { x: box.right + 9, y: y(tick) + 4, fill: palette.quiet, size: sizes.small }),
  )
  const strokes = ticks.map((tick) => `M${rounded(box.right)} ${rounded(y(tick))}h5`).join('')
  const middle = (box.left + box.right) / 2
  const tips = [
    beyond[0] ? `M${box.left} ${box.bottom + 3}H${box.right}L${rounded(middle)} ${box.bottom + 10}Z` : '',
    beyond[1] ? `M${box.left} ${box.top - 3}H${box.right}L${rounded(middle)} ${box.top - 10}Z` : '',
  ].join('')
  return element(
    'g',
    {},
    element('rect', {
      x: box.left,
      y: box.top,
      width: box.right - box.left,
      height: box.bottom - box.top,
      fill: `url(#${id}-colours)`,
      stroke: palette.ink,
      'stroke-width': 0.7,
    }),
    tips === '' ? '' : element('path', { d: tips, fill: palette.ink }),
    element('path', { d: strokes, stroke: palette.ink, fill: 'none' }),
    ...labels,
    lettering(words, { x: box.left, y: box.top - 32, fill: palette.ink, size: sizes.small }),
    lettering(`(${unit})`, { x: box.left, y: box.top - 18, fill: palette.quiet, size: sizes.small }),
  )
}
