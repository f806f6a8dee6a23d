import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { recordStretches, reduceRecord, stepMemory, stepSeries } from '../../../src/core/reduce/index.ts'
import { channelsInMemory, type MovedWindow, type Setup } from '../../../src/core/terms/index.ts'
import { threeBalls } from './virtualRuns.ts'

const lever = 0.015
const setup: Setup = {
  rig: { name: 'exact', torque: { scaleAccuracy: 0 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
  fixture: threeBalls,
  pair: { upper: { name: 'upper' }, lower: { name: 'lower' } },
  run: { axialForce: 5 },
  options: {},
}

/**
 * Two steps of 60 s, ten rows a second. In the second friction is 0.1 to 80 s, 0.2 to 100 s, and 0.3 after; so the mean over a
 * window can be said by hand.
 */
const rows = 1200
const every = (value: (time: number) => number): Float64Array =>
  Float64Array.from({ length: rows }, (_, i) => value(i / 10))
const friction = (t: number): number => (t < 60 ? 0.1 : t < 80 ? 0.1 : t < 100 ? 0.2 : 0.3)
const channels = channelsInMemory({
  time: every((t) => t),
  step: every((t) => (t < 60 ? 1 : 2)),
  angularVelocity: every((t) => (t < 60 ? 1 : 2)),
  torque: every((t) => 5 * lever * friction(t) + 1e-6 * Math.sin(37 * t)),
  axialForce: every(() => 5),
})

function reduced(...windows: MovedWindow[]) {
  const outcome = reduceRecord(channels, setup, windows)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

describe('a window that a person moved', () => {
  test.for([
    { window: { step: 2, from: 62, to: 79.9 }, want: 0.1 },
    { window: { step: 2, from: 80, to: 99.9 }, want: 0.2 },
    { window: { step: 2, from: 100, to: 119.9 }, want: 0.3 },
    // Half of the rows lie at 0.2 and half at 0.3.
    { window: { step: 2, from: 90, to: 109.9 }, want: 0.25 },
  ])('$window.from to $window.to s: the mean of these rows, as they are', ({ window, want }) => {
    const point = reduced(window).points[1]
    expect(point.friction).toBeCloseTo(want, 4)
    expect(point.rows).toEqual({
      from: Math.round(window.from * 10),
      to: Math.round(window.to * 10) + 1,
      kept: Math.round(window.from * 10),
    })
  })

  test('the remark says from what to what; other points stay as they are', () => {
    const own = reduced()
    const moved = reduced({ step: 2, from: 100, to: 110 })
    const remark = moved.points[1].remarks.find(({ kind }) => kind === 'windowMoved')
    const kept = own.points[1].rows.kept / 10
    expect(remark).toMatchObject({ seen: 100, limit: kept, unit: 's', step: 2 })
    expect(remark?.sentence).toContain('100 s to 110 s counts')
    expect(moved.points[0].remarks.map(({ kind }) => kind)).not.toContain('windowMoved')
    expect(moved.points[0].friction).toBeCloseTo(own.points[0].friction ?? Number.NaN, 6)
    expect(own.points[1].remarks.map(({ kind }) => kind)).not.toContain('windowMoved')
  })

  test('a window that reaches over its step ends with it', () => {
    expect(reduced({ step: 2, from: 0, to: 1000 }).points[1].rows).toEqual({ from: 600, to: 1200, kept: 600 })
  })

  test.for([
    { windows: [{ step: 7, from: 0, to: 10 }], kinds: ['windowWithoutStep'] },
    { windows: [{ step: 2, from: 200, to: 300 }], kinds: ['windowTooShort'] },
    { windows: [{ step: 2, from: 70, to: 70.5 }], kinds: ['windowTooShort'] },
    { windows: [{ step: 2, from: Number.NaN, to: 80 }], kinds: ['windowTooShort'] },
    {
      windows: [
        { step: 2, from: 70, to: 80 },
        { step: 2, from: 90, to: 100 },
        { step: 9, from: 0, to: 1 },
      ],
      kinds: ['windowTwice', 'windowWithoutStep'],
    },
  ])('all that fits no step comes back as problems: $kinds', ({ windows, kinds }) => {
    const outcome = reduceRecord(channels, setup, windows)
    expect(outcome.ok ? [] : outcome.problems.map(({ kind }) => kind)).toEqual(kinds)
    for (const { mend } of outcome.ok ? [] : outcome.problems) expect(mend).toMatch(/\.$/)
  })

  test('whatever the window, the value lies between the least and the most of its rows', () => {
    fc.assert(
      fc.property(fc.integer({ min: 600, max: 1150 }), fc.integer({ min: 20, max: 500 }), (begin, length) => {
        const from = begin / 10
        const to = Math.min(119.9, from + length / 10)
        const value = reduced({ step: 2, from, to }).points[1].friction ?? Number.NaN
        return value > friction(from) - 1e-3 && value < friction(to) + 1e-3
      }),
      { numRuns: 30 },
    )
  })

  test('the rest of the step is no stretch of the strip any more', () => {
    const stretches = recordStretches(channels, setup, reduced({ step: 2, from: 80, to: 90 }))
    expect(stretches.filter(({ step }) => step === 2)).toMatchObject([{ from: 80, to: 90.1 }])
  })
})

describe('the rows of a step', () => {
  test('friction after all corrections, with the rows around a moved window', () => {
    const reduction = reduced({ step: 2, from: 80, to: 90 })
    const series = stepSeries({ channels, setup, reduction }, reduction.steps[1])
    expect(series.time[0]).toBe(60)
    expect(series.time.length).toBe(600)
    expect([series.begin, series.kept, series.end]).toEqual([200, 200, 301])
    expect(series.friction[10]).toBeCloseTo(0.1, 4)
    expect(series.friction[599]).toBeCloseTo(0.3, 4)
    expect(series.gap).toBeNull()
  })

  test('the autocorrelation begins at 1 and knows a sine', () => {
    const reduction = reduced({ step: 1, from: 10, to: 59.9 })
    const series = stepSeries({ channels, setup, reduction }, reduction.steps[0])
    const memory = stepMemory(series, reduction.points[0], 50)
    expect(memory?.correlations[0]).toBeCloseTo(1, 12)
    expect(memory?.readings).toBe(500)
    // The torque bears sin(37 t), a tenth of a second from row to row: at lag k its autocorrelation is cos(3.7 k).
    for (const lag of [1, 2, 5]) expect(memory?.correlations[lag]).toBeCloseTo(Math.cos(3.7 * lag), 1)
  })

  test('a step that does not slide has none', () => {
    const reduction = reduced()
    const blank = { ...reduction.steps[0], kind: 'blank' as const }
    expect(() => stepSeries({ channels, setup, reduction }, blank)).toThrow(RangeError)
  })
})
