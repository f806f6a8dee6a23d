import type { Point, Remark } from '../../core/terms/index.ts'
import { remarkWords } from '../../core/terms/index.ts'
import { speedAxis, speedAxisHeight } from '../axes.ts'
import { domainOf } from '../domain.ts'
import { lettering, sizes } from '../lettering.ts'
import { element, type Markup, rounded } from '../markup.ts'
import { footNote, heading, picture, type SheetOptions, sheetOf, type Words } from '../sheet.ts'
import { type Stage, stageOf } from '../stage.ts'
import { textWidth } from '../textWidth.ts'
import { recordRowMarks } from './recordRowMarks.ts'
import { remarkNumbers } from './remarkNumbers.ts'
import { recordRows, type StepRow, stepRows } from './remarkRows.ts'
import { remarksInWords } from './remarksInWords.ts'
import { stepRowHeight, stepRowMarks } from './stepRowMarks.ts'

/** What the remarks figure shows: the findings on the points of a curve, and those on the record as a whole. */
export interface RemarksFigureData extends Words {
  readonly points: readonly Point[]
  /** Findings that stand on no step. */
  readonly remarks: readonly Remark[]
}

const defaults: SheetOptions = { palette: 'light', width: 880, id: 'remarks' }

/**
 * The remarks along the curve: one row for each kind with its sign, its steps on the axis of speed, and what was seen
 * against the limit. Letters are those of the curve figure of the same points.
 */
export function remarksFigure(data: RemarksFigureData, options: Partial<SheetOptions> = {}): Markup {
  const chosen = { ...defaults, ...options }
  const sheet = sheetOf(chosen)
  const head = heading(data, sheet)
  const rows = stepRows(data.points)
  const onRecord = recordRows(data.remarks)
  const plotHeight = rows.reduce((sum, row) => sum + stepRowHeight(row), rows.length === 0 ? 40 : 0)
  const stage = speedStage(data.points, rows, { ...chosen, plotHeight, top: head.height })
  const marks: Markup[] = []
  let y = stage.plot.top
  for (const row of rows) {
    marks.push(stepRowMarks(row, { points: data.points, top: y }, stage))
    y += stepRowHeight(row)
  }
  const below = recordRowMarks(onRecord, stage.plot.bottom + speedAxisHeight + 10, sheet)
  const bottom = stage.plot.bottom + speedAxisHeight + 10 + below.height
  const foot = footNote(data, { left: 16, top: bottom }, sheet)
  const body = [
    head.markup,
    ...marks,
    rows.length === 0 ? nothingFound(stage) : '',
    baseLine(stage),
    speedAxis(stage),
    below.markup,
    foot.markup,
  ]
  const words = remarksInWords(data.points, rows, onRecord)
  return picture({ sheet, title: data.title, words, height: bottom + foot.height + 12, body })
}

/** The axis of speed of the curve figure, with names at the left and numbers at the right as wide as they come. */
function speedStage(
  points: readonly Point[],
  rows: readonly StepRow[],
  on: SheetOptions & { readonly plotHeight: number; readonly top: number },
): Stage {
  const domain = domainOf({ title: '', points, curve: null, window: null }, 'linear')
  const widest = (words: readonly string[], size: number): number =>
    Math.max(40, ...words.map((text) => textWidth(text, size)))
  const names = rows.map(({ sign }) => remarkWords[sign.kind].words)
  const numbers = rows.flatMap(({ found }) => {
    const { seen, limit } = remarkNumbers(found.map(({ remark }) => remark))
    return [`seen ${seen}`, `limit ${limit}`]
  })
  const margins = { left: 38 + widest(names, sizes.text) + 16, right: widest(numbers, sizes.small) + 28 }
  return stageOf(domain, on.top, { ...on, margins })
}

const baseLine = ({ plot, palette }: Stage): Markup =>
  element('path', {
    d: `M${rounded(plot.left)} ${plot.bottom}H${rounded(plot.right)}`,
    stroke: palette.ink,
    fill: 'none',
  })

const nothingFound = ({ plot, palette }: Stage): Markup =>
  lettering('no remark on any step', {
    x: (plot.left + plot.right) / 2,
    y: (plot.top + plot.bottom) / 2 + 4,
    fill: palette.ink,
    anchor: 'middle',
  })
