import { expect, test } from 'vitest'
import { readProfile } from '../../../src/io/profile/index.ts'

const rows = (write: (x: number, z: number) => string): string =>
  Array.from({ length: 25 }, (_, i) => write(i * 0.5, i * 0.25)).join('\n')
const comma = (value: number): string => String(value).replace('.', ',')

test.for([
  { name: 'units in the heading', text: `x (mm),z (µm)\n${rows((x, z) => `${x},${z}`)}` },
  { name: 'a row of units', text: `position\theight\nmm\tµm\n${rows((x, z) => `${x}\t${z}`)}` },
  { name: 'decimal commas', text: `x [mm]; z [µm]\r\n${rows((x, z) => `${comma(x)};${comma(z)}`)}` },
  { name: 'blanks', text: `mm µm\n${rows((x, z) => ` ${x}   ${z} `)}` },
  {
    name: 'backwards',
    text: `mm µm\n${rows((x, z) => `${x} ${z}`)
      .split('\n')
      .reverse()
      .join('\n')}`,
  },
  { name: 'a third column', text: `x (mm),z (µm),q\n${rows((x, z) => `${x},${z},7`)}` },
])('a profile with $name', ({ text }) => {
  const read = readProfile(text, 'p.txt')
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  expect(read.value.position.length).toBe(25)
  expect(read.value.position[24]).toBeCloseTo(12e-3, 12)
  expect(read.value.height[24]).toBeCloseTo(6e-6, 15)
})

test('units can be typed where the file has none', () => {
  const text = rows((x, z) => `${x} ${z}`)
  expect(readProfile(text, 'p.txt').ok).toBe(false)
  expect(readProfile(text, 'p.txt', ['mm', 'µm']).ok).toBe(true)
})

test('tells every broken line with its place', () => {
  const text = `mm µm\n${rows((x, z) => `${x} ${z}`)}\nnonsense here\n1 2\nx y`
  const read = readProfile(text, 'p.txt')
  expect(read.ok ? [] : read.problems.map(({ kind, place }) => [kind, place.line])).toEqual([
    ['profileNumber', 27],
    ['profileNumber', 29],
  ])
})

test.for(['', 'mm µm', '1 2\n3 4', '\u0000\u0001', 'mm µm\n'.repeat(50)])(
  'is never thrown by bad input: %j',
  (text) => {
    expect(readProfile(text, 'p.txt').ok).toBe(false)
  },
)
