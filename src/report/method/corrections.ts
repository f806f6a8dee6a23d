import type { Reduction } from '../../core/terms/index.ts'
import { grouped, listed, measured, printed } from '../words/printed.ts'
import type { Done } from './done.ts'

/** What was taken off before any division, by how much, and from where. */
export const corrections = ({ setup, reduction }: Done): string =>
  [forceZero(reduction), torqueBlank(reduction), inertia(setup.rig.inertia, reduction.torqueBlank.from)].join(' ')

function forceZero({ forceZero: zero }: Reduction): string {
  if (zero.from === 'none') {
    return 'The record holds no stretch without contact, so the axial force stands as it was read, with no zero taken off.'
  }
  const level = measured(zero.level, zero.levelUncertainty, 'force')
  const from =
    zero.from === 'blank'
      ? `${grouped(zero.rows)} rows without contact`
      : `${grouped(zero.rows)} rows without contact before and after the sliding`
  const line =
    zero.slope === 0
      ? 'as their mean; no drift was clear in them'
      : `as a straight line in time with a drift of ${printed(60 * zero.slope, 'force', 2)} a minute`
  return `A zero of the axial force of ${level} was taken off, from ${from}, ${line}.`
}

function torqueBlank({ torqueBlank: blank }: Reduction): string {
  if (blank.from === 'none') {
    return 'No torque without contact was there to take off: residual torque and drag, where there are any, remain in the friction.'
  }
  const level = measured(blank.level, Math.sqrt(Math.max(0, blank.covariance[0])), 'torque')
  const slope = blank.perSpeed === 0 ? '' : ` and ${printed(blank.perSpeed, 'torque', 2)} for every rad/s`
  const turns = blank.turn.map(({ order }) => (order === 1 ? 'once' : order === 2 ? 'twice' : `${order} times`))
  const repeating = turns.length === 0 ? '' : `, with what repeats ${listed(turns)} a turn`
  return `A torque blank of ${level}${slope}${repeating} was taken off, from ${grouped(blank.rows)} rows without contact.`
}

function inertia(stated: number | undefined, blank: Reduction['torqueBlank']['from']): string {
  if (stated !== undefined) {
    return `The torque that accelerates a moment of inertia of ${printed(stated, 'momentOfInertia')} was taken off as I dΩ/dt.`
  }
  return blank === 'blank'
    ? 'No moment of inertia is stated; where the rows without contact showed one clearly, it was fitted with the blank and I dΩ/dt taken off.'
    : 'No moment of inertia is stated, and nothing was taken off for acceleration.'
}
