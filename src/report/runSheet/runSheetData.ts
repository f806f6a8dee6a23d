import { fromSi, printQuantity, readableUnit } from '../../core/quantity/index.ts'
import type { JudgedAnswer, OrderedSheet, SheetCheck, SheetEntry, SheetStepRow } from '../../core/terms/index.ts'
import type { ReportColumn } from '../reportContent.ts'
import { linedUp } from '../words/linedUp.ts'
import { significant } from '../words/printed.ts'
import { boxText } from './boxText.ts'
import { sheetTotal } from './sheetTotal.ts'

/** Blocks of steps that stand beside each other. */
const besides = 3

/** A run sheet as its page in the PDF wants it: steps numbered over all parts, boxes filled where there are answers. */
export function runSheetData(sheet: OrderedSheet, answers: readonly JudgedAnswer[]): object {
  const given = new Map(answers.map((answer) => [answer.id, answer]))
  const { title, subtitle, foreword, parts } = sheet
  let number = 0
  return {
    title,
    subtitle,
    foreword,
    total: sheetTotal(sheet),
    parts: parts.map(({ name, heading, entries }) => ({
      heading,
      entries: entries.map((entry) => entryData(entry, ++number, given.get(entry.id))),
      table: name === 'sweep' ? sweepData(sheet.sweep) : null,
    })),
  }
}

function entryData({ cautions, text, check }: SheetEntry, number: number, answer: JudgedAnswer | undefined): object {
  return { number, cautions, text, check: check === null ? null : checkData(check, answer) }
}

const checkData = ({ read, accept, otherwise, dimension }: SheetCheck, answer: JudgedAnswer | undefined): object => ({
  read,
  accept,
  otherwise,
  box: boxText(answer, dimension),
  note: answer?.note ?? '',
  state: answer?.state ?? 'open',
})

/** The steps in columns, top to bottom and then on to the right, with one unit of speed for all. */
function sweepData(steps: readonly SheetStepRow[]): object {
  const speeds = steps.map(({ slidingSpeed }) => slidingSpeed)
  const unit = readableUnit(Math.sqrt(Math.min(...speeds) * Math.max(...speeds)), 'velocity')
  const columns: readonly ReportColumn[] = [
    { head: 'step', unit: '', align: 'right' },
    { head: 'speed', unit: unit.text, align: 'point' },
    { head: 'rotation', unit: 'rad/s', align: 'point' },
    { head: 'dwell', unit: 's', align: 'point' },
    { head: 'turns', unit: '', align: 'point' },
  ]
  const rows = linedUp(
    columns,
    steps.map(({ step, slidingSpeed, angularVelocity, dwell, turns }) => [
      String(step),
      significant(fromSi(slidingSpeed, unit), 3),
      significant(angularVelocity, 3),
      printQuantity(dwell, 'time', { digits: 3, unit: 's' }).replace(/\s*s$/, ''),
      turns.toFixed(2),
    ]),
  )
  const high = Math.ceil(rows.length / besides)
  const blocks = Array.from({ length: besides }, (_, i) => rows.slice(i * high, (i + 1) * high))
  return { columns, blocks: blocks.filter((block) => block.length > 0) }
}
