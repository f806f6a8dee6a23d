import type { Place, Problem, ProblemClass } from '../core/terms/index.ts'

/** Everything that the store may have to say no to. `wrongUse` where other words in the call would mend it. */
const classes = {
  labMissing: 'store',
  labUnfinished: 'store',
  labExists: 'store',
  folderNotEmpty: 'store',
  labNewer: 'store',
  labOlder: 'store',
  labBusy: 'store',
  labReadOnly: 'store',
  labDamaged: 'store',
  labUnreachable: 'store',
  labRefused: 'store',
  diskFull: 'store',
  systemRefused: 'store',
  rawMissing: 'store',
  rawChanged: 'store',
  setupChanged: 'store',
  resultChanged: 'store',
  paperChanged: 'store',
  linkBroken: 'store',
  resultDiffers: 'store',
  changedMeanwhile: 'store',
  notThere: 'wrongUse',
  notUnique: 'wrongUse',
  alreadyThere: 'wrongUse',
  notUsable: 'wrongUse',
} as const satisfies Record<string, ProblemClass>

export type StoreProblemKind = keyof typeof classes

interface StoreWords {
  readonly place: Place
  readonly what: string
  readonly mend: string
}

export const storeProblem = (kind: StoreProblemKind, words: StoreWords): Problem => ({
  kind,
  class: classes[kind],
  ...words,
})

/** Carries problems out of a transaction, which is rolled back on the way. Turned into a value before it leaves the room. */
export class StoreTrouble extends Error {
  override readonly name = 'StoreTrouble'
  readonly problems: readonly Problem[]

  constructor(...problems: readonly Problem[]) {
    super(problems.map(({ what, mend }) => `${what} ${mend}`).join('\n'))
    this.problems = problems
  }
}

/** Gives up with one problem. */
export function refuse(kind: StoreProblemKind, words: StoreWords): never {
  throw new StoreTrouble(storeProblem(kind, words))
}
