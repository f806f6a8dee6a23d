import { describe, expect, test } from 'vitest'
import {
  controlChartFigure,
  limitFigure,
  outcomeFigure,
  type PaletteName,
  roundFigure,
} from '../../../src/figure/index.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'
import { chart, limit, outcome, round } from './inventedDecisions.ts'

type Drawn = (options: { palette?: PaletteName; width?: number; id?: string }) => string

const figures: readonly { name: string; draw: Drawn }[] = [
  { name: 'control-chart', draw: (options) => controlChartFigure(chart, options) },
  { name: 'round', draw: (options) => roundFigure(round, options) },
  { name: 'limit', draw: (options) => limitFigure(limit, options) },
  { name: 'outcome', draw: (options) => outcomeFigure(outcome, options) },
]

const palettes: readonly PaletteName[] = ['light', 'dark', 'print']

describe.for(figures)('$name', ({ name, draw }) => {
  test.for(palettes)('lies in golden/ as it is drawn: %s', async (palette) => {
    await expect(goldenText(draw({ palette, id: 'golden' }))).toMatchFileSnapshot(`../golden/${name}-${palette}.svg`)
  })

  test.for([640, 880, 1200])('no words lie over each other or outside at %d px', (width) => {
    expect(faultsOf(draw({ width }))).toEqual([])
  })

  test('the same data give the same bytes', () => {
    expect(draw({})).toBe(draw({}))
  })
})

const wordsIn = (svg: string): string => [...svg.matchAll(/<text [^>]*>([^<]*)</g)].map((hit) => hit[1]).join(' | ')
const heard = (svg: string): string => svg.match(/<desc[^>]*>([^<]*)</)?.[1] ?? ''

describe('control chart', () => {
  test('alarms stand with their letters in the key, answered ones say so', () => {
    const words = wordsIn(controlChartFigure(chart))
    expect(words).toContain('18 Oct: four of five values beyond one standard deviation on one side (answered)')
    expect(words).toContain('20 Oct: one value beyond three standard deviations')
    expect(heard(controlChartFigure(chart))).toContain('3 alarms, 2 of them open.')
  })

  test('without alarms it says so, without weighted means their panel is gone', () => {
    const quiet = controlChartFigure({ ...chart, alarms: [], ewma: null })
    expect(wordsIn(quiet)).toContain('no alarms')
    expect(wordsIn(quiet)).not.toContain('weighted mean')
    expect(faultsOf(quiet)).toEqual([])
  })
})

test('bars beyond a critical value are marked by a hat, so that print tells them', () => {
  const marked = (data: typeof round): number =>
    [...roundFigure(data, { palette: 'print' }).matchAll(/l4 -?6l4 -?6z/g)].length
  // Laboratory 8 once over 2.15, laboratory 3 at two speeds over 2.06.
  expect(marked(round)).toBe(3)
  expect(marked({ ...round, hCritical: null, kCritical: null })).toBe(0)
  expect(heard(roundFigure(round))).toContain('forest: h beyond its critical value at 1 speeds')
})

test('a limit with both ends, one speed, and no guard band', () => {
  const both = limitFigure({
    ...limit,
    lower: 0.07,
    speeds: limit.speeds.slice(3, 4).map((speed) => ({ ...speed, passGuard: 0 })),
  })
  expect(faultsOf(both)).toEqual([])
  expect(wordsIn(both)).toContain('lower limit 0.07')
  expect(heard(both)).toContain('30 mm/s: 0.084, pass.')
})

test('areas of the histogram are shares of all trials', () => {
  const svg = outcomeFigure({ ...outcome, trials: 2 * outcome.trials })
  expect(svg).not.toBe(outcomeFigure(outcome))
  expect(heard(svg)).toContain('scar diameter makes 86 % of the variance.')
})
