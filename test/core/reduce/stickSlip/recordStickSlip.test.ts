import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { reduceRecord } from '../../../../src/core/reduce/index.ts'
import { recordStickSlip } from '../../../../src/core/reduce/questions/index.ts'
import { familyLaw, sampleStickSlip, simulateRecord, type VirtualRun } from '../../../../src/core/rig/index.ts'
import type { Setup } from '../../../../src/core/terms/index.ts'
import { realRecord } from '../../../figure/realRecords.ts'

const first = sampleStickSlip(20261125, 0)

/** The drawn run of one step with other parts, and the stick–slip that is found in it. */
function lookAt(change: (run: VirtualRun) => Partial<VirtualRun>, setup: Partial<Setup> = {}, seed = 7) {
  const run: VirtualRun = { ...first.run, ...change(first.run) }
  const whole: Setup = { ...first.setup, ...setup, run: { axialForce: run.sheet.axialForce } }
  const { channels } = simulateRecord(run, seed)
  const reduction = reduceRecord(channels, whole)
  if (!reduction.ok) throw new Error(reduction.problems.map(({ what }) => what).join(' '))
  return recordStickSlip({ channels, setup: whole, reduction: reduction.value })
}

const oneSpeed = (run: VirtualRun, [speed, samplingRate, seconds]: readonly number[]): VirtualRun['sheet'] => ({
  ...run.sheet,
  speeds: { kind: 'list', speeds: [speed] },
  samplingRate,
  dwell: { kind: 'time', seconds },
})

describe('the record of the chattering lacquer against its truth', async () => {
  const record = await realRecord('stick-slip')
  const truth = JSON.parse(readFileSync('test/data/records/stick-slip.truth.json', 'utf8'))
  const found = recordStickSlip(record)
  const { below, hz, amp } = truth.spec.stick_slip

  test.for(found.steps)('step $step', (step) => {
    const sticks = step.slidingSpeed < below
    expect(step.verdict).toBe(sticks ? 'stickSlip' : 'quiet')
    if (!sticks) return
    const mu = truth.steps[step.step - 1].mu
    expect(step.numbers?.frequency.low).toBeLessThanOrEqual(hz)
    expect(step.numbers?.frequency.high).toBeGreaterThanOrEqual(hz)
    expect(step.numbers?.amplitude.low).toBeLessThanOrEqual(2 * amp * mu)
    expect(step.numbers?.amplitude.high).toBeGreaterThanOrEqual(2 * amp * mu)
  })

  test('brackets the speed at which it ends', () => {
    expect(found.criticalSpeed?.sticks).toBeLessThan(below)
    expect(found.criticalSpeed?.slides).toBeGreaterThan(below)
    expect(found.criticalSpeed?.mixed).toBe(false)
  })

  test('says that its frequency does not follow the speed', () => {
    expect(found.frequencyExponent?.high).toBeLessThan(0.1)
    expect(found.sentences.join(' ')).toContain('something else sets the pace')
  })
})

