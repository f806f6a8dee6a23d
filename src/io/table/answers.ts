import { type ChannelName, channelNames, done, type Outcome } from '../../core/terms/index.ts'
import { foldWords } from './headingWords.ts'
import { shown, type TableProblem, tableProblem } from './problems.ts'

/** What a person says about one column. */
export interface ColumnAnswer {
  /** null leaves the column aside. */
  readonly channel?: ChannelName | null
  readonly unit?: string
}

/** Answers by heading. A heading may be given whole, as its words alone, or as `#3`, the third column. */
export type ColumnAnswers = Readonly<Record<string, ColumnAnswer>>

/** The key among `keys` that speaks of a column, the closest way of naming it first. */
export function keyOfColumn(
  keys: readonly string[],
  column: { readonly number: number; readonly heading: string; readonly words: readonly string[] },
): string | undefined {
  const trimmed = column.heading.trim()
  const folded = foldWords(trimmed)
  return (
    keys.find((key) => key.trim() === `#${column.number}`) ??
    keys.find((key) => key.trim() === trimmed) ??
    keys.find((key) => folded !== '' && foldWords(key) === folded) ??
    keys.find((key) => column.words.includes(key.trim())) ??
    keys.find((key) => column.words.some((words) => foldWords(words) !== '' && foldWords(words) === foldWords(key)))
  )
}

/** Reads `Torque=mN.m` (units) and `Torque=torque`, `Torque 2=none` (columns) as a terminal hands them over. */
export function answersFromText(given: {
  readonly columns: readonly string[]
  readonly units: readonly string[]
}): Outcome<ColumnAnswers> {
  const answers = new Map<string, ColumnAnswer>()
  const problems: TableProblem[] = []
  for (const text of given.units) {
    const parts = atLastEquals(text)
    if (parts === undefined) problems.push(unreadable(text, 'HEADING=UNIT, such as "Torque=mN.m"'))
    else answers.set(parts.heading, { ...answers.get(parts.heading), unit: parts.value })
  }
  for (const text of given.columns) {
    const parts = atLastEquals(text)
    const channel = parts?.value === 'none' ? null : channelNames.find((name) => name === parts?.value)
    if (parts === undefined || channel === undefined) {
      problems.push(unreadable(text, `HEADING=CHANNEL, where CHANNEL is none, ${channelNames.join(', ')}`))
    } else answers.set(parts.heading, { ...answers.get(parts.heading), channel })
  }
  return problems.length > 0 ? { ok: false, problems } : done(Object.fromEntries(answers))
}

function atLastEquals(text: string): { readonly heading: string; readonly value: string } | undefined {
  const at = text.lastIndexOf('=')
  const heading = text.slice(0, Math.max(at, 0)).trim()
  const value = text.slice(at + 1).trim()
  return heading === '' || value === '' ? undefined : { heading, value }
}

const unreadable = (text: string, form: string): TableProblem =>
  tableProblem('optionUnreadable', {
    class: 'wrongUse',
    what: `"${shown(text)}" does not name a column and what it holds.`,
    mend: `Write it as ${form}.`,
  })
