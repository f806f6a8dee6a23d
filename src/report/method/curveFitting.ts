import { type Curve, modelWords } from '../../core/terms/index.ts'
import { endInWords, modelFormulas } from '../words/curveWords.ts'
import { counted, inWords, percent, small } from '../words/printed.ts'
import type { Done } from './done.ts'

/** Which family was fitted to which points, how the member was chosen, and how sure the band is. */
export function curveFitting({ curve, reduction }: Done): string {
  if (curve === null) return ''
  const out = reduction.points.length - curve.points
  const left =
    out === 0
      ? 'all steps'
      : `the ${counted(curve.points, 'step')} that may be used; ${counted(out, 'step was', 'steps were')} left out, see Remarks`
  if (curve.model === null)
    return `No curve was fitted: ${inWords(curve.points)} of ${counted(reduction.points.length, 'step')} may be used, too few for any.`
  return [
    `A family of curves was fitted to ln µ of ${left}, by weighted least squares with the own uncertainties of the points and their degrees of freedom.`,
    choice(curve),
    endInWords(curve.end),
    scatter(curve),
    `95 % band: ${small(curve.bandMethod)}`,
  ].join(' ')
}

function choice({ choices, model }: Curve): string {
  if (model === null) return ''
  const others = choices
    .filter((other) => other.model !== model)
    .map((other) => `${modelWords[other.model]} (${weight(other.weight)})`)
  const own = choices.find((one) => one.model === model)
  const rivals = others.length === 0 ? '' : `, against ${others.join('; ')}`
  return `The member was chosen by its Akaike weight (Burnham & Anderson 2002): ${modelWords[model]}, ${modelFormulas[model]}, with weight ${weight(own?.weight ?? 1)}${rivals}.`
}

const weight = (share: number): string => (share < 0.005 ? 'below 0.01' : share.toFixed(2))

const scatter = ({ extraScatter }: Curve): string =>
  extraScatter > 0
    ? `The steps scatter by ${percent(extraScatter)} beyond their own uncertainty; this was added to each of them, and band and intervals hold it.`
    : 'Their own uncertainties explain the scatter of the steps about the curve.'
