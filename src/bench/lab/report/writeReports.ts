import { join } from 'node:path'
import { done, failed, type Outcome, type Outside, type Problem } from '../../../core/terms/index.ts'
import { type ReportContent, reportHtml, reportPdf } from '../../../report/index.ts'
import type { KeptRecord, Lab } from '../../../store/index.ts'
import { writeWhole } from '../../writeWhole.ts'
import { currentResult } from '../currentResult.ts'
import { identifierFrom } from '../identifierFrom.ts'
import { inLab } from '../inLab.ts'
import type { LabCall } from '../labCall.ts'
import { named, namedRecords } from '../named.ts'
import { reportKept } from './reportKept.ts'
import { type ReportWords, reportWords } from './reportWords.ts'

export interface ReportArgs {
  /** A record; or a study or a sample, of which each record gets a report. */
  readonly word: string
  /** Where it is written: a file for a record, a folder for several. */
  readonly html?: string
  readonly pdf?: string
  /** File with question, answer, author and notes. */
  readonly notes?: string
  readonly author?: string
  /** Day on the report; that of the result if left out. */
  readonly date?: string
}

export interface WrittenReports {
  readonly files: readonly string[]
  /** Records that have no result yet, and so no report. */
  readonly notReduced: readonly KeptRecord[]
}

/** Writes reports of what a person names. The same lab and words give the same bytes. */
export async function writeReports(
  args: ReportArgs,
  call: LabCall,
  outside: Outside,
): Promise<Outcome<WrittenReports>> {
  if (args.html === undefined && args.pdf === undefined) return failed(nowhere)
  if (args.date !== undefined && !/^\d{4}-\d\d-\d\d$/.test(args.date)) return failed(noDay(args.date))
  const words = reportWords(args.notes)
  if (!words.ok) return words
  const { author, date } = args
  const said = { ...words.value, ...(author === undefined ? {} : { author }), date }
  return inLab(call, outside, async (lab): Promise<Outcome<WrittenReports>> => {
    const found = await named(lab, args.word)
    if (!found.ok) return found
    const records = await namedRecords(lab, args.word)
    if (!records.ok) return records
    const single = found.value.kind === 'record'
    return writeEach(lab, { records: records.value, single, args, said, outside })
  })
}

interface Writing {
  readonly records: readonly KeptRecord[]
  readonly single: boolean
  readonly args: ReportArgs
  readonly said: ReportWords & Pick<ReportArgs, 'date'>
  readonly outside: Outside
}

/** Forms of a report. */
export type ReportForm = 'html' | 'pdf'

/** The report of one record as bytes. The same lab gives the same bytes. */
export const recordReport = (
  { word, form }: { readonly word: string; readonly form: ReportForm },
  call: LabCall,
  outside: Outside,
): Promise<Outcome<Uint8Array>> =>
  inLab(call, outside, async (lab): Promise<Outcome<Uint8Array>> => {
    const record = await lab.records.get(word)
    if (!record.ok) return record
    const result = await currentResult(lab, record.value)
    if (!result.ok) return result
    if (result.value === undefined) return failed(withoutResult(record.value))
    const words = reportWords(undefined)
    if (!words.ok) return words
    const content = await reportKept(lab, { record: record.value, result: result.value }, words.value)
    if (!content.ok) return content
    const made = form === 'html' ? await reportHtml(content.value) : await reportPdf(content.value)
    return done(typeof made === 'string' ? new TextEncoder().encode(made) : made)
  })

async function writeEach(
  lab: Lab,
  { records, single, args, said, outside }: Writing,
): Promise<Outcome<WrittenReports>> {
  const files: string[] = []
  const notReduced: KeptRecord[] = []
  for (const [i, record] of records.entries()) {
    const result = await currentResult(lab, record)
    if (!result.ok) return result
    if (result.value === undefined && single) return failed(withoutResult(record))
    if (result.value === undefined) notReduced.push(record)
    else {
      const content = await reportKept(lab, { record, result: result.value }, said)
      if (!content.ok) return content
      const written = await writeReport(
        content.value,
        (place, ending) => (single ? place : join(place, fileName(record, ending))),
        args,
      )
      if (!written.ok) return written
      files.push(...written.value)
    }
    outside.progress('reports', i + 1, records.length)
  }
  return done({ files, notReduced })
}

async function writeReport(
  content: ReportContent,
  fileIn: (place: string, ending: string) => string,
  { html, pdf }: ReportArgs,
): Promise<Outcome<string[]>> {
  const files: string[] = []
  for (const [place, ending, make] of [
    [html, 'html', reportHtml],
    [pdf, 'pdf', reportPdf],
  ] as const) {
    if (place === undefined) continue
    const written = writeWhole(fileIn(place, ending), await make(content))
    if (!written.ok) return written
    files.push(written.value)
  }
  return done(files)
}

const fileName = ({ id, name }: KeptRecord, ending: string): string =>
  `${identifierFrom(name.replace(/\.[^.]+$/, '')) || 'record'}-${id.slice(0, 12)}.${ending}`

const nowhere: Problem = {
  kind: 'reportNowhere',
  class: 'wrongUse',
  place: {},
  what: 'Nobody said where the report goes.',
  mend: 'Name a file with --html, with --pdf, or with both.',
}

const noDay = (day: string): Problem => ({
  kind: 'notADay',
  class: 'wrongUse',
  place: { name: 'date', cell: day },
  what: `"${day}" is not a day.`,
  mend: 'Write it as year-month-day, such as 2026-11-25.',
})

const withoutResult = ({ id, name }: KeptRecord): Problem => ({
  kind: 'notReduced',
  class: 'badInput',
  place: { name, cell: id },
  what: 'The record has no result with its setup, so there is nothing to report.',
  mend: `Add its file again, or correct its setup: kufe amend ${id.slice(0, 12)} --setup FILE --why "…".`,
})
