import { axes, speedAxisHeight, speedUnit } from '../axes.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import type { Palette } from '../palette.ts'
import { shortNumber } from '../panel.ts'
import { footNote, heading, picture, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { type Stage, stageOf } from '../stage.ts'

/** What can be said at one speed. */
export type DrawnVerdict = 'pass' | 'fail' | 'cannotTell'

/** Friction at one speed with the interval that decides, and the verdict. */
export interface JudgedSpeed {
  /** m/s. */
  readonly slidingSpeed: number
  readonly friction: number
  readonly low: number
  readonly high: number
  readonly passGuard: number
  readonly verdict: DrawnVerdict
}

/** Friction against a written limit. */
export interface LimitFigureData extends Words {
  readonly lower: number | null
  readonly upper: number | null
  readonly verdict: DrawnVerdict
  readonly sentence: string
  readonly speeds: readonly JudgedSpeed[]
}

export type LimitFigureOptions = SheetOptions & { readonly plotHeight: number }

const defaults: LimitFigureOptions = { palette: 'light', width: 880, id: 'limit', plotHeight: 330 }

/** Words of the three verdicts; shapes of their own tell them where colour does not. */
const verdictWords: Readonly<Record<DrawnVerdict, string>> = {
  pass: 'pass',
  fail: 'fail',
  cannotTell: 'cannot tell',
}

/** Friction at the judged speeds with the deciding intervals, the written limit, and the guard band inside it. */
export function limitFigure(data: LimitFigureData, options: Partial<LimitFigureOptions> = {}): Markup {
  const all = { ...defaults, ...options }
  const sheet = sheetOf(all)
  const head = heading(data, sheet)
  const speeds = [...data.speeds].sort((a, b) => a.slidingSpeed - b.slidingSpeed)
  const stage = stageOf(domainOf({ ...data, speeds }), head.height + 8, {
    ...all,
    margins: { left: 74, right: 126 },
  })
  const below = stage.plot.bottom + speedAxisHeight
  const key = verdictKey({ x: stage.plot.left, y: below + 14 }, stage)
  const foot = footNote(
    { ...data, note: [data.sentence, data.note ?? ''].join(' ').trim() },
    { left: 16, top: below + 26 },
    sheet,
  )
  const body = [
    head.markup,
    forbidden(data, stage),
    guardBand({ ...data, speeds }, stage),
    axes(stage),
    limitLine(data.upper, 'upper limit', stage),
    limitLine(data.lower, 'lower limit', stage),
    ...speeds.map((speed) => speedMark(speed, stage)),
    key,
    foot.markup,
  ]
  return picture({ sheet, title: data.title, words: inWords(data), height: below + 26 + foot.height + 12, body })
}

function domainOf({ speeds, lower, upper }: LimitFigureData): Stage['domain'] {
  const places = speeds.map(({ slidingSpeed }) => slidingSpeed)
  const values = [
    ...speeds.flatMap(({ friction, low, high }) => [friction, low, high]),
    ...[lower, upper].filter((end) => end !== null),
  ].filter(Number.isFinite)
  const least = Math.min(...values)
  const most = Math.max(...values)
  const air = Math.max(0.12 * (most - least), 0.02 * Math.abs(most))
  const [slow, fast] = [Math.min(...places), Math.max(...places)]
  const around = slow === fast ? 2 : 1.25
  return { speed: [slow / around, fast * around], friction: [least - air, most + air], frictionLog: false }
}

/** What lies beyond the limit is shaded. */
function forbidden({ lower, upper }: LimitFigureData, { plot, palette, y }: Stage): Markup {
  const shade = (top: number, bottom: number): Markup =>
    bottom - top < 0.5
      ? ''
      : element('rect', {
          x: plot.left,
          y: top,
          width: plot.right - plot.left,
          height: bottom - top,
          fill: palette.stops,
          'fill-opacity': 0.09,
        })
  return (upper === null ? '' : shade(plot.top, y(upper))) + (lower === null ? '' : shade(y(lower), plot.bottom))
}

/** Between the limit and this line nothing passes; it follows the uncertainty from speed to speed. */
function guardBand({ speeds, lower, upper }: LimitFigureData, stage: Stage): Markup {
  const band = (limit: number | null, inwards: 1 | -1): Markup => {
    if (limit === null || speeds.every(({ passGuard }) => passGuard === 0)) return ''
    const places = speeds.map((speed) => ({
      x: stage.x(speed.slidingSpeed),
      y: stage.y(limit + inwards * speed.passGuard),
    }))
    const edge = places.map(({ x, y }) => `L${rounded(x)} ${rounded(y)}`).join('')
    const first = places[0]
    const last = places[places.length - 1]
    const d = `M${stage.plot.left} ${rounded(stage.y(limit))}L${stage.plot.left} ${rounded(first.y)}${edge}L${stage.plot.right} ${rounded(last.y)}V${rounded(stage.y(limit))}Z`
    return element('path', { d, fill: stage.palette.caution, 'fill-opacity': 0.2 })
  }
  return band(upper, -1) + band(lower, 1)
}

function limitLine(limit: number | null, words: string, { plot, palette, y }: Stage): Markup {
  if (limit === null) return ''
  return (
    element('path', {
      d: `M${plot.left} ${rounded(y(limit))}H${plot.right}`,
      stroke: palette.ink,
      'stroke-width': 2,
      fill: 'none',
    }) +
    lettering(`${words} ${shortNumber(limit)}`, {
      x: plot.right + 8,
      y: y(limit) + 4,
      fill: palette.ink,
      size: sizes.small,
      weight: 600,
    })
  )
}

function speedMark({ slidingSpeed, friction, low, high, verdict }: JudgedSpeed, stage: Stage): Markup {
  const x = stage.x(slidingSpeed)
  const [top, bottom] = [stage.y(high), stage.y(low)]
  const bar = `M${rounded(x)} ${rounded(top)}V${rounded(bottom)}M${rounded(x - 4)} ${rounded(top)}h8M${rounded(x - 4)} ${rounded(bottom)}h8`
  return (
    element('path', { d: bar, stroke: stage.palette.ink, 'stroke-width': 1.2, fill: 'none' }) +
    verdictMark(verdict, { x, y: stage.y(friction) }, stage.palette)
  )
}

/** Disc: pass; cross on a square: fail; hollow diamond: cannot tell. */
function verdictMark(verdict: DrawnVerdict, { x, y }: { x: number; y: number }, palette: Palette): Markup {
  switch (verdict) {
    case 'pass':
      return element('circle', { cx: x, cy: y, r: 5, fill: palette.accent, stroke: palette.paper })
    case 'fail':
      return (
        element('rect', { x: x - 5.5, y: y - 5.5, width: 11, height: 11, fill: palette.stops, stroke: palette.paper }) +
        element('path', {
          d: `M${rounded(x - 3)} ${rounded(y - 3)}l6 6m0 -6l-6 6`,
          stroke: palette.onStops,
          'stroke-width': 1.6,
          fill: 'none',
        })
      )
    case 'cannotTell':
      return element('path', {
        d: `M${rounded(x)} ${rounded(y - 6.5)}l6.5 6.5l-6.5 6.5l-6.5 -6.5z`,
        fill: palette.paper,
        stroke: palette.ink,
        'stroke-width': 1.6,
      })
  }
}

function verdictKey(at: { x: number; y: number }, { palette }: Stage): Markup {
  const entries: readonly DrawnVerdict[] = ['pass', 'cannotTell', 'fail']
  const marks = entries.map(
    (verdict, i) =>
      verdictMark(verdict, { x: at.x + 8 + 120 * i, y: at.y }, palette) +
      lettering(verdictWords[verdict], { x: at.x + 22 + 120 * i, y: at.y + 4, fill: palette.quiet, size: sizes.small }),
  )
  const band = element('rect', {
    x: at.x + 360,
    y: at.y - 6,
    width: 20,
    height: 12,
    fill: palette.caution,
    'fill-opacity': 0.3,
  })
  const words = lettering('guard band', { x: at.x + 386, y: at.y + 4, fill: palette.quiet, size: sizes.small })
  return marks.join('') + band + words
}

function inWords({ speeds, verdict, sentence, lower, upper }: LimitFigureData): string {
  const unit = speedUnit([
    Math.min(...speeds.map(({ slidingSpeed }) => slidingSpeed)),
    Math.max(...speeds.map(({ slidingSpeed }) => slidingSpeed)),
  ])
  const ends = [
    lower === null ? '' : `lower limit ${shortNumber(lower)}`,
    upper === null ? '' : `upper limit ${shortNumber(upper)}`,
  ]
  const each = speeds.map(
    (speed) =>
      `${shortNumber(speed.slidingSpeed / unit.metresPerSecond, 3)} ${unit.text}: ${shortNumber(speed.friction, 3)}, ${verdictWords[speed.verdict]}.`,
  )
  return [
    `Friction against a written limit, ${ends.filter((words) => words !== '').join(', ')}. Verdict: ${verdictWords[verdict]}.`,
    sentence,
    ...each,
  ].join(' ')
}
