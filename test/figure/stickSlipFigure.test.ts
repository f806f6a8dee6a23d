import { expect, test } from 'vitest'
import { type PaletteName, type StickSlipFigureData, stickSlipFigure } from '../../src/figure/index.ts'
import { faultsOf } from './faultsOf.ts'
import { goldenText } from './goldenText.ts'

const speeds = [2e-4, 5e-4, 1e-3, 2e-3, 5e-3, 1e-2]

const data: StickSlipFigureData = {
  title: 'Lacquer on beech, stick–slip (invented)',
  caption: 'three steel balls 6.35 mm on a track of 15 mm, 6 N',
  steps: speeds.map((slidingSpeed, i) => ({
    step: i + 1,
    slidingSpeed,
    sticks: i < 4,
    words: i < 4 ? 'stick–slip' : 'quiet',
    swing: i < 4 ? 0.3 - 0.02 * i : 0.004,
    frequency: i < 4 ? { value: 1.5 * 2 ** i, low: 1.45 * 2 ** i, high: 1.56 * 2 ** i } : null,
  })),
  naturalFrequency: 71.2,
  bracket: { from: 2e-3, to: 5e-3 },
  sentence: 'Stick–slip on steps 1–4. It ends between 2 mm/s and 5 mm/s.',
  note: 'Invented data: no lab measured them.',
}

test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
  await expect(goldenText(stickSlipFigure(data, { palette, id: 'golden' }))).toMatchFileSnapshot(
    `golden/stick-slip-${palette}.svg`,
  )
})

test('is sound with everything, with one step and with nothing', () => {
  expect(faultsOf(stickSlipFigure(data))).toEqual([])
  expect(faultsOf(stickSlipFigure({ ...data, steps: data.steps.slice(0, 1), bracket: null }))).toEqual([])
  expect(faultsOf(stickSlipFigure({ ...data, steps: [], bracket: null, naturalFrequency: null }))).toEqual([])
  expect(faultsOf(stickSlipFigure(data, { width: 480 }))).toEqual([])
})

test('names every step to whoever hovers or listens', () => {
  const svg = stickSlipFigure(data)
  for (const { step } of data.steps) expect(svg).toMatch(new RegExp(`<title>step ${step}, [^<]*swing`))
  expect(svg).toContain('<desc id="stick-slip-desc">Stick–slip on steps 1–4.')
})
