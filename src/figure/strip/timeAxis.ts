import type { Second } from '../../core/terms/index.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Box, Sheet } from '../sheet.ts'
import { linearTicks, tickLabel } from '../ticks.ts'

/** Height below the panels that the axis of time takes. */
export const timeAxisHeight = 42

/** Seconds up to half an hour, then minutes, from six hours on hours. */
export function timeUnit([from, to]: readonly [Second, Second]): { readonly text: string; readonly seconds: number } {
  const longest = Math.max(Math.abs(from), Math.abs(to))
  if (longest > 21_600) return { text: 'h', seconds: 3600 }
  return longest > 1800 ? { text: 'min', seconds: 60 } : { text: 's', seconds: 1 }
}

export function timeAxis(time: readonly [Second, Second], panels: Box, { palette }: Sheet): Markup {
  const unit = timeUnit(time)
  const [from, to] = [time[0] / unit.seconds, time[1] / unit.seconds]
  const x = (value: number): number => panels.left + ((value - from) / (to - from)) * (panels.right - panels.left)
  const ticks = linearTicks(from, to, 52 / (panels.right - panels.left)).filter((tick) => tick >= from && tick <= to)
  const y = panels.bottom
  const labels = ticks.map((tick) =>
    lettering(tickLabel(tick), { x: x(tick), y: y + 19, fill: palette.quiet, size: sizes.small, anchor: 'middle' }),
  )
  const strokes = ticks.map((tick) => `M${rounded(x(tick))} ${y}v6`).join('')
  return element(
    'g',
    {},
    element('path', { d: `M${panels.left} ${y}H${panels.right}${strokes}`, stroke: palette.ink, fill: 'none' }),
    ...labels,
    lettering(`time (${unit.text})`, {
      x: (panels.left + panels.right) / 2,
      y: y + 36,
      fill: palette.ink,
      anchor: 'middle',
    }),
  )
}
