/** Causes of error that all points of one rig and fixture have in common. */
export const sharedSources = [
  'torqueScale',
  'forceScale',
  'forceZero',
  'torqueBlank',
  'lever',
  'loadFactor',
  'tilt',
] as const

/** Name of one such cause. */
export type SharedSource = (typeof sharedSources)[number]

/**
 * A value with standard uncertainties. `own` differs from point to point and shrinks when points are averaged;
 * each of `shared` moves all points together and does not.
 */
export interface Measured {
  readonly value: number
  readonly own: number
  readonly shared: Readonly<Partial<Record<SharedSource, number>>>
}
