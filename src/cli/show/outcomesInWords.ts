import {
  type DerivedQuantity,
  outcomeSentence,
  type PropagatedModel,
  printedIn,
} from '../../bench/decide/uncertainty/index.ts'
import { printWithUncertainty } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { printable } from './printable.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

/** Each result by both methods, what they say of each other, and what makes the uncertainty. */
export function outcomesInWords(propagated: PropagatedModel, screen: Screen): string {
  const { model, derived } = propagated
  const note = model.note === undefined ? '' : `${wrap(printable(model.note, 500), Math.min(screen.width, 100))}\n`
  const parts = derived.map((one) => outcomeInWords(one, propagated, screen))
  return `${painted(screen, printable(model.title), 'strong')}\n${note}\n${parts.join('\n')}${joint(propagated)}`
}

function outcomeInWords(one: DerivedQuantity, { model, inputs }: PropagatedModel, screen: Screen): string {
  const { output, linear, monteCarlo } = one
  const unit = printedIn(one)
  const with_ = (estimate: number, u: number): string =>
    printWithUncertainty(unit.from(estimate), Math.abs(unit.size(u)))
  const end = (value: number): string => String(Number(unit.from(value).toPrecision(5)))
  const percent = `${Number((100 * model.coverage).toFixed(2))} %`
  const rows = [
    {
      method: 'law of propagation',
      value: with_(linear.estimate, linear.standardUncertainty),
      low: linear.low,
      high: linear.high,
    },
    {
      method: 'Monte Carlo',
      value: with_(monteCarlo.estimate, monteCarlo.standardUncertainty),
      ...monteCarlo.symmetric,
    },
    { method: 'Monte Carlo, shortest', value: '', ...monteCarlo.shortest },
  ]
  const table = textTable([
    { head: 'by', unit: '', align: 'left', cells: rows.map(({ method }) => method) },
    {
      head: 'value ± u',
      unit: unit.text === '1' ? '' : unit.text,
      align: 'point',
      cells: rows.map(({ value }) => value),
    },
    { head: `${percent} from`, unit: '', align: 'point', cells: rows.map(({ low }) => end(low)) },
    { head: 'to', unit: '', align: 'point', cells: rows.map(({ high }) => end(high)) },
  ])
  const freedom = Number.isFinite(linear.degreesOfFreedom)
    ? `, ${linear.degreesOfFreedom.toFixed(1)} effective degrees of freedom`
    : ''
  const facts = `k = ${linear.coverageFactor.toFixed(2)}${freedom}; ${monteCarlo.trials} trials.`
  const width = Math.min(screen.width, 100)
  return `${printable(output.name)} = ${printable(output.formula, 200)}\n\n${table}\n\n${wrap(`${facts} ${outcomeSentence(one, model)}`, width, { indent: '  ' })}\n\n${budget(one, inputs)}\n`
}

/** The inputs that make a thousandth or more of the variance, largest first. */
function budget({ linear }: DerivedQuantity, inputs: readonly string[]): string {
  const rows = linear.contributions
    .map(({ share }, i) => ({ name: inputs[i], share }))
    .filter(({ share }) => share >= 0.001)
    .sort((a, b) => b.share - a.share)
  return textTable([
    { head: 'made by', unit: '', align: 'left', cells: rows.map(({ name }) => printable(name)) },
    {
      head: 'share of the variance',
      unit: '%',
      align: 'point',
      cells: rows.map(({ share }) => (100 * share).toFixed(1)),
    },
  ])
}

/** What several results have in common. */
function joint({ derived, correlations }: PropagatedModel): string {
  if (derived.length < 2) return ''
  const pairs = derived.flatMap((a, i) =>
    derived
      .slice(i + 1)
      .map(
        (b, j) =>
          `  ${printable(a.output.name)} and ${printable(b.output.name)}: ${correlations[i * derived.length + i + 1 + j].toFixed(3)}\n`,
      ),
  )
  return `\nCorrelations of the results\n${pairs.join('')}`
}
