import type { FrictionLaw, RunSheet, VirtualRig, VirtualRun } from '../../../src/core/rig/index.ts'
import { simulateRecord, usualColumns } from '../../../src/core/rig/index.ts'
import type { ChannelName, Channels } from '../../../src/core/terms/index.ts'

/** Friction that does not depend on the speed. */
export const constantFriction = (friction: number): FrictionLaw => ({
  model: 'plateau',
  parameters: { level: friction },
  at: () => friction,
})

/** A falling branch, then a film: enough shape to tell speeds apart. */
export const masterLaw = (p: { film: number; n: number; boundary: number; v0: number; m: number }): FrictionLaw => ({
  model: 'other',
  parameters: p,
  at: (v) => {
    const film = p.film * v ** p.n
    return film + (p.boundary - film) / (1 + (v / p.v0) ** p.m)
  },
})

interface Changes extends Partial<Omit<VirtualRun, 'rig' | 'sheet'>> {
  readonly rig?: Partial<VirtualRig>
  readonly sheet?: Partial<RunSheet>
}

/** Three balls, 5 N, no noise, no disturbance, speed reached at once; changed as asked. */
export function plainRun({ rig, sheet, ...rest }: Changes = {}): VirtualRun {
  return {
    fixture: { kind: 'ballsOnPlate', balls: 3, ballDiameter: 6.35e-3, trackRadius: 0.015, trackRadiusUncertainty: 0 },
    rig: { noise: {}, riseTime: 0, ...rig },
    sheet: {
      speeds: { kind: 'list', speeds: [0.01] },
      dwell: { kind: 'time', seconds: 10 },
      samplingRate: 10,
      axialForce: 5,
      temperature: 298.15,
      gap: 0,
      blankBefore: false,
      blankAfter: false,
      lift: 1e-3,
      ...sheet,
    },
    friction: constantFriction(0.2),
    disturbances: {},
    columns: usualColumns,
    ...rest,
  }
}

/** One column, or the rows of one step of it. */
export const column = (channels: Channels, name: ChannelName, rows = { from: 0, to: channels.rows }): Float64Array =>
  channels.read(name, rows.from, rows.to)

export const mean = (values: ArrayLike<number>): number => Array.from(values).reduce((a, b) => a + b, 0) / values.length

export function deviation(values: ArrayLike<number>): number {
  const middle = mean(values)
  return Math.sqrt(Array.from(values).reduce((sum, x) => sum + (x - middle) ** 2, 0) / (values.length - 1))
}

/** Correlation from one sample to the next. */
export function lagOne(values: ArrayLike<number>): number {
  const middle = mean(values)
  const off = Array.from(values, (x) => x - middle)
  const square = off.reduce((sum, x) => sum + x * x, 0)
  return off.slice(1).reduce((sum, x, i) => sum + x * off[i], 0) / square
}

/** Friction of every sample of a run with the seed 1, by the lever of three balls and the force alone. */
export function frictions(run: VirtualRun): number[] {
  const { channels } = simulateRecord(run, 1)
  const force = column(channels, 'axialForce')
  return Array.from(column(channels, 'torque'), (torque, i) => torque / (0.015 * force[i]))
}
