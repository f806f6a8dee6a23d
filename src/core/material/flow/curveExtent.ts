import type { FlowPoint } from './flowPoint.ts'
import type { CurveExtent } from './shape.ts'

/** Over which rates, viscosities and stresses a checked flow curve runs. */
export function curveExtent(points: readonly FlowPoint[]): CurveExtent {
  const sorted = [...points].sort((a, b) => a.shearRate - b.shearRate)
  const slowest = sorted[0]
  const fastest = sorted[sorted.length - 1]
  const span = (values: readonly number[]) => ({ low: Math.min(...values), high: Math.max(...values) })
  return {
    shearRate: { low: slowest.shearRate, high: fastest.shearRate },
    viscosity: span(points.map(({ viscosity }) => viscosity)),
    shearStress: span(points.map(({ viscosity, shearRate }) => viscosity * shearRate)),
    atSlowest: slowest.viscosity,
    atFastest: fastest.viscosity,
    slope: Math.log(fastest.viscosity / slowest.viscosity) / Math.log(fastest.shearRate / slowest.shearRate),
  }
}
