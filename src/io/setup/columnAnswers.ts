import type { Dimension } from '../../core/quantity/index.ts'
import type { ChannelName } from '../../core/terms/index.ts'

/** What a person says about one column: which channel it is, in which unit, or both. */
export interface ColumnAnswer {
  /** `ignore` (`none` in the file) for a column that must not be read, such as the second of two torques. */
  readonly channel?: ChannelName | 'ignore'
  /** A unit as people write it. */
  readonly unit?: string
}

/** Answers by heading, as the heading stands in the file. */
export type ColumnAnswers = Readonly<Record<string, ColumnAnswer>>

/** What each channel measures, and so which units may be answered for it. */
export const channelDimensions: Readonly<Record<ChannelName, Dimension>> = {
  time: 'time',
  step: 'count',
  angularVelocity: 'angularVelocity',
  slidingSpeed: 'velocity',
  torque: 'torque',
  frictionForce: 'force',
  axialForce: 'force',
  angle: 'angle',
  gap: 'length',
  temperature: 'temperature',
}
