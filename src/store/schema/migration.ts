import type { EngineKind } from './keepRows.ts'

/** One step of the schema. A step that has been released is never edited; what it got wrong, the next one mends. */
export interface Migration {
  /** 1, 2, 3 … without a gap. */
  readonly version: number
  readonly name: string
  readonly statements: (engine: EngineKind) => readonly string[]
}
