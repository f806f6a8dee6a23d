import type { JudgedAnswer, OrderedSheet, SheetCheck } from '../../core/terms/index.ts'
import type { ReportBlock } from '../reportContent.ts'
import { boxText } from '../runSheet/boxText.ts'
import { capital, counted, inWords } from '../words/printed.ts'
import type { SectionOf } from './sectionOf.ts'

/** What the run sheet asked and what was read at the rig; nothing where no sheet was kept with the record. */
export const asFoundSection: SectionOf = ({ texts: { asFound } }, numbers) => ({
  heading: 'As found at the rig',
  blocks:
    asFound === undefined
      ? []
      : [
          {
            kind: 'paragraph',
            text: `${countsInWords(asFound.answers)} Run sheet “${asFound.sheet.title}”, kept by ${asFound.by} on ${asFound.on}.`,
          },
          ...outsideList(asFound.answers),
          numbers.table({
            caption: 'What the run sheet asked, and what was read',
            columns: [
              { head: 'check', unit: '', align: 'left' },
              { head: 'wanted', unit: '', align: 'left' },
              { head: 'read', unit: '', align: 'left' },
              { head: 'note', unit: '', align: 'left' },
            ],
            rows: rowsOf(asFound.sheet, asFound.answers),
            notes: ['✓ within what was wanted, ✗ outside, – not answered.'],
          }),
        ],
})

function countsInWords(answers: readonly JudgedAnswer[]): string {
  const count = (wanted: JudgedAnswer['state']): number => answers.filter(({ state }) => state === wanted).length
  const few = (number: number): string => (number === 0 ? 'none' : inWords(number))
  const lead = `${capital(few(count('within')))} of ${counted(answers.length, 'check')} came out as wanted`
  return `${lead}, ${few(count('outside'))} did not, ${few(count('open'))} ${count('open') < 2 ? 'is' : 'are'} not answered.`
}

/** What lay outside stands before the table: a reader must not have to look for it. */
function outsideList(answers: readonly JudgedAnswer[]): readonly ReportBlock[] {
  const items = answers.filter(({ state }) => state === 'outside').map(({ sentence }) => capital(sentence))
  return items.length === 0 ? [] : [{ kind: 'list', items }]
}

function rowsOf(sheet: OrderedSheet, answers: readonly JudgedAnswer[]): readonly (readonly string[])[] {
  const checks = new Map<string, SheetCheck>()
  for (const { id, check } of sheet.parts.flatMap(({ entries }) => entries)) if (check !== null) checks.set(id, check)
  return answers.flatMap((answer) => {
    const check = checks.get(answer.id)
    if (check === undefined) return []
    return [[check.read, check.accept, boxText(answer, check.dimension) || '–', answer.note ?? '']]
  })
}
