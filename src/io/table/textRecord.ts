import { done, failed, type Outcome } from '../../core/terms/index.ts'
import type { ByteSource } from './byteSource.ts'
import { ColumnStore } from './columnStore.ts'
import type { Encoding } from './encoding.ts'
import { type JudgedColumns, judgeColumns } from './judgeColumns.ts'
import { lookAtTable } from './lookAtTable.ts'
import { capped, type TableProblem, tableProblem } from './problems.ts'
import type { ColumnGuess, RawRecord } from './rawRecord.ts'
import { type ReadOptions, usualSpillAbove } from './readOptions.ts'
import type { Section } from './rowPlan.ts'
import { type RowTalk, rowProblems, rowRemarks } from './rowProblems.ts'
import { RowReader } from './rowReader.ts'
import { storedChannels, toSiInPlace } from './storedChannels.ts'
import { readTextHead, type TextHead } from './textHead.ts'
import { dialectOf, headedColumns, mostColumns, planRows, shapeProblems } from './textPlan.ts'
import { LineTooLong, longestLine, wholeLines } from './wholeLines.ts'

/** All of a record but its hash. */
export type UnsignedRecord = Omit<RawRecord, 'sha256'>

/** What the bytes were before `source` made UTF-8 or Windows-1252 of them. */
export interface TextForm {
  readonly format: 'text' | 'xlsx'
  readonly encoding: Encoding
}

/** Reads a table written as text. */
export async function textRecord(
  source: ByteSource,
  form: TextForm,
  options: ReadOptions,
): Promise<Outcome<UnsignedRecord>> {
  const encoding: Encoding = form.encoding === 'windows-1252' ? 'windows-1252' : 'utf-8'
  const text = await readTextHead(source, encoding, options)
  if ('kind' in text) return failed(text)
  const { head } = text
  const line = head.headerLine < 0 ? undefined : head.headerLine + 1
  const problems: TableProblem[] = shapeProblems(text, options)
  if (head.columns.length > mostColumns) return failed(...problems)
  const judged = judgeColumns(headedColumns(text), options, { file: options.file, line })
  problems.push(...judged.problems)
  options.onLook?.(lookAtTable(text, judged.guesses, encoding))
  const rows = new TextRows(text, { judged, encoding, options, spillAbove: spillAbove(text, source, options) })
  try {
    problems.push(...(await rows.read(source)))
  } catch (error) {
    rows.store.close()
    throw error
  }
  const found = rowProblems(rows.reader, rows.talk)
  problems.push(...found.problems)
  if (problems.length > 0) {
    rows.store.close()
    return failed(...capped(problems, found.uncounted, options.file))
  }
  return done(rows.record(form))
}

/** A long record goes to the temporary file from its first row, judged by the length of the rows seen so far. */
function spillAbove(text: TextHead, source: ByteSource, options: ReadOptions): number {
  const limit = options.spillAbove ?? usualSpillAbove
  const expected = (source.size ?? 0) / Math.max(1, text.rowBytes)
  return expected > limit ? 0 : limit
}

interface RowsBelow {
  readonly judged: JudgedColumns
  readonly encoding: Encoding
  readonly options: ReadOptions
  readonly spillAbove: number
}

/** The rows below a head, on their way into the store. */
class TextRows {
  readonly reader: RowReader
  readonly store: ColumnStore
  readonly #text: TextHead
  readonly #below: RowsBelow
  readonly #timeColumn: number

  constructor(text: TextHead, below: RowsBelow) {
    this.#text = text
    this.#below = below
    const plan = planRows(text, below.judged, below.encoding)
    this.#timeColumn = plan.slots.indexOf(plan.timeSlot < 0 ? Number.NaN : plan.timeSlot)
    this.store = new ColumnStore({
      columns: below.judged.slots.size,
      spillAbove: below.spillAbove,
      mostRows: text.mostRows,
      finish: (piece, firstRow, rows) => this.#finish(piece, firstRow, rows),
    })
    this.reader = new RowReader(plan, this.store)
  }

  get talk(): RowTalk {
    return {
      file: this.#below.options.file,
      headings: this.#text.head.columns.map(({ heading }) => heading),
      decimalMark: this.#text.shape.decimalMark,
      rows: this.store.rows,
      timeColumn: this.#timeColumn,
    }
  }

  async read(source: ByteSource): Promise<TableProblem[]> {
    const { begun, lineEnd, mostRows } = this.#text
    const { progress, file } = this.#below.options
    let bytes = 0
    try {
      for await (const window of wholeLines({ source, begun, lineEnd, ended: mostRows !== undefined })) {
        this.reader.feed(window)
        bytes += window.to - window.from
        progress?.(bytes, source.size ?? 0)
      }
    } catch (error) {
      if (!(error instanceof LineTooLong)) throw error
      return [
        tableProblem('lineTooLong', {
          what: `A line is longer than ${longestLine / 2 ** 20} MiB.`,
          mend: 'Hand in a table with one row per line.',
          place: { file, line: this.reader.line },
        }),
      ]
    } finally {
      this.reader.end()
    }
    return []
  }

  record(form: TextForm): UnsignedRecord {
    const { judged } = this.#below
    const sections = judged.slots.has('step') ? [] : stretches(this.reader.sections, this.#text.head.section)
    return {
      channels: storedChannels(this.store, judged.slots, sections),
      rows: this.store.rows,
      columns: [...judged.guesses, ...sectionGuess(sections)],
      dialect: { ...form, ...dialectOf(this.#text), repeatedHeadings: this.reader.repeatedHeadings },
      preamble: this.#text.head.preamble,
      remarks: rowRemarks(this.reader, this.talk),
      close: () => this.store.close(),
    }
  }

  #finish(piece: readonly Float64Array[], firstRow: number, rows: number): void {
    const { slots, units } = this.#below.judged
    for (const [channel, slot] of slots) {
      if (channel === 'time') this.reader.clock.runOn(piece[slot], firstRow, rows)
      const unit = units[channel]
      if (unit !== undefined) toSiInPlace(piece[slot], rows, unit)
    }
  }
}

/** Stretches under headings of their own, numbered as the file does it, else one after the other. None if there is one. */
function stretches(later: readonly Section[], firstNumber: number | undefined): Section[] {
  const all: Section[] = later[0]?.row === 0 ? [...later] : [{ row: 0, number: firstNumber }, ...later]
  if (all.length < 2) return []
  const numbered = all.every(({ number }) => number !== undefined)
  return all.map(({ row, number }, index) => ({ row, number: numbered ? number : index + 1 }))
}

const sectionGuess = (sections: readonly Section[]): ColumnGuess[] =>
  sections.length === 0
    ? []
    : [
        {
          column: 0,
          heading: '',
          unit: '',
          channel: 'step',
          source: 'guess',
          reason: `no column holds the step, but the rows stand in ${sections.length} stretches under headings of their own.`,
        },
      ]
