import { describe, expect, test } from 'vitest'
import type { Comparison } from '../../../src/core/terms/index.ts'
import { differenceFigure, type PaletteName, rankingFigure, replicateCurvesFigure } from '../../../src/figure/index.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'
import { four, single } from './compared.ts'

type Drawn = (options: { palette?: PaletteName; width?: number; id?: string }) => string

const difference = (
  { speeds, scale, margin, differences }: Comparison,
  believable: Comparison['believable'],
): Drawn => {
  const [first] = differences
  const data = { title: `${first.second} against ${first.first}`, speeds, scale, margin, believable, difference: first }
  return (options) => differenceFigure({ ...data, note: 'Invented data.' }, options)
}

const ranking = (options: Parameters<Drawn>[0]): string => {
  if (four.ranking === null) throw new Error('four samples have a ranking')
  return rankingFigure({ title: 'Ranking', ranking: four.ranking, note: 'Invented data.' }, options)
}

const figures: readonly { name: string; draw: Drawn }[] = [
  { name: 'difference', draw: difference(four, { low: 0.001, high: 0.1 }) },
  { name: 'difference-single', draw: difference(single, single.believable) },
  { name: 'replicates', draw: (options) => replicateCurvesFigure({ title: 'Replicates', ...four }, options) },
  { name: 'replicates-single', draw: (options) => replicateCurvesFigure({ title: 'Replicates', ...single }, options) },
  { name: 'ranking', draw: ranking },
]

const palettes: readonly PaletteName[] = ['light', 'dark', 'print']

describe.for(figures)('$name', ({ name, draw }) => {
  test.for(palettes)('lies in golden/ as it is drawn: %s', async (palette) => {
    await expect(goldenText(draw({ palette, id: 'golden' }))).toMatchFileSnapshot(
      `../golden/compare-${name}-${palette}.svg`,
    )
  })

  test.for([640, 880, 1200])('no words lie over each other or outside at %d px', (width) => {
    expect(faultsOf(draw({ width }))).toEqual([])
  })

  test('the same data give the same bytes', () => expect(draw({})).toBe(draw({})))
})

const heard = (svg: string): string => svg.match(/<desc[^>]*>([^<]*)</)?.[1] ?? ''

test('whoever hears the figures hears the verdict, the replicates that were taken out, and the order', () => {
  expect(heard(figures[0].draw({}))).toMatch(/^varnish B slips more easily than varnish A from .* standard errors/)
  expect(heard(figures[2].draw({}))).toContain('varnish B: 4 replicates, 1 more taken out')
  expect(heard(figures[4].draw({}))).toContain('oil &amp; soap')
})

test('names too long for their place are cut and do not push others away', () => {
  const long = 'a lacquer whose name is far longer than anybody would write on a label of a drawer runner in a workshop'
  const [first] = four.differences
  const named = { ...first, first: long, second: long }
  const samples = four.samples.map((sample) => ({ ...sample, sample: long }))
  expect(faultsOf(differenceFigure({ title: long, ...four, difference: named }))).toEqual([])
  expect(faultsOf(replicateCurvesFigure({ title: long, speeds: four.speeds, samples }))).toEqual([])
})
