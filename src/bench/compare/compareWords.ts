import { type CompareAsk, type CompareOptions, usualDifference } from '../../core/decide/index.ts'
import { parseQuantity } from '../../core/quantity/index.ts'
import { done, failed, type Outcome, type Problem, type Removal } from '../../core/terms/index.ts'

/** What a person asked of a comparison, in the words of the terminal. */
export interface CompareWords {
  readonly margin?: string
  readonly difference?: true
  readonly separate?: true
  /** Speeds with units. */
  readonly at?: readonly string[]
  readonly rankAt?: string
  /** `RECORD=reason` each. */
  readonly without?: readonly string[]
  readonly by?: string
  readonly draws?: number
  readonly seed?: number
}

/** Reads them; all problems at once. */
export function compareAsk(words: CompareWords): Outcome<CompareAsk> {
  const problems: Problem[] = []
  const take = <T>(outcome: Outcome<T>): T | undefined => {
    if (outcome.ok) return outcome.value
    problems.push(...outcome.problems)
    return undefined
  }
  const options: Partial<CompareOptions> = {
    ...(words.difference === true ? { scale: 'difference', margin: usualDifference } : {}),
    ...(words.separate === true ? { scatter: 'separate' } : {}),
    ...(words.draws === undefined ? {} : { draws: words.draws }),
    ...(words.seed === undefined ? {} : { seed: words.seed }),
  }
  const margin = words.margin === undefined ? undefined : take(marginOf(words.margin))
  const at = (words.at ?? []).map((word) => take(speedOf(word, 'at')) ?? 0)
  const rankAt = words.rankAt === undefined ? undefined : take(speedOf(words.rankAt, 'rank-at'))
  const removals = (words.without ?? []).map((word) => take(removalOf(word, words.by)))
  if (problems.length > 0) return failed(...problems)
  return done({
    options: { ...options, ...(margin === undefined ? {} : { margin }) },
    ...(at.length === 0 ? {} : { at }),
    ...(rankAt === undefined ? {} : { rankAt }),
    removals: removals.filter((removal) => removal !== undefined),
  })
}

function marginOf(word: string): Outcome<number> {
  const read = parseQuantity(word, 'ratio')
  if (read.ok && read.value > 0) return done(read.value)
  return failed({
    kind: 'marginUnusable',
    class: 'wrongUse',
    place: { name: 'margin', cell: word },
    what: 'The margin is the largest difference without meaning, so it must be above zero.',
    mend: 'Write a share such as "10 %", or with --difference a friction such as 0.02.',
  })
}

function speedOf(word: string, name: string): Outcome<number> {
  const read = parseQuantity(word, 'velocity')
  if (read.ok && read.value > 0) return done(read.value)
  return failed({
    kind: 'speedUnusable',
    class: 'wrongUse',
    place: { name, cell: word },
    what: `"${word}" is no speed.`,
    mend: 'Write a number with its unit, such as "10 mm/s".',
  })
}

function removalOf(word: string, by: string | undefined): Outcome<Removal> {
  const [, record, why] = word.match(/^([^=]+)=(.+)$/s) ?? []
  if (record !== undefined && by !== undefined) return done({ record, by, why: why ?? '' })
  return failed({
    kind: 'removalUnsigned',
    class: 'wrongUse',
    place: { name: 'without', cell: word },
    what: 'A replicate is taken out by a person with a reason alone.',
    mend: 'Write --without "RECORD=reason" and --by INITIALS.',
  })
}
