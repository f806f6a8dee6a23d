import { type RecordStretch, type StretchKind, stretchKinds } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Block, Box, Sheet } from '../sheet.ts'
import { textWidth } from '../textWidth.ts'
import { hatching } from '../windowShade.ts'

/** What each kind of stretch is called in the key. */
export const stretchWords: Readonly<Record<StretchKind, string>> = {
  accepted: 'accepted',
  notFitted: 'not used by the fit',
  warmUp: 'cut as warm-up',
  outOfContact: 'out of contact',
  blank: 'blank, no contact meant',
}

/** Where stretches lie: the lane of signs above the panels, and the panels. */
export interface StretchPlace {
  readonly lane: { readonly top: number; readonly bottom: number }
  readonly panels: Box
  readonly x: (time: number) => number
}

/** Patterns that the tones refer to: strokes, crosses and dots, so that no meaning hangs on grey alone. */
export function stretchPatterns(sheet: Sheet): readonly Markup[] {
  const { id, palette } = sheet
  const pattern = (name: string, size: number, inside: Markup): Markup =>
    element('pattern', { id: `${id}-${name}`, width: size, height: size, patternUnits: 'userSpaceOnUse' }, inside)
  const cross = element('path', {
    d: 'M0 0L8 8M8 0L0 8',
    stroke: palette.stops,
    'stroke-width': 0.8,
    'stroke-opacity': 0.6,
  })
  const dot = element('circle', { cx: 3, cy: 3, r: 0.9, fill: palette.shade })
  const bars = element('path', { d: 'M0 0.5H6', stroke: palette.shade, 'stroke-width': 0.8, 'stroke-opacity': 0.6 })
  return [hatching(sheet), pattern('cross', 8, cross), pattern('dots', 6, dot), pattern('bars', 6, bars)]
}

const patternOf: Readonly<Record<Exclude<StretchKind, 'accepted'>, string>> = {
  notFitted: 'bars',
  warmUp: 'hatch',
  outOfContact: 'cross',
  blank: 'dots',
}

/** Tones over the panels. Neighbours of one kind are drawn as one. */
export function stretchTones(stretches: readonly RecordStretch[], place: StretchPlace, sheet: Sheet): Markup {
  const { panels, x } = place
  const box = { y: panels.top, height: panels.bottom - panels.top }
  const tones = joined(stretches).flatMap(({ kind, from, to }) => {
    if (kind === 'accepted') return []
    return [toned(kind, { x: x(from), width: Math.max(1, x(to) - x(from)), ...box }, sheet)]
  })
  return element('g', {}, ...tones)
}

interface Area {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

function toned(kind: Exclude<StretchKind, 'accepted'>, area: Area, { palette, id }: Sheet): Markup {
  const tone = kind === 'outOfContact' ? palette.stops : palette.shade
  return (
    element('rect', { ...area, fill: tone, 'fill-opacity': kind === 'blank' ? 0.05 : 0.12 }) +
    element('rect', { ...area, fill: `url(#${id}-${patternOf[kind]})` })
  )
}

/** A bar over what was accepted, a hollow one over what the fit leaves out, and the tones of the rest once more. */
export function stretchLane(stretches: readonly RecordStretch[], { lane, x }: StretchPlace, sheet: Sheet): Markup {
  const marks = joined(stretches).map(({ kind, from, to }) =>
    swatch(
      kind,
      { x: x(from), y: lane.top, width: Math.max(1, x(to) - x(from)), height: lane.bottom - lane.top },
      sheet,
    ),
  )
  return element('g', {}, ...marks)
}

function swatch(kind: StretchKind, area: Area, sheet: Sheet): Markup {
  const { palette } = sheet
  const bar = { ...area, y: area.y + area.height / 2 - 3, height: 6 }
  if (kind === 'accepted') return element('rect', { ...bar, fill: palette.accent })
  if (kind === 'notFitted') {
    const inside = { ...bar, x: bar.x + 0.6, width: Math.max(0.4, bar.width - 1.2) }
    return element('rect', { ...inside, fill: palette.paper, stroke: palette.accent, 'stroke-width': 1.2 })
  }
  return toned(kind, area, sheet)
}

/** What the tones mean, with the share of the time that each takes. */
export function stretchKey(
  stretches: readonly RecordStretch[],
  at: { left: number; top: number },
  sheet: Sheet,
): Block {
  const whole = stretches.reduce((sum, { from, to }) => sum + (to - from), 0)
  const pieces: Markup[] = []
  let { left: x } = at
  let y = at.top + 9
  for (const kind of stretchKinds) {
    const time = stretches.reduce((sum, one) => sum + (one.kind === kind ? one.to - one.from : 0), 0)
    if (!stretches.some((one) => one.kind === kind)) continue
    const text = `${stretchWords[kind]}, ${shareOf(time / whole)}`
    const wide = 28 + textWidth(text, sizes.small)
    if (x > at.left && x + wide > sheet.width - 16) {
      x = at.left
      y += 19
    }
    pieces.push(swatch(kind, { x, y: y - 6, width: 20, height: 12 }, sheet))
    pieces.push(lettering(text, { x: x + 27, y: y + 4, fill: sheet.palette.ink, size: sizes.small }))
    x += wide + 20
  }
  return { markup: element('g', {}, ...pieces), height: pieces.length === 0 ? 0 : y - at.top + 19 }
}

/** "82 %", "0.4 %", "99.9 %"; never "0 %" for something that is there. */
export function shareOf(share: number): string {
  if (!(share >= 0)) return '–'
  const percent = 100 * share
  if (percent > 0 && percent < 0.05) return 'under 0.1 %'
  return `${Number(percent.toFixed(percent < 9.95 || percent > 99 ? 1 : 0))} %`
}

function joined(stretches: readonly RecordStretch[]): readonly RecordStretch[] {
  const parts: RecordStretch[] = []
  for (const stretch of stretches) {
    const last = parts[parts.length - 1]
    if (last !== undefined && last.kind === stretch.kind && last.to === stretch.from) {
      parts[parts.length - 1] = { ...last, to: stretch.to }
    } else parts.push(stretch)
  }
  return parts
}

/** A hairline through the panels where a step begins, its number above where there is room. */
export function stepMarks(stretches: readonly RecordStretch[], place: StretchPlace, { palette }: Sheet): Markup {
  const steps = stretches.filter((one, index) => index === 0 || one.step !== stretches[index - 1].step)
  const lines = steps.map(({ from }) => `M${rounded(place.x(from))} ${place.lane.top}V${place.panels.bottom}`)
  const numbers: Markup[] = []
  let right = Number.NEGATIVE_INFINITY
  steps.forEach(({ step, from }, index) => {
    const next = steps[index + 1]?.from ?? stretches[stretches.length - 1].to
    const middle = (place.x(from) + place.x(next)) / 2
    const half = textWidth(String(step), sizes.small) / 2 + 2
    if (middle - half < right) return
    right = middle + half
    const at = { x: middle, y: place.lane.top - 4, fill: palette.quiet, size: sizes.small, anchor: 'middle' as const }
    numbers.push(lettering(String(step), at))
  })
  const strokes = element('path', { d: lines.join(''), stroke: palette.shade, 'stroke-width': 0.7, fill: 'none' })
  return element('g', {}, lines.length === 0 ? '' : strokes, ...numbers)
}
