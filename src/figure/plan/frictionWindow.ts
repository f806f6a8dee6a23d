import type { MetrePerSecond, Ratio } from '../../core/terms/index.ts'
import { speedAxisHeight } from '../axes.ts'
import { type LegendEntry, legend } from '../legend.ts'
import { element, type Markup } from '../markup.ts'
import { footNote, heading, picture, sheetOf, type Words } from '../sheet.ts'
import type { Stage } from '../stage.ts'
import { hatching } from '../windowShade.ts'
import { type FigureLimit, limitKey } from './limitKey.ts'
import { type LeftAxis, limitSign, linePath, type PlaneOptions, planeAxes, planeOf } from './plane.ts'

/** A step of the plan as a dot with its predicted interval. */
export interface FigureStep {
  readonly slidingSpeed: MetrePerSecond
  readonly friction: Ratio
  /** Relative standard uncertainty that the point will have. */
  readonly uncertainty: Ratio
  readonly direction: 1 | -1
}

/** A limit of friction as a line over the speeds; what lies beyond it cannot be measured. */
export interface FrictionBorder extends FigureLimit {
  /** At each speed; infinite where there is none. */
  readonly at: ArrayLike<Ratio>
  readonly forbids: 'below' | 'above'
}

/** The window at one load: which friction could be measured at which speed, and where friction is expected. */
export interface FrictionWindowData extends Words {
  readonly speeds: ArrayLike<MetrePerSecond>
  readonly friction: ArrayLike<Ratio>
  readonly low: ArrayLike<Ratio>
  readonly high: ArrayLike<Ratio>
  readonly borders: readonly FrictionBorder[]
  readonly steps: readonly FigureStep[]
}

const frictionWindowDefaults: PlaneOptions = {
  palette: 'light',
  width: 880,
  plotHeight: 340,
  id: 'frictionWindow',
}

/** Friction upwards on a logarithm: a decade beyond what is expected, and the borders that lie within. */
function axisOf({ low, high }: FrictionWindowData): LeftAxis {
  const least = Math.min(...Array.from(low))
  const most = Math.max(...Array.from(high))
  return { title: 'friction coefficient µ (1)', size: 1, range: [least / 12, Math.max(most * 4, 1)], log: true }
}

/** Speed to the right, friction upwards, both on logarithms. Equal data and options give equal bytes. */
export function frictionWindowFigure(data: FrictionWindowData, options: Partial<PlaneOptions> = {}): Markup {
  const chosen = { ...frictionWindowDefaults, ...options }
  const head = heading(data, sheetOf(chosen))
  const speeds = [data.speeds[0], data.speeds[data.speeds.length - 1]] as const
  const axis = axisOf(data)
  const stage = planeOf(speeds, axis, { top: head.height + 6, options: chosen })
  const { plot } = stage
  const seen = data.borders.filter((border) => seatOf(border, data, stage) !== undefined)
  const entries: LegendEntry[] = [{ mark: 'curve', text: 'friction as expected, and within which it is guessed' }]
  if (data.steps.length > 0) entries.push({ mark: 'point', text: 'planned step, 95 % of what it will say' })
  const top = plot.bottom + speedAxisHeight + 4
  const marks = legend(entries, top, stage)
  const key = limitKey(seen, { left: plot.left, top: top + marks.height + 4 }, stage)
  const bottom = top + marks.height + key.height + 6
  const foot = footNote(data, { left: plot.left, top: bottom }, stage)
  return picture({
    sheet: stage,
    title: data.title,
    words: wordsOf(data, seen),
    height: bottom + foot.height + 10,
    defs: [hatching(stage)],
    body: [
      head.markup,
      planeAxes(stage, axis),
      ...data.borders.map((border) => forbidden(border, data, stage)),
      expectedBand(data, stage),
      stepMarks(data.steps, stage),
      ...seen.map((border) => borderSign(border, data, stage)),
      marks.markup,
      key.markup,
      foot.markup,
    ],
  })
}

/** A line's places in the plot; where it leaves the plot it runs along the edge. */
function placesOf(line: ArrayLike<number>, { speeds }: FrictionWindowData, { x, y }: Stage): [number, number][] {
  return Array.from({ length: speeds.length }, (_, i) => [x(speeds[i]), y(Math.min(line[i], Number.MAX_VALUE))])
}