describe('a mass on a spring over a dry contact, k 1e4 N/m, m 0.05 kg, drop 0.5 N (closed form, no damping)', () => {
  const lever = 0.015
  const [stiffness, inertia] = [1e4 * lever ** 2, 0.05 * lever ** 2]
  const rig = { inertia, torsionalStiffness: stiffness }
  const drop = 0.5
  const friction = 0.2
  const axialForce = 10

  // 2ΔF/(kv) + (2/ω)(π − atan(ΔF/(v√(km)))): 10.0000 and 8.905501 ms at 0.01 m/s, 100 and 7.224682 ms at 0.001 m/s.
  test.for([
    { speed: 0.01, frequency: 52.89466, within: 0.03 },
    { speed: 0.001, frequency: 9.326211, within: 0.02 },
  ])('comes again at $speed m/s', ({ speed, frequency, within }) => {
    const found = lookAt(
      (run) => ({
        rig: { ...rig, riseTime: 0, noise: {} },
        friction: familyLaw('plateau', { h: friction }),
        sheet: { ...oneSpeed(run, [speed, 60 * frequency, 40 / frequency]), axialForce },
        disturbances: { stickSlip: { kind: 'spring', staticExcess: drop / (friction * axialForce), dampingRatio: 0 } },
      }),
      { rig: { ...first.setup.rig, ...rig } },
    )
    const [step] = found.steps
    expect(step.numbers).not.toBeNull()
    expect(Math.abs((step.numbers?.frequency.value ?? 0) / frequency - 1)).toBeLessThan(within)
    // Peak to trough of the spring: 2√(ΔF² + v²km) over the axial force.
    const swing = (2 * Math.hypot(drop, speed * Math.sqrt(1e4 * 0.05))) / axialForce
    expect(Math.abs((step.numbers?.amplitude.value ?? 0) / swing - 1)).toBeLessThan(0.02)
    // √(k/m)/2π = 71.17625 Hz.
    expect(found.naturalFrequency).toBeCloseTo(71.17625, 4)
    if (speed < 0.005) {
      expect(step.verdict).toBe('stickSlip')
      expect(Math.abs((step.stiffness?.value ?? 0) / stiffness - 1)).toBeLessThan(0.02)
    }
  })
})

describe('what is no stick–slip', () => {
  const torque = (run: VirtualRun): number => run.friction.at(1e-3) * 0.015 * run.sheet.axialForce

  test.for([1, 2, 3])('hunting of the controller, in the speed and without contact (seed %i)', (seed) => {
    const found = lookAt(
      (run) => ({
        rig: { riseTime: 0, noise: first.run.rig.noise },
        sheet: { ...oneSpeed(run, [1e-3, 40, 20]), blankBefore: true },
        disturbances: { hunting: { frequency: 2.3, speedShare: 0.02, torque: 0.1 * torque(run) } },
      }),
      {},
      seed,
    )
    expect(found.steps.map(({ verdict }) => verdict)).toEqual(['hunting'])
    expect(found.remarks.map(({ kind }) => kind)).toEqual(['hunting'])
    expect(found.criticalSpeed).toBeNull()
    expect(found.steps[0].speedSwing).toBeCloseTo(0.02, 3)
  })

  test.for([5, 7, 12])('a wave of %i per turn', (order) => {
    const found = lookAt((run) => ({
      rig: { riseTime: 0, noise: first.run.rig.noise },
      sheet: oneSpeed(run, [0.05, 60, 12]),
      disturbances: { frictionRipple: [{ order, amplitude: 0.1, phase: 1 }] },
    }))
    expect(found.steps.map(({ verdict, turnOrder }) => [verdict, turnOrder])).toEqual([['turnLocked', order]])
  })

  test.for([0, 0.5, 0.9])('noise of 5 % with memory %f', (correlation) => {
    const verdicts = [1, 2, 3, 4, 5, 6].flatMap((seed) =>
      lookAt(
        (run) => ({
          rig: { riseTime: 0, noise: { torque: { correlated: 0.05 * torque(run), correlation } } },
          disturbances: {},
        }),
        {},
        seed,
      ).steps.map(({ verdict }) => verdict),
    )
    expect(verdicts).not.toContain('stickSlip')
    expect(verdicts).not.toContain('hunting')
  })

  test('an even slide is quiet, and the words say how quiet', () => {
    const found = lookAt(() => ({ disturbances: {}, rig: { riseTime: 0, noise: {} } }))
    expect(found.steps.map(({ verdict }) => verdict)).toEqual(['quiet'])
    expect(found.sentences[0]).toMatch(/^No stick–slip: the largest swing is under 0\.01 % of friction/)
  })

  test('cycles that the sampling cannot follow are not judged', () => {
    const found = lookAt((run) => ({
      sheet: oneSpeed(run, [1e-3, 6, 60]),
      rig: { riseTime: 0, noise: {} },
      disturbances: { stickSlip: { kind: 'sawTooth', below: 1, frequency: 2.1, share: 0.2, scatter: 0.05 } },
    }))
    expect(found.steps.map(({ verdict }) => verdict)).toEqual(['cannotTell'])
  })
})
