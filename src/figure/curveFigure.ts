import { axes, speedAxisHeight } from './axes.ts'
import { type CurveFigureData, type CurveFigureOptions, curveFigureDefaults } from './curveData.ts'
import { description } from './description.ts'
import { domainOf, isDrawable } from './domain.ts'
import { fittedCurve } from './fittedCurve.ts'
import { type LegendEntry, legend } from './legend.ts'
import { lettering } from './lettering.ts'
import type { Markup } from './markup.ts'
import { biasBars, biasMarks, pointMarks } from './pointMarks.ts'
import { wetRegimes } from './regimeNames.ts'
import { regimeStripHeight, regimes } from './regimes.ts'
import { sharedBracket } from './sharedBracket.ts'
import { footNote, heading, picture, sheetOf } from './sheet.ts'
import { signKey } from './signKey.ts'
import { signsOnPoints } from './signPlaces.ts'
import { type Sign, signsOf } from './signs.ts'
import { type Stage, stageOf } from './stage.ts'
import { windowLanes } from './windowLanes.ts'
import { hatching, windowShade } from './windowShade.ts'

/**
 * The friction curve of one record as SVG text: points with their own 95 % bars, the shared part as one bracket, fit and band,
 * regimes, the believable window with its limits, the bias bound of partial turns, and remarks as signs.
 * Pure and repeatable: equal data and options give equal bytes.
 */
export function curveFigure(data: CurveFigureData, options: Partial<CurveFigureOptions> = {}): Markup {
  const chosen = { ...curveFigureDefaults, ...options }
  if (!(chosen.plotHeight >= 160 && chosen.plotHeight <= 1200)) {
    throw new RangeError(`plotHeight must be 160 to 1200 px, got ${chosen.plotHeight} px`)
  }
  const sheet = sheetOf(chosen)
  const domain = domainOf(data, chosen.frictionAxis)
  const head = heading(data, sheet)
  const stage = stageOf(domain, head.height + regimeStripHeight(data.curve), chosen)
  const signs = signsOf(data.points)
  const below = belowPlot(data, signs, stage)
  const words = description(data, domain, signs)
  const body = [head.markup, inside(data, signs, stage), ...below.pieces]
  return picture({ sheet, title: data.title, words, height: below.bottom + 10, defs: [hatching(stage)], body })
}

/** From back to front, so that points lie over lines and signs over points. */
function inside(data: CurveFigureData, signs: readonly Sign[], stage: Stage): Markup {
  const pieces = [
    axes(stage),
    windowShade(data.window, data.points, stage),
    regimes(data.curve, data.regimes ?? wetRegimes, stage),
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
    (top: number) => footNote(data, { left: stage.plot.left, top }, stage),
  ]) {
    const block = draw(y)
    pieces.push(block.markup)
    y += block.height
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
