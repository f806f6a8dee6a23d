import { speedAxis, speedAxisHeight } from '../axes.ts'
import { sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { type Panel, panelAxis, panelOf } from '../panel.ts'
import type { Sheet } from '../sheet.ts'
import { type Stage, stageOf } from '../stage.ts'
import { fitted } from '../textWidth.ts'

/** A plot over a logarithm of speed with a linear scale upwards. */
export interface SpeedPanel {
  readonly panel: Panel
  readonly stage: Stage
  /** Axes and rules. */
  readonly markup: Markup
  /** Where the space below the axis begins. */
  readonly bottom: number
}

interface SpeedPanelSetting {
  readonly sheet: Sheet & { readonly paletteName: 'light' | 'dark' | 'print' }
  readonly top: number
  readonly height: number
  readonly speeds: readonly number[]
  readonly values: readonly number[]
  readonly title: string
  readonly right?: number
}

/** Axes that all of the speeds and values fit into. One speed gets room to either side. */
export function speedPanel({ sheet, top, height, speeds, values, title, right = 60 }: SpeedPanelSetting): SpeedPanel {
  const air = 1.12
  const domain = {
    speed: [speeds[0] / air, speeds[speeds.length - 1] * air] as const,
    friction: [0, 1] as const,
    frictionLog: false,
  }
  const options = { palette: sheet.paletteName, id: sheet.id, width: sheet.width, plotHeight: height }
  const stage = stageOf(domain, top, { ...options, margins: { left: 74, right } })
  const panel = panelOf(stage.plot, values)
  return {
    panel,
    stage,
    markup: panelAxis(panel, fitted(title, sizes.small, height + 20), sheet) + speedAxis(stage),
    bottom: stage.plot.bottom + speedAxisHeight,
  }
}

/** A line through values over speeds; what is no number breaks it. */
export function lineThrough(
  speeds: readonly number[],
  values: readonly number[],
  { stage, panel }: Pick<SpeedPanel, 'stage' | 'panel'>,
): string {
  let pen = 'M'
  return values
    .map((value, i) => {
      if (!Number.isFinite(value)) {
        pen = 'M'
        return ''
      }
      const step = `${pen}${rounded(stage.x(speeds[i]))} ${rounded(panel.y(value))}`
      pen = 'L'
      return step
    })
    .join('')
}

/** The area between two lines; nothing where they have fewer than two places. */
export function areaBetween(
  speeds: readonly number[],
  [low, high]: readonly [readonly number[], readonly number[]],
  on: Pick<SpeedPanel, 'stage' | 'panel'>,
): string {
  if (speeds.length < 2) return ''
  const back = lineThrough(speeds.toReversed(), low.toReversed(), on)
  return `${lineThrough(speeds, high, on)}${back.replace('M', 'L')}Z`
}

/** A bar with ends at one speed, where there is no line to draw. */
export const barAt = (x: number, [low, high]: readonly [number, number], stroke: string): Markup =>
  element('path', {
    d: `M${rounded(x)} ${rounded(low)}V${rounded(high)}M${rounded(x - 5)} ${rounded(low)}h10M${rounded(x - 5)} ${rounded(high)}h10`,
    stroke,
    'stroke-width': 1.6,
    fill: 'none',
  })
