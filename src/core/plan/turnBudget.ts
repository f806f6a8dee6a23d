import type { Metre, MetrePerSecond, Ratio, Second } from '../terms/index.ts'

/** How long a step lasts: a number of turns, within bounds of time. */
export interface StepDwell {
  readonly turns: number
  readonly least: Second
  readonly most: Second
}

/** Steps evenly spread in log speed. */
export interface Sweep {
  readonly slowest: MetrePerSecond
  readonly fastest: MetrePerSecond
  readonly perDecade: number
}

/** Time of one turn at a sliding speed, 2πr/v. */
export function turnTime(speed: MetrePerSecond, lever: Metre): Second {
  if (!(speed > 0)) throw new RangeError(`speed must be more than zero, got ${speed} m/s`)
  if (!(lever > 0)) throw new RangeError(`lever must be more than zero, got ${lever} m`)
  return (2 * Math.PI * lever) / speed
}

/** Time of one step: the turns asked for, but no less than `least` and no more than `most`. */
export const stepTime = (speed: MetrePerSecond, lever: Metre, { turns, least, most }: StepDwell): Second =>
  Math.min(most, Math.max(least, turns * turnTime(speed, lever)))

/** Gaps between the steps of a sweep; 0 where both ends are one speed. */
export const gapsOf = (slowest: MetrePerSecond, fastest: MetrePerSecond, perDecade: number): number =>
  fastest === slowest ? 0 : Math.max(1, Math.round(Math.log10(fastest / slowest) * perDecade))

/** Speeds of a sweep from the slowest on, the fastest being the last; as near to `perDecade` as whole steps allow. */
export function sweepSpeeds({ slowest, fastest, perDecade }: Sweep): readonly MetrePerSecond[] {
  if (!(slowest > 0 && fastest >= slowest && fastest < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`speeds must rise from above zero, got ${slowest} to ${fastest} m/s`)
  }
  if (!(perDecade > 0)) throw new RangeError(`points per decade must be more than zero, got ${perDecade}`)
  const ratio = Math.log(fastest / slowest)
  const gaps = gapsOf(slowest, fastest, perDecade)
  return Array.from({ length: gaps + 1 }, (_, i) => (i === gaps ? fastest : slowest * Math.exp((ratio * i) / gaps)))
}

/** Time of one way of a sweep. */
export const sweepTime = (sweep: Sweep, lever: Metre, dwell: StepDwell): Second =>
  sweepSpeeds(sweep).reduce((sum, speed) => sum + stepTime(speed, lever, dwell), 0)

/** Sliding distance of one way of a sweep. */
export const sweepDistance = (sweep: Sweep, lever: Metre, dwell: StepDwell): Metre =>
  sweepSpeeds(sweep).reduce((sum, speed) => sum + speed * stepTime(speed, lever, dwell), 0)

/**
 * Worst bias of a mean over N turns of a once-per-turn ripple, as a share of its amplitude: |sin πN|/(πN). A tilt β of the plate
 * makes an amplitude of tan β in friction. 1 at rest, 0 for whole turns.
 */
export function partialTurnBias(turns: number): Ratio {
  if (!(turns >= 0)) throw new RangeError(`turns must be zero or more, got ${turns}`)
  return turns === 0 ? 1 : Math.abs(Math.sin(Math.PI * turns)) / (Math.PI * turns)
}
