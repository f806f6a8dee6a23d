import type { BelievableWindow, Curve, Point } from '../core/terms/index.ts'
import type { PaletteName } from './palette.ts'

/** What the curve figure shows. It draws and decides nothing: fit, band and window come ready. */
export interface CurveFigureData {
  readonly title: string
  /** A quiet line below the title: what slid on what, at which load. */
  readonly caption?: string
  readonly points: readonly Point[]
  readonly curve: Curve | null
  readonly window: BelievableWindow | null
  /** A line at the foot, such as that the data are invented. */
  readonly note?: string
}

export interface CurveFigureOptions {
  readonly palette: PaletteName
  /** Width of the whole figure in pixels, 480 to 2000. The height follows from what there is to say. */
  readonly width: number
  /** Height of the plot alone in pixels, 160 to 1200. */
  readonly plotHeight: number
  /** Axis of friction; `auto` takes the logarithm where friction spans a factor of 2.5 or more. */
  readonly frictionAxis: 'auto' | 'log' | 'linear'
  /** Start of every id in the picture; has to differ between figures on one page. */
  readonly id: string
}

export const curveFigureDefaults: CurveFigureOptions = {
  palette: 'light',
  width: 880,
  plotHeight: 340,
  frictionAxis: 'auto',
  id: 'curve',
}
