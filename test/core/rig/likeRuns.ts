import type { TrueStep, VirtualRun } from '../../../src/core/rig/index.ts'
import { masterLaw } from './plainRun.ts'

/**
 * Records that an independent simulator made from known parameters; `seen` are figures taken from those records with
 * NumPy (step means after 4 s, least-squares harmonics, spread of what is left). This rig must make the like.
 */

export const noise = (torque: number, force: number, correlation: number): VirtualRun['rig']['noise'] => ({
  torque: { correlated: torque, correlation },
  axialForce: { correlated: force, correlation },
  gap: { white: 1e-7 },
  temperature: { white: 0.02 },
})
export const usualNoise = noise(4e-6, 0.005, 0.6)
export const usualLaw = masterLaw({ film: 0.09, n: 0.35, boundary: 0.22, v0: 0.008, m: 1.3 })
export const up = (slowest: number, fastest: number, perDecade: number) =>
  ({ kind: 'range', slowest, fastest, perDecade, direction: 'up' }) as const

/** Rows of a step after `wait` seconds. */
export const settled = (step: TrueStep, rate: number, wait: number) => ({ from: step.from + rate * wait, to: step.to })

/** Standard error of the mean of an AR(1) series, times four. */
export const near = (sd: number, correlation: number, n: number) =>
  4 * sd * Math.sqrt((1 + correlation) / (1 - correlation) / n)
