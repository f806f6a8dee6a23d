import { collapseSignificance, type MasterCurveFit } from '../../core/curve/index.ts'
import { type HerseyDefinition, herseyDefinitions } from '../../core/film/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import type { Remark } from '../../core/terms/index.ts'

const percent = (value: number): string => printQuantity(value, 'ratio', { digits: 2 })
const three = (value: number): string => String(Number(value.toPrecision(3)))

const verdicts = {
  yes: 'Viscosity makes the liquids one curve',
  no: 'Viscosity does not make the liquids one curve',
  cannotTell: 'Whether viscosity makes the liquids one curve cannot be told',
} as const

/** What the liquids say together. */
export function masterSentences(fit: MasterCurveFit, axis: HerseyDefinition): readonly string[] {
  const { formula, unit } = herseyDefinitions[axis]
  const { residual, explained, permutations, shifts } = fit
  const off = shifts.slice(1).filter(({ beyondWithViscosity: { low, high } }) => low > 1 || high < 1)
  return [
    `${verdicts[fit.collapses]} over ${formula}${unit === '' ? '' : ` (${unit})`}.`,
    `Points lie ${percent(residual.viscosity)} about it (root mean square), ${percent(residual.speed)} about the best curve over plain speed and ${percent(residual.free)} with free shifts; their own uncertainty makes ${percent(residual.own)}. Viscosity takes away ${(100 * Math.max(0, explained)).toFixed(1)} % of the spread.`,
    `With the viscosities given to the liquids in other orders, ${permutations.asGood} of ${permutations.orders} orders do as well (the right one counted): probability by chance ${three(permutations.probability)}${permutations.probability > collapseSignificance && permutations.orders < 20 ? ', the least that so few liquids can give is 1 in as many orders' : ''}.`,
    freeInWords(fit),
    ...off.map(
      ({ name, beyondWithViscosity: { value, low, high } }) =>
        `${name} lies ${value > 1 ? 'to the left' : 'to the right'} of the common curve: its viscosity acts ${three(value)} times (95 % ${three(low)} to ${three(high)}, both viscosities' uncertainty in it) what it is said to be.`,
    ),
  ]
}

function freeInWords({ better, collapses }: MasterCurveFit): string {
  const chance = better.probability < 1e-4 ? 'under 0.0001' : three(better.probability)
  const told = `Shifted freely the liquids fit better; by chance alone that much better with a probability of ${chance}`
  if (better.probability >= collapseSignificance) return `${told}: no more than viscosity is asked for.`
  return collapses === 'no' ? `${told}.` : `${told}, which the uncertainty of the viscosities explains.`
}

/** A collapse that is refused. */
export function masterRemarks({ collapses, better, shifts }: MasterCurveFit): readonly Remark[] {
  if (collapses !== 'no') return []
  const names = shifts
    .slice(1)
    .filter(({ beyondWithViscosity: { low, high } }) => low > 1 || high < 1)
    .map(({ name }) => name)
  return [
    {
      kind: 'notCollapsed',
      seen: better.probability,
      limit: collapseSignificance,
      unit: '',
      sentence: `${names.join(', ')}: more than viscosity moves ${names.length === 1 ? 'this liquid' : 'these liquids'} against ${shifts[0].name}.`,
      next: 'Check the viscosity at the temperature and rate of the run; if it holds, the liquids lubricate differently.',
    },
  ]
}
