import type { Reduction } from '../../core/terms/index.ts'
import { capital, counted, inWords, listed, percent, plain } from '../words/printed.ts'
import type { Done } from './done.ts'

/** How the rows of a step became one value: ratio of means, whole turns, correlated noise. */
export function averaging({ reduction, geometry }: Done): string {
  if (reduction.points.length === 0) return ''
  const orders = [...new Set([1, 2, 3, geometry.contacts])].sort((a, b) => a - b).map((order) => `${order}×`)
  return [
    'Friction of a step is the ratio of the mean tangential to the mean axial force over a whole turn; a mean of ratios would be biased by every swing of the force.',
    `Level and turn harmonics (${listed(orders)}) were fitted together by generalised least squares with autocorrelated noise, whose correlation from row to row was ${plain(reduction.noiseCorrelation, 2)} over the record.`,
    turns(reduction),
    ripple(reduction),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

function turns({ points, window }: Reduction): string {
  const whole = points.filter(({ turns: held }) => held >= 1).length
  if (whole === points.length) return 'Every step held at least one whole turn.'
  const head =
    whole === 0
      ? 'No step held a whole turn, so a tilt had to be assumed for what a part of a turn leaves'
      : `${counted(whole, 'step')} of ${inWords(points.length)} held at least one whole turn; in the others the ripple that the rest of the record shows was taken off, with its uncertainty`
  const bound = Math.max(0, ...window.partialTurnBias.map((bias) => bias.bound))
  const left = bound > 0 ? `; the bias that this may leave is at most ${percent(bound)} of friction` : ''
  return `${capital(head)}${left}.`
}

function ripple({ ripple: seen }: Reduction): string {
  if (seen.length === 0) return ''
  const parts = seen.map(
    ({ order, friction, force }) =>
      `${order}× ${percent(friction)} in friction and ${percent(force)} in the axial force`,
  )
  return `Amplitudes seen over the record, relative to the mean: ${parts.join('; ')}.`
}
