import { describe, expect, test } from 'vitest'
import { motionAt } from '../../../src/core/rig/drive.ts'
import { type SheetStep, sheetSteps } from '../../../src/core/rig/sheetSteps.ts'
import { speedSpans } from '../../../src/core/rig/speedPlan.ts'
import { plainRun } from './plainRun.ts'

const step = (law: SheetStep['law'], begins: number, ends: number): SheetStep => ({
  number: 1,
  kind: 'slide',
  begins,
  ends,
  law,
  duration: 20,
  starts: 0,
  from: 0,
  to: 200,
})

describe('angle is the integral of the speed, acceleration its slope', () => {
  test.for([
    ['constant', 3, 3],
    ['linear', 0.5, 4],
    ['logarithmic', 0.01, 10],
    ['logarithmic', 10, 0.01],
  ] as const)('%s from %d to %d rad/s', ([law, begins, ends]) => {
    const at = (time: number) => motionAt(step(law, begins, ends), time, { speed: 1.5, riseTime: 0.25 })
    // Simpson's rule on 20,000 pieces.
    const pieces = 20_000
    const h = 7 / pieces
    let sum = 0
    for (let i = 0; i < pieces; i++) sum += (at(i * h).speed + 4 * at((i + 0.5) * h).speed + at((i + 1) * h).speed) / 6
    expect(Math.abs(at(7).turned / (sum * h) - 1)).toBeLessThan(1e-9)
    const slope = (at(0.3 + 1e-6).speed - at(0.3 - 1e-6).speed) / 2e-6
    expect(Math.abs(at(0.3).acceleration - slope)).toBeLessThan(1e-6 * Math.max(1, Math.abs(slope)))
  })
})

test('the speed nears its target with the rise time and enters where it was', () => {
  const entry = { speed: 1, riseTime: 0.25 }
  expect(motionAt(step('constant', 3, 3), 0, entry).speed).toBe(1)
  expect(motionAt(step('constant', 3, 3), 0.25, entry).speed).toBeCloseTo(3 - 2 / Math.E, 12)
})

describe('speed plans', () => {
  test('a range is even in log speed and hits both ends', () => {
    const speeds = speedSpans({ kind: 'range', slowest: 5e-4, fastest: 0.2, perDecade: 4, direction: 'up' })
    expect(speeds).toHaveLength(11)
    expect(speeds[0][0]).toBe(5e-4)
    expect(speeds[10][0]).toBe(0.2)
    for (let i = 2; i < 11; i++) {
      expect(speeds[i][0] / speeds[i - 1][0]).toBeCloseTo(speeds[1][0] / speeds[0][0], 12)
    }
  })
  test('down is up the other way round; both ways visit the fastest twice', () => {
    const plan = { kind: 'range', slowest: 1e-3, fastest: 0.1, perDecade: 1 } as const
    const up = speedSpans({ ...plan, direction: 'up' })
    expect(speedSpans({ ...plan, direction: 'down' })).toEqual([...up].reverse())
    expect(speedSpans({ ...plan, direction: 'upAndDown' })).toEqual([...up, ...[...up].reverse()])
  })
  test('a ramp is one step each way', () => {
    const plan = { kind: 'ramp', slowest: 1e-3, fastest: 0.1, duration: 60, law: 'logarithmic' } as const
    expect(speedSpans({ ...plan, direction: 'upAndDown' })).toEqual([
      [1e-3, 0.1],
      [0.1, 1e-3],
    ])
  })
  test('speeds that fall or are no numbers are refused', () => {
    const plan = { kind: 'range', perDecade: 4, direction: 'up' } as const
    expect(() => speedSpans({ ...plan, slowest: 1, fastest: 0.1 })).toThrow('m/s')
    expect(() => speedSpans({ ...plan, slowest: Number.NaN, fastest: 0.1 })).toThrow('m/s')
    expect(() => speedSpans({ ...plan, slowest: 0.01, fastest: 0.1, perDecade: 0 })).toThrow('perDecade')
  })
})

describe('run sheet', () => {
  test('dwell in turns, between its bounds: 1 turn at 15 mm is 94.25 mm', () => {
    const { sheet } = plainRun({
      sheet: {
        speeds: { kind: 'list', speeds: [1e-4, 9.4247779607e-3, 1] },
        dwell: { kind: 'turns', turns: 2, least: 5, most: 60 },
      },
    })
    expect(sheetSteps(sheet, 0.015).map(({ duration }) => duration)).toEqual([60, 20, 5])
  })
  test('blanks repeat the speeds before and after; rows and times join', () => {
    const { sheet } = plainRun({
      sheet: { speeds: { kind: 'list', speeds: [0.01, 0.1] }, blankBefore: true, blankAfter: true },
    })
    const steps = sheetSteps(sheet, 0.015)
    expect(steps.map(({ kind }) => kind)).toEqual(['blank', 'blank', 'slide', 'slide', 'blank', 'blank'])
    expect(steps.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6])
    for (let i = 1; i < 6; i++) expect(steps[i].from).toBe(steps[i - 1].to)
    expect(steps[3].starts).toBe(30)
    expect(steps[1].begins).toBeCloseTo(0.1 / 0.015, 12)
  })
})
