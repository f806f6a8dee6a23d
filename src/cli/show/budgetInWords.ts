import type { BudgetShare } from '../../bench/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import type { SharedSource } from '../../core/terms/index.ts'

const sourceWords: Readonly<Record<SharedSource, string>> = {
  torqueScale: 'scale of the torque',
  forceScale: 'scale of the axial force',
  forceZero: 'zero of the axial force',
  torqueBlank: 'torque blank',
  lever: 'lever arm',
  loadFactor: 'load factor',
  tilt: 'tilt',
}

/** What all points have in common, and which cause makes most of it. */
export function budgetInWords(budget: readonly BudgetShare[]): string {
  if (budget.length === 0)
    return 'Shared by all points: nothing is stated. Give the accuracies of the rig in the setup.'
  if (budget.every(({ relative }) => relative < 1e-4)) return 'Shared by all points: less than 0.01 % of friction.'
  const total = Math.hypot(...budget.map(({ relative }) => relative))
  const told = budget.filter(({ share }) => share >= 0.005)
  const shares = told.map(({ source, share }) => `${sourceWords[source]} ${(100 * share).toFixed(0)} %`)
  return `Shared by all points: ${printQuantity(total, 'ratio', { digits: 2 })} of friction (standard uncertainty), made by ${shares.join(', ')} of its variance. It cancels where two samples of one rig are compared.`
}
