/** All that may forbid a speed at a load, in the order of their bits. */
export const planLimits = [
  'torqueFloor',
  'torqueCeiling',
  'forceTooLow',
  'forceTooHigh',
  'speedTooLow',
  'speedTooHigh',
  'pressure',
  'edgeTension',
  'coating',
  'tiltingMoment',
  'turns',
  'distance',
  'wear',
  'time',
  'uncertainty',
] as const

/** Name of one such limit. */
export type PlanLimit = (typeof planLimits)[number]

/** Bit of a limit in the masks of a window. */
export const bitOf = (limit: PlanLimit): number => 1 << planLimits.indexOf(limit)

/** Limits that a mask of bits holds. */
export const limitsIn = (mask: number): readonly PlanLimit[] =>
  planLimits.filter((limit) => (mask & bitOf(limit)) !== 0)

/** From the hardest to move to the easiest: what the rig cannot do, what the bodies do not bear, what more time would mend. */
const hardestFirst: readonly PlanLimit[] = [
  'forceTooLow',
  'forceTooHigh',
  'speedTooLow',
  'speedTooHigh',
  'torqueCeiling',
  'torqueFloor',
  'tiltingMoment',
  'edgeTension',
  'pressure',
  'coating',
  'wear',
  'turns',
  'uncertainty',
  'distance',
  'time',
]

/** The limit of a mask that is hardest to move: what a picture shows where several forbid a cell. undefined for a free cell. */
export function hardestLimit(mask: number): PlanLimit | undefined {
  const broken = limitsIn(mask)
  return hardestFirst.find((limit) => broken.includes(limit))
}

/** The words and the sign by which people know a limit. */
export const planLimitWords: Readonly<Record<PlanLimit, { readonly words: string; readonly sign: string }>> = {
  torqueFloor: { words: 'torque too small for the wanted uncertainty', sign: 'f' },
  torqueCeiling: { words: 'torque over the rig’s largest', sign: 'M' },
  forceTooLow: { words: 'axial force under the rig’s smallest', sign: 'l' },
  forceTooHigh: { words: 'axial force over the rig’s largest', sign: 'h' },
  speedTooLow: { words: 'slower than the rig turns', sign: 's' },
  speedTooHigh: { words: 'faster than the rig turns', sign: 'q' },
  pressure: { words: 'pressure over what the pair bears', sign: 'p' },
  edgeTension: { words: 'tension at the edge cracks the brittle body', sign: 'e' },
  coating: { words: 'sinks too deep into the coating or layer', sign: 'c' },
  tiltingMoment: { words: 'a lone body tilts the shaft', sign: 'm' },
  turns: { words: 'under one turn, and tilt could shift the value', sign: 't' },
  distance: { words: 'sweep to here slides too far', sign: 'd' },
  wear: { words: 'worn scar wider than the contact', sign: 'w' },
  time: { words: 'sweep from here takes too long', sign: 'T' },
  uncertainty: { words: 'predicted uncertainty over the wanted one', sign: 'u' },
}
