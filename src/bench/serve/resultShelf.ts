import { done, type Outcome, type RemarkKind, remarkKinds, remarkWords } from '../../core/terms/index.ts'
import type { KeptResult, Lab } from '../../store/index.ts'
import { readKept } from '../lab/readKept.ts'
import type { ReducedRecord } from '../reducedRecord.ts'

/** A result as a shelf shows it: a small curve, its points, and the kinds of remark with how often they came. */
export interface ShelvedResult {
  readonly points: readonly {
    readonly step: number
    readonly slidingSpeed: number
    readonly friction: number | null
    readonly low: number | null
    readonly high: number | null
    readonly trusted: boolean
    readonly moved: boolean
    readonly remarks: RemarkKind[]
  }[]
  readonly line: readonly {
    readonly slidingSpeed: number
    readonly friction: number
    readonly low: number
    readonly high: number
  }[]
  readonly remarks: readonly {
    readonly kind: RemarkKind
    readonly words: string
    readonly weight: 'stops' | 'caution' | 'note'
    readonly count: number
  }[]
  readonly window: { readonly low: number | null; readonly high: number | null }
  /** Over all points, m. */
  readonly distance: number
}

/** Results that are remembered; a result never changes, so what was read once holds. */
const most = 5000

/** Reads results for a shelf, each once. */
export class ResultShelf {
  readonly #lab: Lab
  readonly #read = new Map<string, ShelvedResult>()

  constructor(lab: Lab) {
    this.#lab = lab
  }

  async get(result: KeptResult): Promise<Outcome<ShelvedResult>> {
    const known = this.#read.get(result.id)
    if (known !== undefined) return done(known)
    const kept = await readKept(this.#lab, result)
    if (!kept.ok) return kept
    const shelved = shelvedOf(kept.value.reduced)
    if (this.#read.size >= most) this.#read.delete(this.#read.keys().next().value ?? '')
    this.#read.set(result.id, shelved)
    return done(shelved)
  }
}

function shelvedOf({ reduction, curve, remarks }: ReducedRecord): ShelvedResult {
  const { points, window } = reduction
  const kinds = [...points.flatMap((point) => point.remarks), ...remarks].map(({ kind }) => kind)
  return {
    points: points.map(({ step, slidingSpeed, friction, low, high, trusted, remarks: found }) => {
      const own = [...new Set(found.map(({ kind }) => kind))]
      return { step, slidingSpeed, friction, low, high, trusted, moved: own.some(isMoved), remarks: own }
    }),
    line: (curve?.band ?? []).map(({ slidingSpeed, friction, low, high }) => ({ slidingSpeed, friction, low, high })),
    remarks: remarkKinds
      .filter((kind) => kinds.includes(kind))
      .map((kind) => ({ kind, ...remarkWords[kind], count: kinds.filter((one) => one === kind).length })),
    window: { low: window.low, high: window.high },
    distance: points.reduce((sum, { slidingSpeed, duration }) => sum + Math.abs(slidingSpeed) * duration, 0),
  }
}

const isMoved = (kind: string): boolean => kind === 'windowMoved'
