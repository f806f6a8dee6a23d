import type { Place, Problem } from '../../core/terms/index.ts'
import type { ColumnAnswers } from './columnAnswers.ts'
import type { YamlSource } from './yamlSource.ts'

/** What the reader has gathered: plain values by path (`rig.torque.floor`) with their places, and all problems. */
export interface Gathered {
  readonly values: Map<string, { readonly value: number | string; readonly place: Place }>
  readonly problems: Problem[]
  columns: ColumnAnswers
}

/** Where the reader stands: `path` is that of the section or key being read. */
export interface Spot {
  readonly source: YamlSource
  readonly into: Gathered
  readonly path: string
}
