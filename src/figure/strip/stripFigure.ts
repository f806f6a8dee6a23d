import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { type Block, type Box, footNote, heading, picture, type Sheet, sheetOf } from '../sheet.ts'
import { textWidth } from '../textWidth.ts'
import { tickLabel } from '../ticks.ts'
import { channelWords } from './channelWords.ts'
import { type PanelScale, panelScale } from './panelScale.ts'
import { stepMarks, stretchKey, stretchLane, stretchPatterns, stretchTones } from './stretchMarks.ts'
import {
  type StripChannel,
  type StripFigureData,
  type StripFigureOptions,
  stripFigureDefaults,
  stripMargins,
} from './stripData.ts'
import { stripInWords } from './stripInWords.ts'
import { timeAxis, timeAxisHeight } from './timeAxis.ts'
import { tracePath } from './trace.ts'

const panelGap = 10
/** Heights of the row of step numbers and of the lane of signs. */
const numberRow = 18
const laneHeight = 12

/**
 * The raw channels of a record over time, one panel each over one axis, the steps marked, and what became of every
 * stretch told by tone, pattern and a lane of signs. Two values a pixel are drawn, so a million rows take no longer than a thousand.
 */
export function stripFigure(data: StripFigureData, options: Partial<StripFigureOptions> = {}): Markup {
  const chosen = { ...stripFigureDefaults, ...options }
  const { panelHeight, width } = chosen
  if (!(panelHeight >= 36 && panelHeight <= 400)) {
    throw new RangeError(`panelHeight must be 36 to 400 px, got ${panelHeight} px`)
  }
  if (!(data.time[1] > data.time[0])) {
    throw new RangeError(`time must end after it begins, got ${data.time[0]} to ${data.time[1]} s`)
  }
  const sheet = sheetOf(chosen)
  const head = heading(data, sheet)
  const lane = { top: head.height + numberRow, bottom: head.height + numberRow + laneHeight }
  const right = width - stripMargins.right
  const narrow = panelsOf(data, { left: stripMargins.left, right, top: lane.bottom + 6 }, panelHeight)
  const left = leftMargin(narrow)
  const stack = narrow.map((panel) => ({ ...panel, box: { ...panel.box, left } }))
  const panels: Box = {
    left,
    right,
    top: lane.bottom + 6,
    bottom: stack[stack.length - 1]?.box.bottom ?? lane.bottom + 6,
  }
  const x = (time: number): number => {
    const share = (time - data.time[0]) / (data.time[1] - data.time[0])
    return panels.left + Math.min(1, Math.max(0, share)) * (panels.right - panels.left)
  }
  const place = { lane, panels, x }
  const foot = footOf(data, { stack, top: panels.bottom + timeAxisHeight + 6 }, sheet)
  const body = [
    head.markup,
    stretchTones(data.stretches, place, sheet),
    stepMarks(data.stretches, place, sheet),
    stretchLane(data.stretches, place, sheet),
    lettering('step', {
      x: panels.left - 9,
      y: lane.top - 4,
      fill: sheet.palette.quiet,
      size: sizes.small,
      anchor: 'end',
    }),
    ...stack.map((panel) => panelMarks(panel, sheet)),
    timeAxis(data.time, panels, sheet),
    foot.markup,
  ]
  const height = panels.bottom + timeAxisHeight + 6 + foot.height + 10
  return picture({ sheet, title: data.title, words: stripInWords(data), height, defs: stretchPatterns(sheet), body })
}

interface Panel {
  readonly channel: StripChannel
  readonly scale: PanelScale | undefined
  readonly box: Box
}

function panelsOf(data: StripFigureData, from: Omit<Box, 'bottom'>, height: number): readonly Panel[] {
  return data.channels
    .filter(({ name }) => name !== 'time' && name !== 'step')
    .map((channel, index) => {
      const top = from.top + index * (height + panelGap)
      const box = { left: from.left, right: from.right, top, bottom: top + height }
      return { channel, box, scale: panelScale(channel, data, box) }
    })
}

/** The usual margin, or more where a label needs it. */
const leftMargin = (stack: readonly Panel[]): number =>
  Math.max(
    stripMargins.left,
    ...stack
      .flatMap(({ scale }) => scale?.ticks ?? [])
      .map(({ value }) => 14 + textWidth(tickLabel(value), sizes.small)),
  )

function panelMarks({ channel, scale, box }: Panel, sheet: Sheet): Markup {
  const { palette } = sheet
  const rules = scale?.ticks.map(({ y }) => `M${box.left} ${rounded(y)}H${box.right}`).join('') ?? ''
  const labels = scale?.ticks.map(({ value, y }) =>
    lettering(tickLabel(value), { x: box.left - 7, y: y + 4, fill: palette.quiet, size: sizes.small, anchor: 'end' }),
  )
  const path = scale === undefined ? '' : tracePath(channel, box, scale.y)
  const trace =
    path === ''
      ? lettering('no number in this channel', {
          x: (box.left + box.right) / 2,
          y: (box.top + box.bottom) / 2 + 4,
          fill: palette.ink,
          size: sizes.small,
          anchor: 'middle',
        })
      : element('path', {
          d: path,
          transform: 'scale(0.1)',
          fill: 'none',
          stroke: palette.ink,
          'stroke-width': 9,
          'stroke-linejoin': 'round',
        })
  return element(
    'g',
    {},
    rules === '' ? '' : element('path', { d: rules, stroke: palette.hairline, 'stroke-width': 0.8, fill: 'none' }),
    element('path', { d: `M${box.left} ${box.top}V${box.bottom}`, stroke: palette.ink, fill: 'none' }),
    trace,
    ...(labels ?? []),
    panelName({ channel, scale, box }, sheet),
  )
}

function panelName({ channel, scale, box }: Panel, { palette }: Sheet): Markup {
  if (channel.name === 'time' || channel.name === 'step') return ''
  const middle = (box.top + box.bottom) / 2
  const at = { x: box.right + 10, size: sizes.small }
  const unit =
    scale === undefined ? '' : lettering(`(${scale.unit.text})`, { ...at, y: middle + 13, fill: palette.quiet })
  return lettering(channelWords[channel.name].words, { ...at, y: middle - 1, fill: palette.ink }) + unit
}

function footOf(data: StripFigureData, on: { stack: readonly Panel[]; top: number }, sheet: Sheet): Block {
  const at = { left: on.stack[0]?.box.left ?? stripMargins.left, top: on.top }
  const key = stretchKey(data.stretches, at, sheet)
  const cut = on.stack.some(({ scale }) => scale?.cut === true)
  const scales = cut ? 'Scales serve the rows in contact; lines beyond run along the edge of their panel.' : ''
  const note = [scales, data.note ?? ''].filter((sentence) => sentence !== '').join(' ')
  const foot = footNote({ title: '', note }, { left: at.left, top: at.top + key.height }, sheet)
  return { markup: key.markup + foot.markup, height: key.height + foot.height }
}
