import type { BelievableWindow, WindowLimit } from '../core/terms/index.ts'
import { speedUnit } from './axes.ts'
import { lettering, sizes } from './lettering.ts'
import { limitWords } from './limitWords.ts'
import { element, type Markup, rounded } from './markup.ts'
import type { Block } from './sheet.ts'
import type { Stage } from './stage.ts'
import { textWidth } from './textWidth.ts'
import { tickLabel } from './ticks.ts'

const laneHeight = 18

/**
 * Which limit cuts where, on the speed axis of the plot: the believable range as a bar, and below it one lane for each
 * limit that bites, each with its name and speed.
 */
export function windowLanes(window: BelievableWindow | null, top: number, stage: Stage): Block {
  if (window === null) return { markup: '', height: 0 }
  const biting = window.limits.filter((limit) => limit.slidingSpeed !== null)
  const marks = [believable(window, top, stage)]
  const rows: Lane[][] = []
  for (const limit of biting) {
    const lane = laneOf(limit, stage)
    let row = rows.findIndex((others) => others.every((other) => lane.left > other.right || lane.right < other.left))
    if (row < 0) row = rows.push([]) - 1
    rows[row]?.push(lane)
    marks.push(limitLane(lane, top + (row + 1.5) * laneHeight, stage))
  }
  return { markup: element('g', {}, ...marks), height: (rows.length + 1) * laneHeight + 8 }
}

/** A limit with its words, and the pixels from left to right that both take. */
interface Lane {
  readonly limit: WindowLimit
  readonly text: string
  readonly at: number
  readonly wordsOnRight: boolean
  readonly left: number
  readonly right: number
}

/** The words stand inside the range that the limit allows, unless there is no room. */
function laneOf(limit: WindowLimit, stage: Stage): Lane {
  const { plot } = stage
  const speed = limit.slidingSpeed ?? 0
  const at = stage.x(speed)
  const unit = speedUnit(stage.domain.speed)
  const shown = tickLabel(Number((speed / unit.metresPerSecond).toPrecision(2)))
  const text = `${limitWords[limit.name]}: ${limit.end === 'low' ? 'from' : 'up to'} ${shown} ${unit.text}`
  const width = textWidth(text, sizes.small) + 14
  const wordsOnRight = limit.end === 'low' ? at + width < plot.right : at - width < plot.left
  const outer = limit.end === 'low' ? plot.left : plot.right
  const far = wordsOnRight ? at + width : at - width
  return { limit, text, at, wordsOnRight, left: Math.min(outer, at, far), right: Math.max(outer, at, far) }
}

function believable(window: BelievableWindow, top: number, stage: Stage): Markup {
  const { plot, palette } = stage
  const y = top + laneHeight / 2
  const name = lettering('believe', { x: plot.left - 9, y: y + 4, fill: palette.ink, size: sizes.small, anchor: 'end' })
  if (window.low === null || window.high === null) {
    return (
      name +
      lettering('at no speed of this record', { x: plot.left + 4, y: y + 4, fill: palette.ink, size: sizes.small })
    )
  }
  const low = stage.x(window.low)
  const high = Math.max(stage.x(window.high), low + 2)
  const bar = element('path', {
    d: `M${rounded(low)} ${y}H${rounded(high)}M${rounded(low)} ${y - 5}v10M${rounded(high)} ${y - 5}v10`,
    stroke: palette.accent,
    'stroke-width': 2.4,
    fill: 'none',
  })
  return name + bar
}

/** The line covers what the limit rules out. */
function limitLane({ limit, text, at, wordsOnRight }: Lane, y: number, stage: Stage): Markup {
  const { plot, palette } = stage
  const outer = limit.end === 'low' ? plot.left : plot.right
  const line = element('path', {
    d: `M${rounded(outer)} ${y}H${rounded(at)}M${rounded(at)} ${y - 4}v8`,
    stroke: palette.quiet,
    'stroke-width': 1.2,
    'stroke-dasharray': '5 3',
    fill: 'none',
  })
  const x = wordsOnRight ? at + 7 : at - 7
  const anchor = wordsOnRight ? 'start' : 'end'
  return line + lettering(text, { x, y: y + 4, fill: palette.quiet, size: sizes.small, anchor })
}
