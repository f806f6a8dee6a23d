import { describe, expect, test } from 'vitest'
import { simulateStickSlip } from '../../../src/core/rig/slidingMass.ts'
import {
  criticalSpeed,
  criticalSpeedWeakDamping,
  naturalFrequency,
  type Oscillator,
  slipTime,
  springWave,
  stickSlipFrequency,
  stickTime,
} from '../../../src/core/rig/stickSlipOscillator.ts'

const undamped: Oscillator = { stiffness: 1e4, mass: 0.05, forceDrop: 0.5, dampingRatio: 0 }
const damped: Oscillator = { ...undamped, dampingRatio: 0.05 }

/** Largest drive speed at which the simulated mass still sticks. */
function simulatedCriticalSpeed(o: Oscillator): number {
  let sticks = 0.001
  let slides = 1
  for (let i = 0; i < 40; i++) {
    const middle = Math.sqrt(sticks * slides)
    if (simulateStickSlip(o, middle, 1e-5) === undefined) slides = middle
    else sticks = middle
  }
  return sticks
}

describe('natural frequency √(k/m)/2π (identity)', () => {
  test('of 1e4 N/m and 0.05 kg', () => {
    expect(Math.abs(naturalFrequency(1e4, 0.05) / 71.17625 - 1)).toBeLessThan(1e-6)
  })
  test('of 20 N·m/rad and 1e-5 kg·m²', () => {
    expect(Math.abs(naturalFrequency(20, 1e-5) / 225.0791 - 1)).toBeLessThan(1e-6)
  })
})

// Derived from the undamped Coulomb oscillator and computed apart from this program.
const cycles = [
  { drive: 0.01, stick: 10e-3, slip: 8.905501e-3, frequency: 52.89466 },
  { drive: 0.001, stick: 100e-3, slip: 7.224682e-3, frequency: 9.326211 },
]

describe.each(cycles)('cycle at $drive m/s', ({ drive, stick, slip, frequency }) => {
  test('closed forms', () => {
    expect(Math.abs(stickTime(undamped, drive) / stick - 1)).toBeLessThan(1e-6)
    expect(Math.abs(slipTime(undamped, drive) / slip - 1)).toBeLessThan(1e-6)
    expect(Math.abs(stickSlipFrequency(undamped, drive) / frequency - 1)).toBeLessThan(1e-6)
  })
  test('simulation agrees', () => {
    const seen = simulateStickSlip(undamped, drive, 1e-6)
    expect(Math.abs((seen?.stick ?? 0) / stick - 1)).toBeLessThan(1e-5)
    expect(Math.abs((seen?.slip ?? 0) / slip - 1)).toBeLessThan(1e-5)
  })
  test('the spring wave runs from one drop under kinetic friction to one above, and means zero', () => {
    expect(springWave(undamped, drive, 0)).toBeCloseTo(-1, 12)
    expect(springWave(undamped, drive, stick / (stick + slip))).toBeCloseTo(1, 6)
    expect(springWave(undamped, drive, 1)).toBeCloseTo(-1, 9)
    const n = 100_000
    let sum = 0
    for (let i = 0; i < n; i++) sum += springWave(undamped, drive, (i + 0.5) / n)
    expect(Math.abs(sum / n)).toBeLessThan(1e-6)
  })
})

describe('lowest speed without sticking, ζ = 0.05', () => {
  // Figures computed apart from this program; the weak form is the usual published one (from memory).
  test('estimate and weak-damping form', () => {
    expect(Math.abs(criticalSpeed(damped) / 0.023912 - 1)).toBeLessThan(1e-4)
    expect(Math.abs(criticalSpeedWeakDamping(damped) / 0.028209 - 1)).toBeLessThan(1e-4)
  })
  test('simulation', () => {
    const seen = simulatedCriticalSpeed(damped)
    // Exact: the root of the closed solution of the same equation, by Brent's method in another program.
    expect(Math.abs(seen / 0.02455409753 - 1)).toBeLessThan(1e-5)
    // Another simulation, printed with the 5 % that the estimate is good for.
    expect(Math.abs(seen / 0.02458 - 1)).toBeLessThan(0.05)
    expect(Math.abs(criticalSpeed(damped) / seen - 1)).toBeLessThan(0.05)
    expect(Math.abs(criticalSpeedWeakDamping(damped) / seen - 1)).toBeLessThan(0.2)
  })
  test('without damping it sticks at any speed', () => {
    expect(criticalSpeed(undamped)).toBe(Number.POSITIVE_INFINITY)
    expect(simulateStickSlip(undamped, 0.5, 1e-5)).toBeDefined()
  })
})

test('nonsense is refused with its unit', () => {
  expect(() => stickTime({ ...undamped, stiffness: Number.NaN }, 0.01)).toThrow('N/m')
  expect(() => slipTime({ ...undamped, mass: 0 }, 0.01)).toThrow('kg')
  expect(() => slipTime(undamped, Number.NaN)).toThrow('m/s')
})
