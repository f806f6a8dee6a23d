import { type CurveFigureData, type CurveFigureOptions, curveFigureDefaults } from './curveData.ts'
import { domainOf, hasPlace, isDrawable } from './domain.ts'
import { regimeStripHeight } from './regimes.ts'
import { heading, sheetOf } from './sheet.ts'
import { stageOf } from './stage.ts'

/** Where a point of a curve figure lies, in pixels of the figure. */
export interface CurvePlace {
  readonly step: number
  readonly x: number
  readonly y: number
}

/** Places of the points that `curveFigure` draws of the same data and options, for what a page lays over them. */
export function curvePlaces(data: CurveFigureData, options: Partial<CurveFigureOptions> = {}): readonly CurvePlace[] {
  const chosen = { ...curveFigureDefaults, ...options }
  const head = heading(data, sheetOf(chosen))
  const stage = stageOf(domainOf(data, chosen.frictionAxis), head.height + regimeStripHeight(data.curve), chosen)
  return data.points.flatMap((point): readonly CurvePlace[] => {
    if (!hasPlace(point.slidingSpeed)) return []
    const x = stage.x(point.slidingSpeed)
    // A step without friction is a cross on the axis.
    return [{ step: point.step, x, y: isDrawable(point) ? stage.y(point.friction) : stage.plot.bottom - 8 }]
  })
}
