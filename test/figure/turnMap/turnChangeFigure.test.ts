import { expect, test } from 'vitest'
import { type PaletteName, type TurnChangeFigureData, turnChangeFigure } from '../../../src/figure/index.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'

const angles = Array.from({ length: 24 }, (_, i) => ((i + 0.5) / 24) * 2 * Math.PI)
const bump = angles.map((angle) => 0.02 * Math.exp(-(((angle - 0.3) / 0.3) ** 2)))

const data: TurnChangeFigureData = {
  title: 'Late turns against early ones (invented)',
  angles,
  early: angles.map((angle) => 0.2 + 0.01 * Math.cos(angle)),
  late: angles.map((angle, i) => 0.19 + 0.01 * Math.cos(angle) + bump[i]),
  local: bump,
  low: bump.map((value) => value - 0.002),
  high: bump.map((value) => value + 0.002),
  quantity: 'friction coefficient µ (1)',
  spot: {
    from: -0.26,
    to: 0.78,
    course: Array.from({ length: 30 }, (_, turn) => ({ turn, change: Math.max(0, turn - 12) * 1e-3 })),
    onset: { value: 12, low: 11, high: 13 },
  },
  sentence: 'From 345° to 45° of the turn it changed by up to 0.02.',
  note: 'Invented data: no lab measured them.',
}

test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
  await expect(goldenText(turnChangeFigure(data, { palette, id: 'golden' }))).toMatchFileSnapshot(
    `../golden/turn-change-${palette}.svg`,
  )
})

test('is sound with a spot over the seam, without one, and with nothing', () => {
  expect(faultsOf(turnChangeFigure(data))).toEqual([])
  expect(faultsOf(turnChangeFigure({ ...data, spot: null }))).toEqual([])
  const none = { angles: [], early: [], late: [], local: [], low: [], high: [], spot: null }
  expect(faultsOf(turnChangeFigure({ ...data, ...none }))).toEqual([])
})