function forbidden(border: FrictionBorder, data: FrictionWindowData, stage: Stage): Markup {
  const { plot, palette, id, domain } = stage
  const [low, high] = domain.friction
  const below = border.forbids === 'below'
  const none = Array.from(border.at).every((at) => (below ? at <= low : at >= high))
  if (none) return ''
  const places = placesOf(border.at, data, stage)
  const edge = below ? plot.bottom : plot.top
  const land = `${linePath(places)}L${plot.right} ${edge}L${plot.left} ${edge}Z`
  const line = linePath(
    places.map(([x, y], i) => [x, border.at[i] > low && border.at[i] < high ? y : Number.NaN] as const),
  )
  return element(
    'g',
    {},
    element('path', { d: land, fill: palette.shade, 'fill-opacity': 0.07 }),
    element('path', { d: land, fill: `url(#${id}-hatch)` }),
    line === '' ? '' : element('path', { d: line, stroke: palette.quiet, 'stroke-width': 1.3, fill: 'none' }),
  )
}

function expectedBand(data: FrictionWindowData, stage: Stage): Markup {
  const { palette } = stage
  const upper = placesOf(data.high, data, stage)
  const lower = placesOf(data.low, data, stage).reverse()
  return (
    element('path', {
      d: `${linePath([...upper, ...lower])}Z`,
      fill: palette.accent,
      'fill-opacity': palette.bandOpacity,
    }) +
    element('path', {
      d: linePath(placesOf(data.friction, data, stage)),
      stroke: palette.accent,
      'stroke-width': 1.8,
      fill: 'none',
    })
  )
}

/** Dots of the steps with bars of two standard uncertainties. */
export function stepMarks(steps: readonly FigureStep[], { x, y, palette }: Stage): Markup {
  const bars = steps
    .map(({ slidingSpeed, friction, uncertainty }) => {
      const [low, high] = [friction * (1 - 2 * uncertainty), friction * (1 + 2 * uncertainty)]
      return linePath([
        [x(slidingSpeed), y(low)],
        [x(slidingSpeed), y(high)],
      ])
    })
    .join('')
  const dots = steps.map(({ slidingSpeed, friction, direction }) =>
    element('circle', {
      cx: x(slidingSpeed),
      cy: y(friction),
      r: 3.2,
      fill: direction === 1 ? palette.ink : palette.paper,
      stroke: palette.ink,
    }),
  )
  return element('g', {}, element('path', { d: bars, stroke: palette.ink, fill: 'none' }), ...dots)
}

/** Index of the speed at which a border's letter stands: the middle of where the line can be seen. */
function seatOf({ at }: FrictionBorder, { speeds }: FrictionWindowData, { domain }: Stage): number | undefined {
  const [low, high] = domain.friction
  const seen = Array.from({ length: speeds.length }, (_, i) => i).filter(
    (i) => at[i] > low * 1.15 && at[i] < high / 1.1,
  )
  return seen[seen.length >> 1]
}

/** The letters of borders stand apart from each other: each a little further along its line. */
function borderSign(border: FrictionBorder, data: FrictionWindowData, stage: Stage): Markup {
  const seat = seatOf(border, data, stage)
  if (seat === undefined) return ''
  const share = (data.borders.indexOf(border) - (data.borders.length - 1) / 2) * 0.16
  const [low, high] = stage.domain.friction
  const moved = Math.round(seat + share * data.speeds.length)
  const held = Math.min(data.speeds.length - 1, Math.max(0, moved))
  const i = border.at[held] > low * 1.15 && border.at[held] < high / 1.1 ? held : seat
  const { left, right } = stage.plot
  const x = Math.min(right - 10, Math.max(left + 10, stage.x(data.speeds[i])))
  return limitSign(border.sign, { x, y: stage.y(border.at[i]) }, stage)
}

function wordsOf({ steps, friction, speeds }: FrictionWindowData, seen: readonly FigureLimit[]): string {
  const two = (value: number): string => String(Number(value.toPrecision(2)))
  const last = speeds.length - 1
  const expected = `Friction is expected at ${two(friction[0])} at ${two(speeds[0] * 1000)} mm/s and ${two(friction[last])} at ${two(speeds[last] * 1000)} mm/s.`
  const planned = steps.length === 0 ? 'No step can be measured.' : `${steps.length} steps are planned.`
  const limits = seen.length === 0 ? '' : ` Limits in sight: ${seen.map(({ words }) => words).join('; ')}.`
  return `Speed against friction at the planned load. ${expected} ${planned}${limits}`
}
