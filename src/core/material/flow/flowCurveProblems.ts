import type { Problem } from '../../terms/index.ts'
import { materialProblem } from '../materialProblem.ts'
import type { FlowPoint } from './flowPoint.ts'

/** All that keeps points from being a flow curve of at least so many shear rates; points count from 1. */
export function flowCurveProblems(points: readonly FlowPoint[], leastRates: number): readonly Problem[] {
  const problems = points.flatMap((point, i) => impossible(point).map((what) => onPoint(i, what)))
  const weighted = points.filter(({ relativeUncertainty }) => relativeUncertainty !== undefined).length
  if (weighted > 0 && weighted < points.length) {
    problems.push(
      materialProblem('flowCurveValueImpossible', 'relativeUncertainty', {
        what: `${weighted} of ${points.length} points have an uncertainty, the others none.`,
        mend: 'Give one for each point or for none.',
      }),
    )
  }
  const rates = new Set(points.map(({ shearRate }) => shearRate)).size
  if (rates < leastRates) {
    problems.push(
      materialProblem('flowCurveTooShort', 'shearRate', {
        what: `The flow curve has ${rates} different shear rates; the fit needs at least ${leastRates}.`,
        mend: 'Measure at more shear rates or choose a simpler law.',
      }),
    )
  }
  return problems
}

const positive = (value: number): boolean => value > 0 && value < Number.POSITIVE_INFINITY

const impossible = ({ shearRate, viscosity, relativeUncertainty = 1 }: FlowPoint): readonly string[] => [
  ...(positive(shearRate) ? [] : [`shear rate ${shearRate} 1/s`]),
  ...(positive(viscosity) ? [] : [`viscosity ${viscosity} Pa·s`]),
  ...(positive(relativeUncertainty) ? [] : [`relative uncertainty ${relativeUncertainty}`]),
]

const onPoint = (i: number, what: string): Problem =>
  materialProblem('flowCurveValueImpossible', `point ${i + 1}`, {
    what: `Point ${i + 1} has the ${what}.`,
    mend: 'Give a number above zero or leave the point out.',
  })
