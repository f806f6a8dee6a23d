import { useMemo } from 'react'
import { fillFromTables, judgedAnswers, planOf, runSheetOf } from '../../../core/plan/index.ts'
import type { JudgedAnswer, OrderedSheet, Problem } from '../../../core/terms/index.ts'
import { type PaperHold, studyPaper, usePaper } from '../../api/usePaper.ts'
import type { StationProps } from '../../frame/stationProps.ts'
import { useOwnThings } from '../../question/useOwnThings.ts'
import { useQuestion } from '../../question/useQuestion.ts'
import { emptySheet, type NumberedEntry, numbered, type SheetPaper } from './sheetPaper.ts'

/** The run sheet of a study with what was answered; problems where the plan is impossible. */
export interface SheetHold {
  readonly sheet: OrderedSheet | undefined
  readonly problems: readonly Problem[]
  readonly entries: readonly NumberedEntry[]
  readonly paper: PaperHold<SheetPaper>
  readonly filled: SheetPaper
  readonly judged: ReadonlyMap<string, JudgedAnswer>
}

export function useSheet({ study, question: asked }: Pick<StationProps, 'study' | 'question'>): SheetHold {
  const { question } = useQuestion(asked)
  const own = useOwnThings()
  const paper = usePaper<SheetPaper>(studyPaper(study.id, 'runSheet'))
  const { sheet, problems } = useMemo(() => {
    const complete = fillFromTables(question, own)
    const plan = complete.ok ? planOf(complete.value.question) : complete
    return plan.ok ? { sheet: runSheetOf(plan.value), problems: [] } : { sheet: undefined, problems: plan.problems }
  }, [question, own])
  const filled = useMemo(() => ({ ...(paper.content ?? emptySheet), sheet: sheet ?? null }), [paper.content, sheet])
  const entries = useMemo(() => (sheet === undefined ? [] : numbered(sheet)), [sheet])
  const judged = useMemo(() => {
    const all = sheet === undefined ? [] : judgedAnswers(sheet, filled.answers)
    return new Map(all.map((answer) => [answer.id, answer]))
  }, [sheet, filled.answers])
  return { sheet, problems, entries, paper, filled, judged }
}
