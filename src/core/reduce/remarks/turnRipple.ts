import { printQuantity } from '../../quantity/index.ts'
import type { Ratio, Remark, TurnHarmonic } from '../../terms/index.ts'

/** A ripple must exceed its own uncertainty by this factor before it is held against a limit. */
const clearFactor = 3

/** The harmonic of a turn with the largest amplitude, held against a limit. */
export function turnRipple(
  of: 'force' | 'friction',
  seen: { harmonics: readonly TurnHarmonic[]; step: number },
  limit: Ratio,
): Remark | undefined {
  const clear = seen.harmonics.filter((h) => h.amplitude > clearFactor * h.uncertainty)
  const largest = clear.reduce<TurnHarmonic | undefined>(
    (best, h) => (best === undefined || h.amplitude > best.amplitude ? h : best),
    undefined,
  )
  if (largest === undefined || !(largest.amplitude > limit)) return undefined
  const often = largest.order === 1 ? 'once a turn' : `${largest.order} times a turn`
  return {
    kind: of === 'force' ? 'forceRipple' : 'frictionRipple',
    seen: largest.amplitude,
    limit,
    unit: '',
    step: seen.step,
    sentence:
      `${of === 'force' ? 'The axial force' : 'Friction'} swings ${often} by ` +
      `${printQuantity(largest.amplitude, 'ratio', { digits: 3 })} of its mean: the plate is tilted or the fixture runs out.`,
    next: 'Re-align plate and fixture, or use the compliant coupling; then repeat.',
  }
}
