import type { Dimension } from '../../core/quantity/index.ts'
import type { ChannelName } from '../../core/terms/index.ts'

/** Channels that a strip draws, what they are called there, and what they measure. */
export const channelWords: Readonly<
  Record<Exclude<ChannelName, 'time' | 'step'>, { readonly words: string; readonly dimension: Dimension }>
> = {
  angularVelocity: { words: 'rotation', dimension: 'angularVelocity' },
  slidingSpeed: { words: 'sliding speed', dimension: 'velocity' },
  torque: { words: 'torque', dimension: 'torque' },
  frictionForce: { words: 'friction force', dimension: 'force' },
  axialForce: { words: 'axial force', dimension: 'force' },
  angle: { words: 'angle', dimension: 'angle' },
  gap: { words: 'gap', dimension: 'length' },
  temperature: { words: 'temperature', dimension: 'temperature' },
}
