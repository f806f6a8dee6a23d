import { normalDensity } from '../../../core/stats/index.ts'
import { schemaVersion } from '../../../core/terms/index.ts'
import { type OutcomeFigureData, outcomeFigure, type PaletteName } from '../../../figure/index.ts'
import { outcomeSentence, printedIn } from './outcomeWords.ts'
import type { DerivedQuantity, PropagatedModel } from './propagateModel.ts'

/** A propagated model for machines: SI, without the trials themselves. */
export function outcomeText({ file, model, inputs, derived, correlations, options }: PropagatedModel): string {
  const results = derived.map(({ output, formula, linear, monteCarlo, comparison }) => {
    const { sorted, ...told } = monteCarlo
    return {
      ...{ name: output.name, formula: output.formula, unit: formula.unit, linear },
      monteCarlo: { ...told, finite: sorted.length },
      comparison,
    }
  })
  const { title, coverage, digits } = model
  return `${JSON.stringify({ schemaVersion, file, title, coverage, digits, ...options, inputs, results, correlations }, null, 2)}\n`
}

const bins = 80

/** One result as a picture: both methods over each other, in the unit that was asked for. */
export function drawOutcome(
  { model, inputs }: PropagatedModel,
  derived: DerivedQuantity,
  palette: PaletteName,
): string {
  const { output, linear, monteCarlo } = derived
  const unit = printedIn(derived)
  const { sorted } = monteCarlo
  const coverage = `${Number((100 * model.coverage).toFixed(2))} %`
  const ends = (low: number, high: number) => ({ low: unit.from(low), high: unit.from(high) })
  return outcomeFigure(
    {
      title: `${model.title}: ${output.name}`,
      caption: `${output.name} = ${output.formula}`,
      quantity: `${output.name} (${unit.text})`,
      ...distributionOf(derived, unit.from),
      trials: sorted.length,
      intervals: [
        { words: `law of propagation, ${coverage}`, ...ends(linear.low, linear.high), by: 'linear' },
        {
          words: `Monte Carlo, ${coverage} with as much outside on either side`,
          ...ends(monteCarlo.symmetric.low, monteCarlo.symmetric.high),
          by: 'monteCarlo',
        },
        {
          words: `Monte Carlo, shortest ${coverage}`,
          ...ends(monteCarlo.shortest.low, monteCarlo.shortest.high),
          by: 'monteCarlo',
        },
      ],
      estimate: unit.from(linear.estimate),
      shares: linear.contributions
        .map(({ share }, i) => ({ words: inputs[i], share }))
        .sort((a, b) => b.share - a.share)
        .slice(0, 10),
      sentence: outcomeSentence(derived, model),
      ...(model.note === undefined ? {} : { note: model.note }),
    },
    { palette },
  )
}

/** Histogram between the far ends of the trials, and the density of the law of propagation over the same range. */
function distributionOf(
  { linear, monteCarlo: { sorted } }: DerivedQuantity,
  from: (value: number) => number,
): Pick<OutcomeFigureData, 'histogram' | 'density'> {
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]
  const { estimate, standardUncertainty: u } = linear
  const least = Math.min(at(0.001), estimate - 3.2 * u)
  const most = Math.max(at(0.999), estimate + 3.2 * u)
  const [low, high] = most > least ? [least, most] : [estimate - 1, estimate + 1]
  const counts = new Array<number>(bins).fill(0)
  for (const value of sorted) {
    const bin = Math.floor(((value - low) / (high - low)) * bins)
    if (bin >= 0 && bin < bins) counts[bin]++
  }
  const scale = Math.abs(from(high) - from(low)) / (high - low)
  const density = Array.from({ length: 161 }, (_, i) => {
    const z = (low + ((high - low) * i) / 160 - estimate) / u
    return u > 0 ? normalDensity(z) / u / scale : 0
  })
  return { histogram: { low: from(low), high: from(high), counts }, density }
}
