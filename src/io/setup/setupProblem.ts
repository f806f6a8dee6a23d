import type { Place, Problem } from '../../core/terms/index.ts'

/** All that can be wrong with a setup file. */
export const setupProblemKinds = [
  'setupNotText',
  'setupTooLong',
  'setupEmpty',
  'yamlSyntax',
  'keyUnknown',
  'keyTwice',
  'keyMissing',
  'valueMissing',
  'valueNotPlain',
  'sectionExpected',
  'quantityUnreadable',
  'valueOutOfRange',
  'choiceUnknown',
  'channelTwice',
  'unitUnfit',
  'keysExcludeEachOther',
  'valuesDisagree',
  'fixtureImpossible',
] as const

export type SetupProblemKind = (typeof setupProblemKinds)[number]

/** What and mend of one problem; the reader adds where. */
export interface Complaint {
  readonly kind: SetupProblemKind
  readonly what: string
  readonly mend: string
}

export const setupProblem = (place: Place, { kind, what, mend }: Complaint): Problem => ({
  kind,
  class: 'badInput',
  place,
  what,
  mend,
})
