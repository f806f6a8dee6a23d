import type { ComparisonScale, DifferenceStretch, SampleDifference } from '../terms/index.ts'
import { spokenShare, spokenShares, spokenSpan, spokenSpeed } from './speedWords.ts'

interface Said {
  readonly first: string
  readonly second: string
  readonly stretches: readonly DifferenceStretch[]
  readonly same: SampleDifference['same']
  readonly scale: ComparisonScale
  readonly margin: number
}

/** A run of stretches that one clause tells: where one sample slips more easily, where both are the same, where nobody can tell. */
interface Clause {
  readonly kind: 'lower' | 'higher' | 'same' | 'open'
  readonly parts: readonly DifferenceStretch[]
}

/** The answer in one sentence, or two where both are the same for practical purposes. */
export function differenceWords(said: Said): string {
  const { first, second, stretches, same } = said
  const clauses = clausesOf(stretches)
  const [only] = clauses
  if (clauses.length === 1 && only.kind === 'open') return undecided(said, same.everywhere)
  if (clauses.length === 1 && only.kind === 'same') {
    return `${first} and ${second} are the same within ${marginWords(said)} at every speed ${wholeSpan(stretches)}.`
  }
  const ordered = [...clauses.filter(isTold), ...clauses.filter((clause) => !isTold(clause))]
  const text = ordered.map((clause, i) => clauseWords(clause, said, i === 0)).join('; ')
  const alike = same.everywhere && !clauses.every(({ kind }) => kind === 'same')
  return `${text}.${alike ? ` By two one-sided tests at each speed, the two are the same within ${marginWords(said)} everywhere.` : ''}`
}

function undecided(said: Said, everywhere: boolean): string {
  const { first, second, stretches } = said
  const span = wholeSpan(stretches)
  return everywhere
    ? `${first} and ${second} are the same within ${marginWords(said)} at every speed ${span} (two one-sided tests at each speed); no difference is seen at any.`
    : `The data cannot tell ${first} from ${second} at any speed ${span}, nor show that they are the same within ${marginWords(said)}.`
}

const isTold = ({ kind }: Clause): boolean => kind === 'lower' || kind === 'higher'

function clausesOf(stretches: readonly DifferenceStretch[]): Clause[] {
  const clauses: { kind: Clause['kind']; parts: DifferenceStretch[] }[] = []
  for (const stretch of stretches) {
    const kind = stretch.verdict === 'open' && stretch.within ? 'same' : stretch.verdict
    const last = clauses.at(-1)
    if (last?.kind === kind) last.parts.push(stretch)
    else clauses.push({ kind, parts: [stretch] })
  }
  return clauses
}

function clauseWords({ kind, parts }: Clause, said: Said, isFirst: boolean): string {
  const where = whereWords(parts, said.stretches)
  if (kind === 'open') return `${where} the data cannot tell`
  if (kind === 'same') return `${where} the two are the same within ${marginWords(said)}`
  const [from, to] = [Math.min(...parts.map(({ least }) => least)), Math.max(...parts.map(({ most }) => most))]
  const [low, high] = [Math.min(...parts.map((part) => part.low)), Math.max(...parts.map((part) => part.high))]
  const size = kind === 'lower' ? sizes(-to, -from, said) : sizes(from, to, said)
  const band = kind === 'lower' ? sizes(-high, -low, said) : sizes(low, high, said)
  const easily = kind === 'lower' ? 'more easily' : 'less easily'
  const subject = isFirst ? `${said.second} slips ${easily} than ${said.first}` : `it slips ${easily}`
  return `${subject} ${where}, by ${size} (95 % band ${band})${matters(parts, said)}`
}

function matters(parts: readonly DifferenceStretch[], said: Said): string {
  if (parts.every(({ within }) => within)) return `, less than the ${marginWords(said)} that matter`
  if (parts.every(({ beyond }) => beyond)) return `, more than the ${marginWords(said)} that matter`
  return parts.some(({ beyond }) => beyond) ? '' : `, which may or may not reach the ${marginWords(said)} that matter`
}

/** `below 2 mm/s`, `from 2 to 60 mm/s`, `above 60 mm/s`; the whole range by its ends. */
function whereWords(parts: readonly DifferenceStretch[], all: readonly DifferenceStretch[]): string {
  const [from, to] = [parts[0].from, parts[parts.length - 1].to]
  const place = all.indexOf(parts[0])
  const before = all[place - 1]
  const after = all[place + parts.length]
  const open = parts[0].verdict === 'open'
  if (before === undefined && after === undefined) return `over the whole range, ${spokenSpan(from, to)}`
  if (from === to) return `at ${spokenSpeed(from)}`
  if (open && before === undefined && after !== undefined) return `below ${spokenSpeed(after.from)}`
  if (open && after === undefined && before !== undefined) return `above ${spokenSpeed(before.to)}`
  return spokenSpan(from, to)
}

const wholeSpan = (stretches: readonly DifferenceStretch[]): string =>
  spokenSpan(stretches[0].from, stretches[stretches.length - 1].to)

const sizes = (least: number, most: number, { scale }: Said): string =>
  scale === 'ratio' ? spokenShares(least, most) : frictions(least, most)

function frictions(least: number, most: number): string {
  const [low, high] = [least, most].map((value) => String(Number(value.toPrecision(2))))
  return low === high ? low : `${low} to ${high}`
}

const marginWords = ({ scale, margin }: Pick<Said, 'scale' | 'margin'>): string =>
  scale === 'ratio' ? spokenShare(margin) : String(margin)
