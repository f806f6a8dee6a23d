import { expect, test } from 'vitest'
import { type MasterFigureData, masterFigure, type PaletteName } from '../../src/figure/index.ts'
import { faultsOf } from './faultsOf.ts'
import { goldenText } from './goldenText.ts'

const at = (x: number): number => 0.3 / (1 + (x / 1e-4) ** 1.5) + 2 * x ** 0.5
const data: MasterFigureData = {
  title: 'Three liquids on soft silicone (invented)',
  caption: 'Viscosity makes the liquids one curve over ηv (N/m).',
  axis: { formula: 'ηv', unit: 'N/m' },
  liquids: [1e-3, 1e-2, 1e-1].map((viscosity, i) => ({
    name: `oat drink ${i + 1}`,
    viscosity,
    points: Array.from({ length: 8 }, (_, k) => {
      const hersey = viscosity * 2e-3 * 2 ** k
      return { hersey, friction: at(hersey) * (1 + 0.02 * Math.sin(7 * k + i)), ownUncertainty: 0.01 * at(hersey) }
    }),
  })),
  curve: Array.from({ length: 60 }, (_, i) => ({
    hersey: 2e-6 * 1e4 ** (i / 59),
    friction: at(2e-6 * 1e4 ** (i / 59)),
  })),
  sentence: 'Viscosity makes the liquids one curve.',
  note: 'Invented data: no lab measured them.',
}

test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
  await expect(goldenText(masterFigure(data, { palette, id: 'golden' }))).toMatchFileSnapshot(
    `golden/master-${palette}.svg`,
  )
})

test('is sound with all, without a curve and with nothing', () => {
  expect(faultsOf(masterFigure(data))).toEqual([])
  expect(faultsOf(masterFigure({ ...data, curve: [] }))).toEqual([])
  expect(faultsOf(masterFigure({ ...data, liquids: [], curve: [] }))).toEqual([])
})

test('says which Hersey number it is', () => expect(masterFigure(data)).toContain('Hersey number ηv (N/m)'))
