import type { SheetOptions, Words } from '../sheet.ts'

/** A value against angle and turn number, already binned; see `turnMap` of the reduction. */
export interface TurnCells {
  readonly columns: number
  readonly rows: number
  /** Row r holds turn `turns[r]` up to but without `turns[r + 1]`; one entry more than rows. */
  readonly turns: readonly number[]
  /** Row after row; NaN for an empty cell. */
  readonly mean: ArrayLike<number>
  /** Values between which the colours run; cells beyond take the last colour. null where all cells are empty. */
  readonly range: readonly [number, number] | null
}

/** What the turn map shows. */
export interface TurnMapFigureData extends Words {
  readonly map: TurnCells
  /** Friction is a plain number, its swing a share of the step's friction, axial force in N, gap in m. */
  readonly quantity: 'friction' | 'frictionSwing' | 'axialForce' | 'gap'
  /** True for differences: colours part at zero. The range should be even about it. */
  readonly diverging?: boolean
  /** Turn at which each step begins, on the scale of `turns`. */
  readonly steps?: readonly { readonly number: number; readonly turn: number }[]
}

export interface TurnMapFigureOptions extends SheetOptions {
  /** Height of the map alone in pixels, 80 to 1200. */
  readonly plotHeight: number
}

export const turnMapFigureDefaults: TurnMapFigureOptions = {
  palette: 'light',
  width: 880,
  plotHeight: 320,
  id: 'turns',
}
