import { randomFrom } from '../../core/numeric/index.ts'
import type { Outside } from '../../core/terms/index.ts'
import { type RateQuestion, rateQuestions } from './rateQuestions.ts'

/** How often one answer came in simulated comparisons. */
export interface RateRow extends Omit<RateQuestion, 'ask'> {
  readonly counted: number
  readonly of: number
  readonly share: number
  /** Binomial standard error of `share`. */
  readonly standardError: number
}

export interface ErrorRateStudy {
  readonly seed: number
  readonly draws: number
  readonly rows: readonly RateRow[]
}

export interface ErrorRateArgs {
  readonly seed: number
  /** Comparisons for each row. */
  readonly draws: number
  /** Only this table. */
  readonly table?: RateQuestion['table']
}

/** Names of the tables of the study. */
export const rateTables: readonly RateQuestion['table'][] = [...new Set(rateQuestions.map(({ table }) => table))]

/** Two standard errors of the count are allowed for: the study is finite, the promise is not. */
const allowance = 2

/** Whether a promise is kept, as far as the count can tell. */
export const isKept = ({ share, standardError, least, most }: RateRow): boolean =>
  share >= least - allowance * standardError && share <= most + allowance * standardError

/** Draws samples whose truth is known, compares them as any others, and counts the answers. Same seed, same table. */
export async function errorRateStudy(args: ErrorRateArgs, outside: Outside): Promise<ErrorRateStudy> {
  const asked = rateQuestions.filter(({ table }) => args.table === undefined || table === args.table)
  const rows: RateRow[] = []
  for (const [place, question] of asked.entries()) {
    const stream = rateQuestions.indexOf(question)
    const row = await rowOf(question, { seed: args.seed, stream, draws: args.draws }, outside)
    if (row === undefined) break
    rows.push(row)
    outside.progress('rows', place + 1, asked.length)
  }
  return { seed: args.seed, draws: args.draws, rows }
}

interface Counting {
  readonly seed: number
  readonly stream: number
  readonly draws: number
}

/** Undefined where somebody stopped it. */
async function rowOf(
  { ask, ...question }: RateQuestion,
  { seed, stream, draws }: Counting,
  { stop }: Outside,
): Promise<RateRow | undefined> {
  const random = randomFrom(seed, stream)
  let counted = 0
  for (let draw = 0; draw < draws; draw++) {
    if (ask(random, draw)) counted++
    if (draw % 50 === 49) {
      await new Promise((resolve) => setImmediate(resolve))
      if (stop.aborted) return undefined
    }
  }
  const share = counted / draws
  return { ...question, counted, of: draws, share, standardError: Math.sqrt((share * (1 - share)) / draws) }
}
