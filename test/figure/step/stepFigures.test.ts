import { describe, expect, test } from 'vitest'
import {
  autocorrelationFigure,
  budgetFigure,
  type PaletteName,
  stepTraceFigure,
  turnPlotFigure,
} from '../../../src/figure/index.ts'
import { turnMeans } from '../../../src/figure/step/turnPlotFigure.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'
import { inventedPoints, stribeck } from '../inventedCurves.ts'
import { angle, friction, memory, time, trace, turns } from './inventedStep.ts'

const figures = [
  { name: 'step-trace', draw: (options: Options) => stepTraceFigure(trace, options) },
  { name: 'turn-plot', draw: (options: Options) => turnPlotFigure(turns, options) },
  { name: 'autocorrelation', draw: (options: Options) => autocorrelationFigure(memory, options) },
] as const

type Options = { palette?: PaletteName; id?: string; width?: number; plotHeight?: number }

const described = (svg: string): string => svg.match(/<desc[^>]*>([^<]*)</)?.[1] ?? ''
const wordsIn = (svg: string): readonly string[] => [...svg.matchAll(/<text [^>]*>([^<]*)</g)].map((hit) => hit[1])

describe.each(figures)('$name', ({ name, draw }) => {
  test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
    await expect(goldenText(draw({ palette, id: 'golden' }))).toMatchFileSnapshot(`../golden/${name}-${palette}.svg`)
  })

  test('no words lie over each other or outside, at any width', () => {
    for (const width of [480, 640, 1200]) expect(faultsOf(draw({ width }))).toEqual([])
  })

  test('a height that no plot is made for is refused', () => {
    expect(() => draw({ plotHeight: 20 })).toThrow('plotHeight must be 80 to 800 px, got 20 px')
    expect(() => draw({ plotHeight: Number.NaN })).toThrow(RangeError)
  })
})

describe('trace of a step', () => {
  test('says how much was cut and what came out', () => {
    expect(described(stepTraceFigure(trace))).toBe(
      '20 s of 24 s were kept, 4 s cut. Friction 0.2004, own 95 % interval from 0.1992 to 0.2016.',
    )
  })

  test('the cut lies at its time', () => {
    const svg = stepTraceFigure(trace)
    const [, left, width] = svg.match(/<rect x="([\d.]+)" width="([\d.]+)" y="[\d.]+" height="180" fill="#/) ?? []
    const whole = 640 - 74 - 24
    expect(Number(left)).toBe(74)
    expect(Number(width) / whole).toBeCloseTo(4 / 24, 4)
  })

  test('without a cut no cut stands in the key', () => {
    const uncut = { ...trace, keptFrom: time[0], keptTo: time[time.length - 1] }
    expect(wordsIn(stepTraceFigure(uncut))).not.toContain('cut')
    expect(wordsIn(stepTraceFigure(trace))).toContain('cut')
  })

  test('holes break the line', () => {
    const holed = friction.map((value, row) => (row === 200 ? Number.NaN : value))
    const strokes = (svg: string) => (svg.match(/ d="([^"]*)"[^>]*stroke-linejoin/)?.[1] ?? '').split('M').length - 1
    expect(strokes(stepTraceFigure(trace))).toBe(1)
    expect(strokes(stepTraceFigure({ ...trace, friction: holed }))).toBe(2)
  })

  test('without a row or a value it says so', () => {
    const empty = { ...trace, time: [], friction: [], value: null }
    expect(faultsOf(stepTraceFigure(empty))).toEqual([])
    expect(wordsIn(stepTraceFigure(empty))).toContain('no row of this step gives friction')
    expect(described(stepTraceFigure({ ...trace, value: null }))).toContain('They gave no friction value.')
  })
})

describe('turn plot', () => {
  test('means of five degrees follow the wave that was put in', () => {
    const bare = angle.map((at) => 0.2 * (1 + 0.04 * Math.cos(at - 1)))
    const means = turnMeans(angle, bare)
    for (const [bin, mean] of means.entries()) {
      const middle = ((bin + 0.5) * 5 * Math.PI) / 180
      expect(Math.abs(mean - 0.2 * (1 + 0.04 * Math.cos(middle - 1)))).toBeLessThan(0.2 * 0.04 * 0.03)
    }
  })

  test('a place without rows stays empty', () => {
    expect(turnMeans([0.01, 6.2], [0.3, 0.5]).filter((mean) => !Number.isNaN(mean))).toEqual(Float64Array.of(0.3, 0.5))
  })

  test('tells the waves with their uncertainty', () => {
    expect(described(turnPlotFigure(turns))).toBe(
      'The kept rows span 1.67 turns. Friction swings once a turn 4 ± 0.2 %, 3 times a turn 1 ± 0.2 % of its value (amplitude and standard uncertainty).',
    )
    expect(described(turnPlotFigure({ ...turns, fit: { friction: 0.2, harmonics: [] } }))).toContain(
      'No wave of the turn could be told.',
    )
  })

  test('without a row it says so', () => {
    const empty = { ...turns, angle: [], friction: [], fit: null }
    expect(faultsOf(turnPlotFigure(empty))).toEqual([])
    expect(wordsIn(turnPlotFigure(empty))).toContain('no row of this step gives friction')
  })
})

describe('autocorrelation', () => {
  test('weighs the readings', () => {
    expect(described(autocorrelationFigure(memory))).toBe(
      '2.4 readings (0.12 s) weigh as one: the 400 kept are worth about 170 independent ones.',
    )
    expect(described(autocorrelationFigure({ ...memory, time: null }))).toContain('could not be told')
  })

  test('the band of white noise lies at 1.96/√n, by hand 0.098 for 400 readings', () => {
    const svg = autocorrelationFigure({ ...memory, correlations: [1, 0.098, -0.5] })
    const edge = Number(svg.match(/<path d="M74 ([\d.]+)H616M74 [\d.]+H616" stroke="#0072b2"/)?.[1])
    const strokes = svg.match(/ d="((?:M[\d.]+ [\d.]+V[\d.]+){3})"/)?.[1] ?? ''
    const bar = Number([...strokes.matchAll(/V([\d.]+)/g)][1][1])
    expect(Math.abs(edge - bar)).toBeLessThan(0.011)
  })

  test('one lag alone can be drawn', () => {
    expect(faultsOf(autocorrelationFigure({ ...memory, correlations: [1], readings: 1, time: null }))).toEqual([])
  })
})

test('the budget of a single point has no ranges', () => {
  const [point] = inventedPoints({ from: 0.01, to: 0.1, count: 1, friction: stribeck })
  const svg = budgetFigure({ title: 'Step 1 (invented)', points: [{ ...point, shared: { torqueScale: 0.001 } }] })
  expect(faultsOf(svg)).toEqual([])
  expect(svg).not.toContain(' to ')
})
