import type { Explained } from '../terms/index.ts'

/** All that a plan works out by a law. */
export const reckoningNames = [
  'contact',
  'layer',
  'coating',
  'adhesion',
  'yield',
  'edgeTension',
  'wear',
  'wornFlat',
  'flash',
  'film',
  'filmFriction',
  'mixedFriction',
  'partialTurns',
  'uncertainty',
  'replicates',
] as const

/** Name of one of them. */
export type ReckoningName = (typeof reckoningNames)[number]

/** One number of the plan, or a few that belong together, with its law, where the law holds, and what speaks against it here. */
export interface Reckoning {
  readonly name: ReckoningName
  readonly sentence: string
  readonly law: string
  readonly source: string
  readonly valid: string
  readonly doubts: readonly string[]
}

/** The reckoning of an explained result. */
export const reckoned = (name: ReckoningName, sentence: string, by: Explained): Reckoning => ({
  name,
  sentence,
  law: by.law,
  source: by.source,
  valid: by.valid,
  doubts: by.doubts.map((doubt) => doubt.sentence),
})
