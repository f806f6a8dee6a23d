import { speedAxis, speedAxisHeight } from '../axes.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { levelLine, type Panel, panelAxis, panelOf, shortNumber } from '../panel.ts'
import { type Box, footNote, heading, picture, type Sheet, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { stageOf } from '../stage.ts'
import { fitted } from '../textWidth.ts'

/** Statistics of one laboratory at one speed. */
export interface RoundMark {
  readonly h: number | null
  readonly k: number | null
}

/** One speed of the round. */
export interface RoundLevel {
  /** m/s. */
  readonly slidingSpeed: number
  /** Shares of the mean friction. */
  readonly repeatability: number
  readonly reproducibility: number
  /** In the order of the laboratories. */
  readonly marks: readonly RoundMark[]
}

/** Consistency of a round of laboratories, and its precision over the speed. */
export interface RoundFigureData extends Words {
  readonly laboratories: readonly string[]
  /** From slow to fast. */
  readonly levels: readonly RoundLevel[]
  readonly hCritical: number | null
  readonly kCritical: number | null
}

export type RoundFigureOptions = SheetOptions

const defaults: RoundFigureOptions = { palette: 'light', width: 880, id: 'round' }

const heights = { h: 170, k: 150, profile: 170 } as const
const nameHeight = 34

/**
 * h and k of every laboratory as bars, one for each speed from slow to fast, with their critical values; below them the
 * standard deviations within and between laboratories over the speed.
 */
export function roundFigure(data: RoundFigureData, options: Partial<RoundFigureOptions> = {}): Markup {
  const sheet = sheetOf({ ...defaults, ...options })
  const head = heading(data, sheet)
  const box = (top: number, height: number): Box => ({ left: 74, right: sheet.width - 118, top, bottom: top + height })
  const hBox = box(head.height + 10, heights.h)
  const kBox = box(hBox.bottom + nameHeight, heights.k)
  const profileBox = box(kBox.bottom + nameHeight + 12, heights.profile)
  const foot = footNote(data, { left: 16, top: profileBox.bottom + speedAxisHeight }, sheet)
  const { hCritical, kCritical } = data
  const hLines = hCritical === null ? [] : [hCritical, -hCritical]
  const body = [
    head.markup,
    bars(data, hBox, { pick: ({ h }) => h, lines: hLines, title: 'h, between laboratories', sheet }),
    bars(data, kBox, {
      ...{ pick: ({ k }) => k, title: 'k, within a laboratory', sheet },
      lines: kCritical === null ? [] : [kCritical],
    }),
    profile(data, profileBox, { sheet, options: { ...defaults, ...options } }),
    foot.markup,
  ]
  const height = profileBox.bottom + speedAxisHeight + foot.height + 12
  return picture({ sheet, title: data.title, words: inWords(data), height, body })
}

interface Bars {
  readonly pick: (mark: RoundMark) => number | null
  readonly lines: readonly number[]
  readonly title: string
  readonly sheet: Sheet
}

function bars(data: RoundFigureData, plot: Box, { pick, lines, title, sheet }: Bars): Markup {
  const { palette } = sheet
  const values = data.levels.flatMap(({ marks }) => marks.map(pick)).filter((value) => value !== null)
  const panel = panelOf(plot, [0, ...lines, ...values], 0.08)
  const room = (plot.right - plot.left) / Math.max(1, data.laboratories.length)
  const wide = Math.min(14, (0.8 * room) / Math.max(1, data.levels.length))
  const drawn = data.laboratories.flatMap((name, lab) => {
    const middle = plot.left + (lab + 0.5) * room
    const first = middle - (wide * data.levels.length) / 2
    return [
      ...data.levels.map(({ marks }, level) =>
        bar(pick(marks[lab]), { x: first + level * wide, wide, panel, lines }, sheet),
      ),
      lettering(fitted(name, sizes.small, room - 6), {
        x: middle,
        y: plot.bottom + 16,
        fill: palette.ink,
        size: sizes.small,
        anchor: 'middle',
      }),
    ]
  })
  const zero = element('path', {
    d: `M${rounded(plot.left)} ${rounded(panel.y(0))}H${rounded(plot.right)}`,
    stroke: palette.ink,
    fill: 'none',
  })
  return element(
    'g',
    {},
    panelAxis(panel, title, sheet),
    ...lines.map((value) =>
      levelLine(panel, { value, words: `critical ${shortNumber(value, 3)}`, dash: '7 4' }, sheet),
    ),
    ...drawn,
    zero,
  )
}

/** Bars beyond a critical value are filled with the colour of a stop and carry a hat, so that print tells them too. */
function bar(
  value: number | null,
  at: { readonly x: number; readonly wide: number; readonly panel: Panel; readonly lines: readonly number[] },
  { palette }: Sheet,
): Markup {
  if (value === null) return ''
  const { x, wide, panel, lines } = at
  const zero = panel.y(0)
  const end = panel.y(value)
  const beyond = lines.some((line) => (line > 0 ? value > line : value < line))
  const fill = beyond ? palette.stops : palette.accent
  const body = element('rect', {
    x: x + 0.1 * wide,
    y: Math.min(zero, end),
    width: 0.8 * wide,
    height: Math.max(0.6, Math.abs(end - zero)),
    fill,
    'fill-opacity': beyond ? 1 : 0.75,
  })
  if (!beyond) return body
  const tip = value > 0 ? end - 4 : end + 4
  const hat = `M${rounded(x + 0.5 * wide - 4)} ${rounded(tip)}l4 ${value > 0 ? -6 : 6}l4 ${value > 0 ? 6 : -6}z`
  return body + element('path', { d: hat, fill: palette.stops })
}

function profile(
  { levels }: RoundFigureData,
  plot: Box,
  { sheet, options }: { readonly sheet: Sheet; readonly options: RoundFigureOptions },
): Markup {
  const { palette } = sheet
  const speeds = levels.map(({ slidingSpeed }) => slidingSpeed)
  const domain = {
    speed: [Math.min(...speeds) / 1.25, Math.max(...speeds) * 1.25] as const,
    friction: [0, 1] as const,
    frictionLog: false,
  }
  const stage = stageOf(domain, plot.top, {
    ...options,
    plotHeight: plot.bottom - plot.top,
    margins: { left: plot.left, right: sheet.width - plot.right },
  })
  const panel = panelOf(plot, [
    0,
    ...levels.flatMap((level) => [100 * level.repeatability, 100 * level.reproducibility]),
  ])
  const line = (pick: (level: RoundLevel) => number, words: string, how: { stroke: string; dash?: string }): Markup => {
    const places = levels.map((level) => ({ x: stage.x(level.slidingSpeed), y: panel.y(100 * pick(level)) }))
    const last = places.at(-1)
    const d = places.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`).join('')
    return (
      element('path', { d, stroke: how.stroke, 'stroke-dasharray': how.dash, 'stroke-width': 1.8, fill: 'none' }) +
      places.map(({ x, y }) => element('circle', { cx: x, cy: y, r: 3.2, fill: how.stroke })).join('') +
      (last === undefined
        ? ''
        : lettering(words, { x: plot.right + 8, y: last.y + 4, fill: palette.ink, size: sizes.small }))
    )
  }
  const apart = levels.length === 0 ? 0 : (levels.at(-1)?.reproducibility ?? 0) - (levels.at(-1)?.repeatability ?? 0)
  const close = Math.abs(panel.y(0) - panel.y(100 * apart)) < 14
  return element(
    'g',
    {},
    panelAxis(panel, 'share of friction (%)', sheet),
    speedAxis(stage),
    line(({ reproducibility }) => reproducibility, close ? 's_R (and s_r)' : 's_R', { stroke: palette.shared }),
    line(({ repeatability }) => repeatability, close ? '' : 's_r', { stroke: palette.accent, dash: '6 4' }),
  )
}

function inWords({ laboratories, levels, hCritical, kCritical }: RoundFigureData): string {
  const flagged = laboratories.flatMap((name, lab) => {
    const h = levels.filter(({ marks }) => hCritical !== null && Math.abs(marks[lab].h ?? 0) > hCritical).length
    const k = levels.filter(({ marks }) => kCritical !== null && (marks[lab].k ?? 0) > kCritical).length
    return h + k === 0 ? [] : [`${name}: h beyond its critical value at ${h} speeds, k at ${k}.`]
  })
  const share = (pick: (level: RoundLevel) => number): string => {
    const all = levels.map((level) => 100 * pick(level))
    return `${shortNumber(Math.min(...all), 2)} to ${shortNumber(Math.max(...all), 2)} %`
  }
  return [
    `Consistency of ${laboratories.length} laboratories at ${levels.length} speeds.`,
    levels.length === 0
      ? ''
      : `s_r is ${share(({ repeatability }) => repeatability)} of friction, s_R ${share(({ reproducibility }) => reproducibility)}.`,
    flagged.length === 0 ? 'No laboratory is flagged.' : flagged.join(' '),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}
