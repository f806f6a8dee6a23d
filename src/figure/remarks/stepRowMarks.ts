import { type Point, remarkWords } from '../../core/terms/index.ts'
import { hasPlace } from '../domain.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, escaped, type Markup, rounded } from '../markup.ts'
import { signMark, signPitch } from '../signs.ts'
import type { Stage } from '../stage.ts'
import { textWidth } from '../textWidth.ts'
import { type RemarkNumbers, remarkNumbers } from './remarkNumbers.ts'
import type { RemarkAt, StepRow } from './remarkRows.ts'

/** Height of a lane: signs, and under them what was seen. */
const laneHeight = 34

/** Size of the numbers under the signs. */
const numberSize = 9.5

/** A second lane takes the steps of a falling sweep, which has the same speeds as the rising one. */
const lanesOf = ({ found }: StepRow): readonly (readonly RemarkAt[])[] =>
  [1, -1]
    .map((direction) => found.filter(({ point }) => point.direction === direction))
    .filter((lane) => lane.length > 0)

export const stepRowHeight = (row: StepRow): number => Math.max(1, lanesOf(row).length) * laneHeight + 4

/** One kind of remark: its sign and words, its steps along the speed axis, and the numbers in a column of their own. */
export function stepRowMarks(row: StepRow, on: { points: readonly Point[]; top: number }, stage: Stage): Markup {
  const { points, top } = on
  const { plot, palette, width } = stage
  const lanes = lanesOf(row)
  const bottom = top + stepRowHeight(row)
  const middle = (top + bottom) / 2
  const { seen, limit, print } = remarkNumbers(row.found.map(({ remark }) => remark))
  const numbers = [
    { text: `seen ${seen}`, y: middle - 2, fill: palette.ink },
    { text: `limit ${limit}`, y: middle + 12, fill: palette.quiet },
  ]
  return element(
    'g',
    {},
    element('path', { d: `M16 ${bottom}H${width - 16}`, stroke: palette.hairline, 'stroke-width': 0.8, fill: 'none' }),
    signMark(row.sign, { x: 24, y: middle }, palette),
    lettering(remarkWords[row.sign.kind].words, { x: 38, y: middle + 4, fill: palette.ink }),
    ...lanes.map((lane, index) => {
      const y = top + index * laneHeight + 13
      const side = lanes.length > 1 ? directionWords(lane, y, stage) : ''
      return side + otherSteps(points, { lane, y }, stage) + laneMarks(lane, { row, y, print }, stage)
    }),
    ...numbers.map(({ text, ...at }) => lettering(text, { x: plot.right + 12, size: sizes.small, ...at })),
  )
}

const directionWords = ([first]: readonly RemarkAt[], y: number, { plot, palette }: Stage): Markup =>
  lettering(first?.point.direction === -1 ? 'falling' : 'rising', {
    x: plot.left - 4,
    y: y + 3,
    fill: palette.quiet,
    size: numberSize,
    anchor: 'end',
  })

/** Signs as far as they keep apart, small strokes for those between; numbers as far as they do. */
function laneMarks(
  lane: readonly RemarkAt[],
  at: { row: StepRow; y: number; print: RemarkNumbers['print'] },
  stage: Stage,
): Markup {
  const { palette } = stage
  const { row, y, print } = at
  const placed = lane
    .filter(({ point }) => hasPlace(point.slidingSpeed))
    .map((one) => ({ ...one, x: stage.x(one.point.slidingSpeed) }))
    .sort((one, two) => one.x - two.x)
  let signRight = Number.NEGATIVE_INFINITY
  let numberRight = Number.NEGATIVE_INFINITY
  const marks = placed.map(({ x, point, remark }) => {
    const pieces = [element('title', {}, escaped(`Step ${point.step}: ${remark.sentence}`))]
    if (x - signRight >= signPitch) {
      pieces.push(signMark(row.sign, { x, y }, palette))
      signRight = x
    } else pieces.push(element('path', { d: `M${rounded(x)} ${y - 4}v8`, stroke: palette.ink, fill: 'none' }))
    const text = print(remark.seen)
    const half = textWidth(text, numberSize) / 2
    const fits = x - half > Math.max(numberRight + 4, stage.plot.left - 10) && x + half < stage.plot.right + 6
    if (signRight === x && fits) {
      pieces.push(lettering(text, { x, y: y + 18, fill: palette.quiet, size: numberSize, anchor: 'middle' }))
      numberRight = x + half
    }
    return element('g', {}, ...pieces)
  })
  return marks.join('')
}

/** A small dot for every other step of the same direction, so that it shows which have no remark. */
function otherSteps(points: readonly Point[], at: { lane: readonly RemarkAt[]; y: number }, stage: Stage): Markup {
  const named = new Set(at.lane.map(({ point }) => point.step))
  const direction = at.lane[0]?.point.direction
  const dots = points
    .filter((point) => point.direction === direction && !named.has(point.step) && hasPlace(point.slidingSpeed))
    .map(({ slidingSpeed }) => element('circle', { cx: stage.x(slidingSpeed), cy: at.y, r: 1.5 }))
  return dots.length === 0 ? '' : element('g', { fill: stage.palette.shade }, ...dots)
}
