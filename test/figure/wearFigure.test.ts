import { expect, test } from 'vitest'
import { type PaletteName, type WearFigureData, wearFigure } from '../../src/figure/index.ts'
import { faultsOf } from './faultsOf.ts'
import { goldenText } from './goldenText.ts'

const data: WearFigureData = {
  title: 'Lacquer on beech, wear (invented)',
  caption: 'three steel balls 6.35 mm on a track of 15 mm, 5 N',
  steps: [0.02, 0.1, 0.4, 1, 2.5, 4].map((distance, i) => ({
    step: i + 1,
    distance,
    scar: { value: 1e-4 * (i + 1), low: 0.9e-4 * (i + 1), high: 1.1e-4 * (i + 1) },
    pressure: { value: 2e8 / (i + 1), low: 1.8e8 / (i + 1), high: 2.2e8 / (i + 1) },
    ifAtOnce: 3e7,
    ifFresh: 2.4e8,
  })),
  elasticFor: 0.05,
  gap: Array.from({ length: 20 }, (_, i) => ({ distance: 0.2 * i, depth: 1e-6 * Math.sqrt(i) })),
  sentence: 'Wear moved the pressure during the sweep.',
  note: 'Invented data: no lab measured them.',
}

test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
  await expect(goldenText(wearFigure(data, { palette, id: 'golden' }))).toMatchFileSnapshot(
    `golden/wear-${palette}.svg`,
  )
})

test('is sound with either part, with both and with none', () => {
  expect(faultsOf(wearFigure(data))).toEqual([])
  expect(faultsOf(wearFigure({ ...data, gap: [] }))).toEqual([])
  expect(faultsOf(wearFigure({ ...data, steps: [] }))).toEqual([])
  expect(faultsOf(wearFigure({ ...data, steps: [], gap: [] }))).toEqual([])
})
