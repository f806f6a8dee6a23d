import { expect, test } from 'vitest'
import { kindsOf, reduced } from './virtualRuns.ts'

// Steps of 100 s at 1 kHz: 100,000 rows each, of which 34 at a time are averaged.
const long = {
  speeds: { kind: 'list', speeds: [0.003, 0.01] },
  dwell: { kind: 'time', seconds: 100 },
  samplingRate: 1000,
} as const

test('stick and slip that is too fast for the averages of a long step is still found', () => {
  const disturbances = { stickSlip: { kind: 'sawTooth', below: 0.005, frequency: 83, share: 0.3 } } as const
  const { reduction } = reduced({ sheet: long, disturbances })
  expect(kindsOf(reduction).map((kinds) => kinds.includes('stickSlip'))).toEqual([true, false])
  expect(reduction.points[0].remarks.find(({ kind }) => kind === 'stickSlip')?.sentence).toContain('83 Hz')
})

test('a long step holds the truth', () => {
  const { reduction, friction } = reduced({ sheet: long })
  reduction.points.forEach((point, i) => {
    const truth = friction[i] ?? Number.NaN
    expect(truth).toBeGreaterThan(point.low ?? Number.NaN)
    expect(truth).toBeLessThan(point.high ?? Number.NaN)
    expect((point.ownUncertainty ?? Number.NaN) / truth).toBeLessThan(1e-4)
    // An AR(1) with coefficient 0.6, in samples as they came: (1 + 0.6)/(1 − 0.6).
    expect(Math.abs((point.autocorrelationTime ?? Number.NaN) / 4 - 1)).toBeLessThan(0.15)
  })
})
