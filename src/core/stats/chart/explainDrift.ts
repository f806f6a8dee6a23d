import { linearLeastSquares } from '../../numeric/index.ts'
import { fisherFUpper } from '../fisherF.ts'
import { holm } from '../holm.ts'
import { studentTQuantile } from '../studentT.ts'

/** What may have moved a series of values: numbers such as time or temperature, and kinds such as the ball set. */
export interface DriftCauses {
  readonly numbers: readonly { readonly name: string; readonly values: readonly number[] }[]
  readonly kinds: readonly { readonly name: string; readonly values: readonly string[] }[]
}

/** Effect of one cause: per unit of a number, or of a kind against the reference kind. */
export interface DriftEffect {
  readonly cause: string
  /** The kind, and the one it is held against; empty for a number. */
  readonly kind: string
  readonly against: string
  readonly value: number
  readonly low: number
  readonly high: number
}

/** Whether a cause as a whole explains anything beyond all others. */
export interface DriftTest {
  readonly cause: string
  readonly f: number
  readonly freedoms: readonly [number, number]
  readonly p: number
  /** After Holm 1979, over the causes. */
  readonly adjusted: number
  /** Share of the sum of squares about the mean that it explains beyond all others. */
  readonly share: number
}

/** A series explained by its causes. */
export interface DriftExplanation {
  readonly effects: readonly DriftEffect[]
  readonly tests: readonly DriftTest[]
  /** Causes of which nothing can be said, as they did not vary or only together with others. */
  readonly untold: readonly { readonly cause: string; readonly why: 'neverVaries' | 'variesWithOthers' }[]
  readonly residualDeviation: number
  readonly degreesOfFreedom: number
  /** R², of the sum of squares about the mean. */
  readonly explained: number
}

/**
 * Linear regression of a series on all its causes together, each with its t interval at `coverage`, and an F test of each
 * against the model without it (Draper & Smith 1998, ch. 6). Undefined where fewer than three degrees of freedom would be left:
 * such a fit explains anything.
 */
export function explainDrift(
  values: readonly number[],
  causes: DriftCauses,
  coverage = 0.95,
): DriftExplanation | undefined {
  const columns = columnsOf(values.length, causes)
  const still = [...causes.numbers, ...causes.kinds].filter(({ values: given }) => new Set<unknown>(given).size < 2)
  if (values.length - columns.length < 3) return undefined
  const whole = fitOf(values, columns)
  const rest = values.length - whole.rank
  if (rest < 3) return undefined
  const { total } = fitOf(values, columns.slice(0, 1))
  const residual = whole.total / rest
  const t = studentTQuantile((1 + coverage) / 2, rest)
  const shared = columns.filter((_, place) => whole.dependent.has(place))
  const varying = [...new Set(columns.slice(1).map(({ cause }) => cause))]
  const tests = varying.map((cause) => {
    const without = fitOf(
      values,
      columns.filter((column) => column.cause !== cause),
    )
    const used = whole.rank - without.rank
    const gained = Math.max(0, without.total - whole.total)
    const f = used === 0 ? 0 : gained / used / residual
    return { cause, used, f, freedoms: [used, rest] as const, share: total > 0 ? gained / total : 0 }
  })
  const told = tests.filter(({ used }) => used > 0)
  const p = told.map(({ f, freedoms }) => fisherFUpper(f, freedoms))
  const adjusted = holm(p)
  const partly = new Set(shared.map(({ cause }) => cause))
  return {
    effects: columns.flatMap(({ cause, kind, against }, place) => {
      if (place === 0 || partly.has(cause) || !told.some((test) => test.cause === cause)) return []
      const value = whole.coefficients[place]
      const half = t * Math.sqrt(residual * whole.variances[place])
      return [{ cause, kind, against, value, low: value - half, high: value + half }]
    }),
    tests: told.map(({ cause, f, freedoms, share }, i) => ({
      cause,
      f,
      freedoms,
      p: p[i],
      adjusted: adjusted[i],
      share,
    })),
    untold: [
      ...still.map(({ name }) => ({ cause: name, why: 'neverVaries' as const })),
      ...varying
        .filter((cause) => partly.has(cause) || !told.some((test) => test.cause === cause))
        .map((cause) => ({ cause, why: 'variesWithOthers' as const })),
    ],
    residualDeviation: Math.sqrt(residual),
    degreesOfFreedom: rest,
    explained: total > 0 ? 1 - whole.total / total : 0,
  }
}

interface Column {
  readonly cause: string
  readonly kind: string
  readonly against: string
  readonly values: readonly number[]
}

/** A level, each number about its mean, and each kind but the most frequent as a step. What never varies is left out. */
function columnsOf(count: number, { numbers, kinds }: DriftCauses): readonly Column[] {
  for (const { name, values } of [...numbers, ...kinds]) {
    if (values.length !== count) throw new RangeError(`${name} has ${values.length} values for ${count}`)
  }
  const level = { cause: '', kind: '', against: '', values: Array.from({ length: count }, () => 1) }
  const slopes = numbers.flatMap(({ name, values }) => {
    if (new Set(values).size < 2) return []
    const mean = values.reduce((a, b) => a + b, 0) / count
    return [{ cause: name, kind: '', against: '', values: values.map((value) => value - mean) }]
  })
  const steps = kinds.flatMap(({ name, values }) => {
    const counts = new Map<string, number>()
    for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1)
    const [first, ...others] = [...counts.keys()].sort((a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0))
    return others.map((kind) => ({
      cause: name,
      kind,
      against: first,
      values: values.map((value) => (value === kind ? 1 : 0)),
    }))
  })
  return [level, ...slopes, ...steps]
}

function fitOf(values: readonly number[], columns: readonly Column[]) {
  const fit = linearLeastSquares(
    columns.map((column) => column.values),
    values,
  )
  return {
    coefficients: fit.coefficients,
    variances: columns.map((_, place) => fit.inverseGram[place * columns.length + place]),
    total: fit.residualSumOfSquares,
    rank: columns.length - fit.dependent.length,
    dependent: new Set(fit.dependent),
  }
}
