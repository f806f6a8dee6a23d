import type { Problem } from '../terms/index.ts'

/** All that can be wrong with what people say of bodies, liquids and flow curves. */
export const materialProblemKinds = [
  'materialUnknown',
  'materialAmbiguous',
  'materialIncomplete',
  'materialValueImpossible',
  'liquidUnknown',
  'liquidRecipeImpossible',
  'temperatureOutsideTable',
  'shearRateOutsideTable',
  'shearRateMissing',
  'pressureOutsideTable',
  'flowCurveTooShort',
  'flowCurveValueImpossible',
] as const

/** One of these. */
export type MaterialProblemKind = (typeof materialProblemKinds)[number]

/** What and mend of a problem. */
export interface Complaint {
  readonly what: string
  readonly mend: string
}

/** A problem with the entry called `name`. */
export const materialProblem = (kind: MaterialProblemKind, name: string, { what, mend }: Complaint): Problem => ({
  kind,
  class: 'badInput',
  place: { name },
  what,
  mend,
})
