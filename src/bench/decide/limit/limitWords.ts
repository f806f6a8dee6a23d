import { type LimitAsk, limitInWords, ruleInWords } from '../../../core/decide/index.ts'
import { type DecisionRule, usualRule } from '../../../core/stats/judging/index.ts'
import { done, failed, type Outcome } from '../../../core/terms/index.ts'
import { ReadWords } from '../readSpeed.ts'

/** A limit as it is said on a command line; the texts are read here. */
export interface LimitWords {
  readonly upper?: string
  readonly lower?: string
  readonly from?: string
  readonly to?: string
  readonly at?: readonly string[]
  readonly rule?: 'simple' | 'guarded' | 'risk'
  readonly guard?: string
  readonly risk?: string
}

/** True where a limit is said at all. */
export const saysLimit = ({ upper, lower }: LimitWords): boolean => upper !== undefined || lower !== undefined

/** Reads the words of a limit; all problems at once. */
export function limitAsk(words: LimitWords): Outcome<LimitAsk> {
  const read = new ReadWords()
  const friction = { least: 0, most: 100 }
  const [upper, lower] = [read.number('upper', words.upper, friction), read.number('lower', words.lower, friction)]
  const [from, to] = [read.speed('from', words.from), read.speed('to', words.to)]
  const at = (words.at ?? []).flatMap((text) => read.speed('at', text) ?? [])
  const rule = ruleFrom(words, read)
  if (lower !== null && upper !== null && lower >= upper) {
    read.refuse('lower', words.lower ?? '', {
      what: 'The lower limit is not below the upper one.',
      mend: 'Exchange them.',
    })
  }
  if (from !== null && to !== null && from > to) {
    read.refuse('from', words.from ?? '', {
      what: 'The range of speeds ends before it begins.',
      mend: 'Exchange --from and --to.',
    })
  }
  if (at.length > 0 && (from !== null || to !== null)) {
    const what = 'Named speeds and a range exclude each other.'
    read.refuse('at', words.at?.[0] ?? '', { what, mend: 'Leave --at away, or --from and --to.' })
  }
  return read.problems.length > 0 ? failed(...read.problems) : done({ tolerance: { lower, upper }, rule, at, from, to })
}

function ruleFrom({ rule = 'guarded', guard, risk }: LimitWords, read: ReadWords): DecisionRule {
  const factor = read.number('guard', guard, { least: 0, most: 10 })
  const mostRisk = read.number('risk', risk, { least: 1e-6, most: 0.4999 })
  if (rule === 'simple') return { kind: 'simple' }
  if (rule === 'risk') return { kind: 'risk', mostRisk: mostRisk ?? 0.05 }
  return { ...usualRule, ...(factor === null ? {} : { factor }) } as DecisionRule // usualRule is a guarded one
}

/** What a paper of a limit holds: the ask itself. Undefined for content that is no limit of ours. */
export function limitFrom(content: unknown): LimitAsk | undefined {
  if (typeof content !== 'object' || content === null) return undefined
  const { tolerance, rule, at, from, to } = content as Partial<Record<keyof LimitAsk, unknown>> // each is looked at below
  const end = (value: unknown): value is number | null =>
    value === null || (typeof value === 'number' && Number.isFinite(value))
  const ends = tolerance as { lower?: unknown; upper?: unknown } | null | undefined
  if (ends === null || ends === undefined || !end(ends.lower) || !end(ends.upper)) return undefined
  const { lower, upper } = ends
  const some = (lower !== null || upper !== null) && !(lower !== null && upper !== null && lower >= upper)
  const known = ruleOf(rule)
  if (!some || known === undefined || !end(from) || !end(to) || !Array.isArray(at)) return undefined
  return {
    tolerance: { lower, upper },
    rule: known,
    at: at.filter((speed) => typeof speed === 'number' && speed > 0),
    from,
    to,
  }
}

function ruleOf(rule: unknown): DecisionRule | undefined {
  if (typeof rule !== 'object' || rule === null) return undefined
  const { kind, factor, coverage, mostRisk } = rule as Record<string, unknown> // each is looked at below
  if (kind === 'simple') return { kind }
  const share = (value: unknown, most: number): value is number =>
    typeof value === 'number' && value > 0 && value < most
  if (kind === 'guarded' && typeof factor === 'number' && factor >= 0 && factor <= 10 && share(coverage, 1)) {
    return { kind, factor, coverage }
  }
  return kind === 'risk' && share(mostRisk, 0.5) ? { kind, mostRisk } : undefined
}

export { limitInWords, ruleInWords }
