import { printQuantity } from '../../quantity/index.ts'
import type { WindowLimitName } from '../../terms/index.ts'
import type { LimitAt } from './pointLimits.ts'

/** What is known of one limit over the whole curve. */
export interface LimitTold {
  readonly known: boolean
  readonly worst: { readonly speed: number; readonly limit: LimitAt } | undefined
  readonly broken: boolean
  readonly end: 'low' | 'high'
  readonly speed: number | null
}

/** What each limit means, with the number where it came closest. */
export function limitWords(name: WindowLimitName, told: LimitTold): string {
  const { worst } = told
  if (worst === undefined) return unknown[name] ?? 'Not known for this record.'
  const at = printQuantity(worst.speed, 'velocity', { digits: 3 })
  const share = Number.isFinite(worst.limit.seen)
    ? printQuantity(worst.limit.seen, 'ratio', { digits: 2 })
    : 'more than all'
  const allowed = printQuantity(worst.limit.limit, 'ratio', { digits: 2 })
  const bites = told.broken ? `bites at ${at}` : `does not bite; closest at ${at}`
  switch (name) {
    case 'torqueFloor':
      return `Torque floor ${bites}: the floor is ${share} of the friction torque.`
    case 'torqueCeiling':
      return `Torque ceiling ${bites}: the torque is ${share} of it.`
    case 'forceZero':
      return `Zero of the axial force ${bites}: its uncertainty moves friction by up to ${share} (${allowed} allowed), all points together.`
    case 'partialTurn':
      return `Turn not completed ${bites}: uncorrected, the ripple seen could shift friction by up to ${share} (${allowed} allowed).`
    case 'windUp':
      return `Wind-up of the shaft ${bites}: it takes ${share} of the step (${allowed} allowed).`
    case 'inertia':
      return `Inertia ${bites}: speeding up takes ${share} of the friction torque, taken off (${allowed} allowed).`
    case 'drag':
      return `Drag ${bites}: the blank's part that grows with speed is ${share} of the friction torque, taken off (${allowed} allowed).`
    case 'contact':
      return told.broken
        ? `Unsteady contact at ${at}: lost contact, stick–slip or a speed that never settled.`
        : 'The contact held at every speed.'
    case 'data':
      return 'The data end here.'
  }
}

const unknown: Partial<Record<WindowLimitName, string>> = {
  torqueCeiling: 'Torque ceiling: not given; say it in the setup (rig: torque: ceiling).',
  forceZero: 'Zero of the axial force: not measured in this record, so its part is unknown at every speed.',
  windUp: 'Wind-up of the shaft: the torsional stiffness is not given (rig: torsionalStiffness).',
  inertia: 'Inertia: not given (rig: inertia); it matters for ramps, held speeds settle.',
  drag: 'Drag: no torque blank in this record, so the drag of a liquid is not known.',
}
