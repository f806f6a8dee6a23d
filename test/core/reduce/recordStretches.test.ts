import { expect, test } from 'vitest'
import { recordStretches, reduceRecord } from '../../../src/core/reduce/index.ts'
import { channelsInMemory, type Setup } from '../../../src/core/terms/index.ts'
import { threeBalls } from './virtualRuns.ts'

/** A blank of 10 s, a step of 40 s that settles after some seconds, one of 40 s that loses contact from 70 to 75 s. */
function record(forceOf: (time: number) => number) {
  const rows = 900
  const every = (value: (time: number) => number): Float64Array =>
    Float64Array.from({ length: rows }, (_, i) => value(i / 10))
  const channels = channelsInMemory({
    time: every((t) => t),
    step: every((t) => (t < 10 ? 1 : t < 50 ? 2 : 3)),
    angularVelocity: every((t) => (t < 50 ? 1 : 2)),
    torque: every((t) =>
      t < 10 ? 0 : 0.01 + (t >= 10 && t < 50 ? 0.01 * Math.exp((10 - t) / 1.5) : 0) + 1e-6 * Math.sin(37 * t),
    ),
    axialForce: every((t) => (t < 10 ? 0.1 : forceOf(t) + 0.1)),
    gap: every((t) => (t < 10 ? 2e-3 : 1e-5)),
  })
  const setup: Setup = {
    rig: { name: 'exact', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
    fixture: threeBalls,
    pair: { upper: { name: 'upper' }, lower: { name: 'lower' } },
    run: { axialForce: 5 },
    options: {},
  }
  const outcome = reduceRecord(channels, setup)
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.what).join(' '))
  return { channels, setup, reduction: outcome.value }
}

test('blank, warm-up, kept rows and lost contact of a known record, without a hole between them', () => {
  const { channels, setup, reduction } = record((t) => (t >= 70 && t < 75 ? 0.5 : 5))
  const stretches = recordStretches(channels, setup, reduction)
  expect(stretches.map(({ kind, step }) => `${kind} ${step}`)).toEqual([
    'blank 1',
    'warmUp 2',
    'accepted 2',
    'notFitted 3',
    'outOfContact 3',
    'notFitted 3',
  ])
  const [blank, warmUp, , before, lost, after] = stretches
  expect([blank.from, blank.to]).toEqual([0, 10])
  const kept = reduction.points[0].rows.kept / 10
  expect(kept).toBeGreaterThan(12)
  expect([warmUp.from, warmUp.to]).toEqual([10, kept])
  expect([before.from, lost.from, lost.to]).toEqual([50, 70, 75])
  expect(after.to).toBeCloseTo(89.9, 9)
  for (const [index, stretch] of stretches.slice(1).entries()) expect(stretch.from).toBe(stretches[index].to)
})

test('one or two rows under the limit are noise, not a lost contact', () => {
  const { channels, setup, reduction } = record((t) => (t >= 70 && t < 70.15 ? 0.5 : 5))
  expect(recordStretches(channels, setup, reduction).map(({ kind }) => kind)).not.toContain('outOfContact')
})
