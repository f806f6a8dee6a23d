/** Why a number out of a law of contact, film or liquid must be taken with care. */
export const doubtKinds = [
  'largeStrain',
  'baseFelt',
  'substrateFelt',
  'roughContact',
  'adhesionLeftOut',
  'yields',
  'cracks',
  'edgeLoaded',
  'wornFlat',
  'deepScar',
  'softIndenter',
  'beyondLaw',
  'betweenLaws',
  'lawsDiffer',
  'heatLeaks',
  'outsideFit',
  'filmTooThick',
  'filmMolecular',
  'surfacesTouch',
  'rateUnclear',
] as const

/** Stable name of one such reason. */
export type DoubtKind = (typeof doubtKinds)[number]

/** A reason to doubt, as data: both numbers are plain ratios, so that no unit has to be printed here. */
export interface Doubt {
  readonly kind: DoubtKind
  readonly seen: number
  readonly limit: number
  readonly sentence: string
}

/** What every explained result carries beside its values. */
export interface Explained {
  /** The law by its usual name. */
  readonly law: string
  /** Where it was published; "from memory" where nobody has held it against the print. */
  readonly source: string
  /** Conditions under which the law holds. */
  readonly valid: string
  /** Which of them are not met; empty where none was found. */
  readonly doubts: readonly Doubt[]
}

/** A doubt that has not been tried yet. The words get both numbers, printed with the digits that a reader needs. */
export interface PossibleDoubt {
  readonly kind: DoubtKind
  readonly seen: number
  readonly limit: number
  readonly say: (seen: string, limit: string) => string
}

/** A doubt where `seen` is more than `limit`, otherwise nothing. */
export const doubtAbove = (possible: PossibleDoubt): Doubt | undefined =>
  possible.seen > possible.limit ? said(possible) : undefined

/** A doubt where `seen` is less than `limit`, otherwise nothing. */
export const doubtBelow = (possible: PossibleDoubt): Doubt | undefined =>
  possible.seen < possible.limit ? said(possible) : undefined

/** Those that were found. */
export const doubtsFound = (...tried: readonly (Doubt | undefined)[]): Doubt[] =>
  tried.filter((doubt) => doubt !== undefined)

const said = ({ kind, seen, limit, say }: PossibleDoubt): Doubt => ({
  kind,
  seen,
  limit,
  sentence: say(twoDigits(seen), twoDigits(limit)),
})

const twoDigits = (value: number): string =>
  value !== 0 && Math.abs(value) < 1e-3
    ? value.toExponential(1).replace('.0e', 'e')
    : String(Number(value.toPrecision(2)))
