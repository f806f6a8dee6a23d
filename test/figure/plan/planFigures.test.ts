import { describe, expect, test } from 'vitest'
import {
  frictionWindowFigure,
  loadWindowFigure,
  loadWindowPlaces,
  type PaletteName,
  predictionFigure,
  replicatesFigure,
  runInTimeFigure,
} from '../../../src/figure/index.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'
import { frictionWindow, loadWindow, prediction, replicates, runInTime } from './inventedPlan.ts'

type Options = { readonly palette?: PaletteName; readonly width?: number }

const pictures: readonly (readonly [string, (options: Options) => string])[] = [
  ['load-window', (options) => loadWindowFigure(loadWindow, { ...options, id: 'golden' })],
  ['friction-window', (options) => frictionWindowFigure(frictionWindow, { ...options, id: 'golden' })],
  ['prediction', (options) => predictionFigure(prediction, { ...options, id: 'golden' })],
  ['run-in-time', (options) => runInTimeFigure(runInTime, { ...options, id: 'golden' })],
  ['replicates', (options) => replicatesFigure(replicates, { ...options, id: 'golden' })],
]

describe.each(pictures)('%s', (name, draw) => {
  test.for<PaletteName>(['light', 'dark'])('lies in golden/ as it is drawn: %s', async (palette) => {
    await expect(goldenText(draw({ palette }))).toMatchFileSnapshot(`../golden/plan-${name}-${palette}.svg`)
  })

  test.for([480, 700, 1400, 2000])('nothing is cut off or over each other at %d px', (width) => {
    expect(faultsOf(draw({ width }))).toEqual([])
  })

  test('refuses a width that no figure is made for', () => {
    expect(() => draw({ width: 100 })).toThrow(RangeError)
  })
})

const wordsIn = (svg: string): readonly string[] => [...svg.matchAll(/<text [^>]*>([^<]*)</g)].map((hit) => hit[1])

describe('the window over speed and load', () => {
  test('names the limits that occur, and no other', () => {
    const words = wordsIn(loadWindowFigure(loadWindow))
    expect(words).toContain('sinks too deep into the coating or layer')
    expect(words).toContain('sweep from here takes too long')
    expect(words).not.toContain('a limit that does not occur')
  })

  test('places lead there and back again, and lie where the axes say', () => {
    const { plot, x, y, speedAt, loadAt } = loadWindowPlaces(loadWindow, { width: 900 })
    // Half of the logarithm of each axis: √(1e-4·1) m/s and √(0.1·100) N.
    expect(x(1e-2)).toBeCloseTo((plot.left + plot.right) / 2, 6)
    expect(y(Math.sqrt(10))).toBeCloseTo((plot.top + plot.bottom) / 2, 6)
    for (const speed of [2e-4, 0.03, 0.9]) expect(speedAt(x(speed))).toBeCloseTo(speed, 9)
    for (const load of [0.2, 7, 80]) expect(loadAt(y(load))).toBeCloseTo(load, 9)
  })

  test('the border of a limit lies where its cells end', () => {
    const svg = loadWindowFigure(loadWindow, { width: 900 })
    const { plot } = loadWindowPlaces(loadWindow, { width: 900 })
    // Loads rise tenfold in ten rows: row 20 is the last at 10 N or under.
    const edge = plot.bottom - (21 * (plot.bottom - plot.top)) / 31
    expect(svg).toContain(`${Number(edge.toFixed(2))}H${plot.right}`)
  })

  test('says that nothing is planned where nothing can be', () => {
    const svg = loadWindowFigure({ ...loadWindow, planned: null })
    expect(svg).toContain('Nothing is planned.')
    expect(faultsOf(svg)).toEqual([])
  })
})

describe('the window over speed and friction', () => {
  test('borders in sight are named, those out of sight are not', () => {
    const words = wordsIn(frictionWindowFigure(frictionWindow))
    for (const text of ['torque too small', 'under one turn', 'torque over the rig’s largest'])
      expect(words).toContain(text)
    expect(words).not.toContain('out of sight')
  })

  test('without steps it says so', () => {
    expect(frictionWindowFigure({ ...frictionWindow, steps: [] })).toContain('No step can be measured.')
  })
})

describe('the predicted curve', () => {
  test('names the regimes between their beginnings, and none without a film', () => {
    expect(wordsIn(predictionFigure(prediction))).toEqual(expect.arrayContaining(['boundary', 'mixed', 'full film']))
    const dry = predictionFigure({ ...prediction, mixedFrom: null, fullFilmFrom: null })
    expect(wordsIn(dry)).not.toContain('boundary')
    expect(dry).toContain('No film is predicted.')
  })
})

describe('the run in time', () => {
  test('a run without steps still has its parts', () => {
    const svg = runInTimeFigure({ ...runInTime, steps: [] })
    expect(wordsIn(svg)).toContain('Surfaces')
    expect(faultsOf(svg)).toEqual([])
  })
})

describe('what more replicates buy', () => {
  test('where none is enough no number stands out', () => {
    const svg = replicatesFigure({ ...replicates, enough: null })
    expect(svg).toContain('none of these numbers sees 10 %')
    expect(svg).not.toContain('fill-opacity="0.25"')
  })
})
