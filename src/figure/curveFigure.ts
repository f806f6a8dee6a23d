import { axes, speedAxisHeight } from './axes.ts'
import { type CurveFigureData, type CurveFigureOptions, curveFigureDefaults } from './curveData.ts'
import { description } from './description.ts'
import { domainOf, isDrawable } from './domain.ts'
import { fittedCurve } from './fittedCurve.ts'
import { type LegendEntry, legend } from './legend.ts'
import { lettering, sizes } from './lettering.ts'
import { element, escaped, type Markup } from './markup.ts'
import { biasBars, biasMarks, pointMarks } from './pointMarks.ts'
import { regimeStripHeight, regimes } from './regimes.ts'
import { sharedBracket } from './sharedBracket.ts'
import { signKey } from './signKey.ts'
import { signsOnPoints } from './signPlaces.ts'
import { type Sign, signsOf } from './signs.ts'
import { type Stage, stageOf } from './stage.ts'
import { fitted, wrapped } from './textWidth.ts'
import { windowLanes } from './windowLanes.ts'
import { hatching, windowShade } from './windowShade.ts'

/** Fonts by wish; every one of them has tabular figures. */
const fonts = "'Source Sans 3', 'Noto Sans', 'DejaVu Sans', system-ui, sans-serif"

/**
 * The friction curve of one record as SVG text: points with their own 95 % bars, the shared part as one bracket, fit and band,
 * regimes, the believable window with its limits, the bias bound of partial turns, and remarks as signs.
 * Pure and repeatable: equal data and options give equal bytes.
 */
export function curveFigure(data: CurveFigureData, options: Partial<CurveFigureOptions> = {}): Markup {
  const chosen = { ...curveFigureDefaults, ...options }
  if (!(chosen.width >= 480 && chosen.width <= 2000))
    throw new RangeError(`width must be 480 to 2000 px, got ${chosen.width} px`)
  if (!(chosen.plotHeight >= 160 && chosen.plotHeight <= 1200)) {
    throw new RangeError(`plotHeight must be 160 to 1200 px, got ${chosen.plotHeight} px`)
  }
  const domain = domainOf(data, chosen.frictionAxis)
  const headHeight = data.caption === undefined ? 40 : 60
  const stage = stageOf(domain, headHeight + regimeStripHeight(data.curve), chosen)
  const signs = signsOf(data.points)
  const below = belowPlot(data, signs, stage)
  const words = description(data, domain, signs)
  const body = [head(data, stage), inside(data, signs, stage), ...below.pieces]
  return picture({ stage, title: data.title, words, height: below.bottom + 10, body })
}

function head(data: CurveFigureData, stage: Stage): Markup {
  const { palette, width } = stage
  const title = lettering(fitted(data.title, sizes.title, width - 32), {
    x: 16,
    y: 28,
    fill: palette.ink,
    size: sizes.title,
    weight: 600,
  })
  if (data.caption === undefined) return title
  return title + lettering(fitted(data.caption, sizes.text, width - 32), { x: 16, y: 48, fill: palette.quiet })
}

/** From back to front, so that points lie over lines and signs over points. */
function inside(data: CurveFigureData, signs: readonly Sign[], stage: Stage): Markup {
  const pieces = [
    axes(stage),
    windowShade(data.window, data.points, stage),
    regimes(data.curve, stage),
    fittedCurve(data.curve, stage),
    biasMarks(biasBars(data.points, data.window, stage), stage),
    pointMarks(data.points, stage),
    signsOnPoints(data.points, signs, stage),
    sharedBracket(data.points, stage),
  ]
  if (!data.points.some(isDrawable)) pieces.push(emptyWords(stage))
  return pieces.join('')
}

const emptyWords = ({ plot, palette }: Stage): Markup =>
  lettering('no step gave a friction value', {
    x: (plot.left + plot.right) / 2,
    y: (plot.top + plot.bottom) / 2,
    fill: palette.ink,
    anchor: 'middle',
  })

function belowPlot(data: CurveFigureData, signs: readonly Sign[], stage: Stage): { pieces: Markup[]; bottom: number } {
  let y = stage.plot.bottom + speedAxisHeight + 4
  const pieces: Markup[] = []
  for (const draw of [
    (top: number) => windowLanes(data.window, top, stage),
    (top: number) => legend(entriesOf(data, stage), top, stage),
    (top: number) => signKey(signs, top, stage),
  ]) {
    const block = draw(y)
    pieces.push(block.markup)
    y += block.height
  }
  for (const line of wrapped(data.note ?? '', sizes.small, stage.width - 90)) {
    y += 16
    pieces.push(
      lettering(line, { x: stage.plot.left, y: y - 2, fill: stage.palette.quiet, size: sizes.small, italic: true }),
    )
  }
  return { pieces, bottom: y }
}

function entriesOf(data: CurveFigureData, stage: Stage): readonly LegendEntry[] {
  const entries: LegendEntry[] = []
  const drawable = data.points.filter(isDrawable)
  if (drawable.some((point) => point.trusted)) entries.push({ mark: 'point', text: 'step with its own 95 % interval' })
  if (drawable.some((point) => point.direction === -1))
    entries.push({ mark: 'falling', text: 'the same, speed falling' })
  if (drawable.some((point) => !point.trusted)) entries.push({ mark: 'hollow', text: 'not used by the fit' })
  if (drawable.length < data.points.length) entries.push({ mark: 'missing', text: 'step without a friction value' })
  if ((data.curve?.band.length ?? 0) >= 2) entries.push({ mark: 'curve', text: 'fit and its 95 % band' })
  if (biasBars(data.points, data.window, stage).length > 0) {
    entries.push({ mark: 'bias', text: 'bias that a partial turn may leave' })
  }
  if (windowShade(data.window, data.points, stage) !== '') entries.push({ mark: 'hatch', text: 'not to be believed' })
  return entries
}

interface Picture {
  readonly stage: Stage
  readonly title: string
  readonly words: string
  readonly height: number
  readonly body: readonly Markup[]
}

function picture({ stage, title, words, height, body }: Picture): Markup {
  const { id, width, palette } = stage
  return `${element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': fonts,
      style: 'font-variant-numeric: tabular-nums',
    },
    element('title', { id: `${id}-title` }, escaped(title)),
    element('desc', { id: `${id}-desc` }, escaped(words)),
    element('defs', {}, hatching(stage)),
    element('rect', { width, height, fill: palette.paper }),
    ...body,
  )}\n`
}
