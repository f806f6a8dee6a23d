import { printQuantity } from '../../quantity/index.ts'
import type { Remark } from '../../terms/index.ts'

/** A step of less than a turn and what it may hide. */
export interface PartialTurn {
  readonly step: number
  readonly turns: number
  /** |sin πN|/(πN) times the ripple, as a share of friction. */
  readonly biasBound: number
  readonly tiltAssumed: boolean
}

/** Less than a whole turn: tilt and run-out do not average out. */
export function underOneTurn(seen: PartialTurn): Remark | undefined {
  if (!(seen.turns < 1)) return undefined
  const bound = printQuantity(seen.biasBound, 'ratio', { digits: 2 })
  const treated = seen.tiltAssumed
    ? `no step of this record shows the ripple, so a tilt of 0.2° is assumed; it could shift the value by up to ${bound}`
    : `the ripple seen elsewhere in the record is taken off; uncorrected it could shift the value by up to ${bound}`
  return {
    kind: 'underOneTurn',
    seen: seen.turns,
    limit: 1,
    unit: '',
    step: seen.step,
    sentence: `The step covers ${printQuantity(seen.turns, 'count', { digits: 3 })} of a turn: ${treated}.`,
    next: 'Let the step last a whole turn, or reverse the direction and average.',
  }
}

/** Worst bias of a mean over N turns of a ripple, as a share of its amplitude: |sin πN|/(πN). */
export const partialTurnShare = (turns: number): number =>
  turns === 0 ? 1 : Math.abs(Math.sin(Math.PI * turns)) / (Math.PI * turns)
