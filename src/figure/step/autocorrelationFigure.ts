import { element, type Markup, rounded } from '../markup.ts'
import { footNote, heading, picture, type Sheet, sheetOf, type Words } from '../sheet.ts'
import { tickLabel } from '../ticks.ts'
import { acrossHeight, type PlainPlot, plainAxes, plainMargins, plainPlot } from './plainPlot.ts'
import { plotKey } from './plotKey.ts'
import { checkedHeight, type StepFigureOptions } from './stepTraceFigure.ts'

/** How long the readings of one step remember. */
export interface AutocorrelationFigureData extends Words {
  /** Autocorrelation at lag 0, 1, 2 …, each a share of that at lag 0. */
  readonly correlations: ArrayLike<number>
  /** Readings behind it. */
  readonly readings: number
  /** Time from one lag to the next, s. */
  readonly lag: number
  /** τ = 1 + 2Σρ in lags: so many readings weigh as one; null where none could be had. */
  readonly time: number | null
}

const defaults: StepFigureOptions = { palette: 'light', width: 640, plotHeight: 150, id: 'memory' }

/** Autocorrelation of the readings about their value against the lag, with the band within which white noise would stay in 95 of 100 lags. */
export function autocorrelationFigure(
  data: AutocorrelationFigureData,
  options: Partial<StepFigureOptions> = {},
): Markup {
  const chosen = checkedHeight({ ...defaults, ...options })
  const sheet = sheetOf(chosen)
  const head = heading(data, sheet)
  const box = {
    left: plainMargins.left,
    right: sheet.width - plainMargins.right,
    top: head.height + 6,
    bottom: head.height + 6 + chosen.plotHeight,
  }
  const { correlations, lag } = data
  const last = Math.max(1, correlations.length - 1)
  const least = Math.min(0, ...Array.from(correlations).filter(Number.isFinite))
  const plot = plainPlot(
    box,
    { from: -0.5 * lag, to: (last + 0.5) * lag, title: 'time between readings (s)' },
    { from: Math.max(-1, least - 0.15), to: 1.04, title: 'correlation (1)' },
  )
  const keyTop = box.bottom + acrossHeight + 4
  const key = plotKey(keyOf(data, sheet), { left: box.left, top: keyTop }, sheet)
  const foot = footNote(data, { left: box.left, top: keyTop + key.height }, sheet)
  const body = [
    head.markup,
    memoryTone(data, plot, sheet),
    plainAxes(plot, sheet),
    noiseBand(data, plot, sheet),
    bars(data, plot, sheet),
    key.markup,
    foot.markup,
  ]
  const height = keyTop + key.height + foot.height + 12
  return picture({ sheet, title: data.title, words: inWords(data), height, body })
}

/** White noise stays within ±1.96/√n in 95 of 100 lags (Bartlett 1946, for large n). */
const noiseLimit = (readings: number): number => 1.96 / Math.sqrt(readings)

function noiseBand({ readings }: AutocorrelationFigureData, { box, y }: PlainPlot, { palette }: Sheet): Markup {
  if (!(readings >= 2)) return ''
  const limit = noiseLimit(readings)
  const zero = element('path', {
    d: `M${box.left} ${rounded(y(0))}H${box.right}`,
    stroke: palette.ink,
    'stroke-width': 0.8,
  })
  const edges = `M${box.left} ${rounded(y(limit))}H${box.right}M${box.left} ${rounded(y(-limit))}H${box.right}`
  return zero + element('path', { d: edges, stroke: palette.shared, 'stroke-dasharray': '5 4', fill: 'none' })
}

/** So many lags weigh as one reading. */
function memoryTone({ time, lag }: AutocorrelationFigureData, { box, x }: PlainPlot, { palette }: Sheet): Markup {
  if (time === null || !(time > 1)) return ''
  const width = x(time * lag) - box.left
  const look = { fill: palette.accent, 'fill-opacity': palette.bandOpacity }
  return element('rect', { x: box.left, y: box.top, width, height: box.bottom - box.top, ...look })
}

function bars({ correlations, lag }: AutocorrelationFigureData, { x, y, box }: PlainPlot, { palette }: Sheet): Markup {
  const pitch = (box.right - box.left) / Math.max(2, correlations.length)
  let d = ''
  for (let at = 0; at < correlations.length; at++) {
    if (Number.isFinite(correlations[at]))
      d += `M${rounded(x(at * lag))} ${rounded(y(0))}V${rounded(y(correlations[at]))}`
  }
  return d === ''
    ? ''
    : element('path', { d, fill: 'none', stroke: palette.ink, 'stroke-width': Math.max(0.8, Math.min(4, 0.5 * pitch)) })
}

function keyOf({ time, readings }: AutocorrelationFigureData, { palette }: Sheet) {
  const edge = ({ x, y }: { x: number; y: number }): Markup =>
    element('path', {
      d: `M${rounded(x - 11)} ${y}h22`,
      stroke: palette.shared,
      'stroke-dasharray': '5 4',
      fill: 'none',
    })
  const tone = ({ x, y }: { x: number; y: number }): Markup =>
    element('rect', {
      x: x - 10,
      y: y - 6,
      width: 20,
      height: 12,
      fill: palette.accent,
      'fill-opacity': palette.bandOpacity + 0.1,
    })
  return [
    ...(readings >= 2 ? [{ text: 'white noise stays inside in 95 of 100', draw: edge }] : []),
    ...(time !== null && time > 1 ? [{ text: `weighs as one reading: ${two(time)}`, draw: tone }] : []),
  ]
}

function inWords({ time, readings, lag }: AutocorrelationFigureData): string {
  if (time === null) return `${readings} readings; how long they remember could not be told.`
  const weigh = `${two(time)} readings (${two(time * lag)} s) weigh as one: the ${readings} kept are worth about ${two(readings / time)} independent ones.`
  return time > 1.5 ? weigh : `Readings hardly remember the one before: ${weigh}`
}

const two = (value: number): string => tickLabel(Number(value.toPrecision(2)))
