import type { BelievableWindow, Curve, Point } from '../core/terms/index.ts'
import type { RegimeNames } from './regimeNames.ts'
import type { SheetOptions, Words } from './sheet.ts'

/** What the curve figure shows. It draws and decides nothing: fit, band and window come ready. */
export interface CurveFigureData extends Words {
  readonly points: readonly Point[]
  readonly curve: Curve | null
  readonly window: BelievableWindow | null
  /** Names of the regimes from slow to fast; `wetRegimes` where left out. */
  readonly regimes?: RegimeNames
}

export interface CurveFigureOptions extends SheetOptions {
  /** Height of the plot alone in pixels, 160 to 1200. */
  readonly plotHeight: number
  /** Axis of friction; `auto` takes the logarithm where friction spans a factor of 2.5 or more. */
  readonly frictionAxis: 'auto' | 'log' | 'linear'
}

export const curveFigureDefaults: CurveFigureOptions = {
  palette: 'light',
  width: 880,
  plotHeight: 340,
  frictionAxis: 'auto',
  id: 'curve',
}
