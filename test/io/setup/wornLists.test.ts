import { expect, test } from 'vitest'
import { readScars, readSections } from '../../../src/io/setup/wornLists.ts'

test.for([
  { text: '0.42 x 0.40 mm', scars: [{ along: 4.2e-4, across: 4e-4 }] },
  {
    text: '0.42mm × 400 µm; 0.5 mm',
    scars: [
      { along: 4.2e-4, across: 4e-4 },
      { along: 5e-4, across: 5e-4 },
    ],
  },
  { text: '0,42 x 0,40 mm', scars: [{ along: 4.2e-4, across: 4e-4 }] },
])('scars as people write them: $text', ({ text, scars }) => {
  const read = readScars(text)
  expect(read.faults).toEqual([])
  expect(read.items.length).toBe(scars.length)
  for (const [i, { along, across }] of scars.entries()) {
    expect(read.items[i].along).toBeCloseTo(along, 12)
    expect(read.items[i].across).toBeCloseTo(across, 12)
  }
})

test.for(['0.42', '0.42 x', '1 x 2 x 3 mm', '0 mm', '-1 mm', '3 N', '', '0.4 mm;; 0.5 mm'])(
  'refused with a mend: %s',
  (text) => {
    const { faults } = readScars(text)
    expect(faults.length).toBeGreaterThan(0)
    for (const { what, mend } of faults) expect(`${what} ${mend}`).toMatch(/\w/)
  },
)

test('sections keep their sign, and a section without a unit is refused', () => {
  expect(readSections('120 µm²; -3 µm²').items).toEqual([1.2e-10, -3e-12])
  expect(readSections('120').faults.length).toBe(1)
})
