import { describe, expect, test } from 'vitest'
import { colourStops, colourTable } from '../../../src/figure/turnMap/colourScale.ts'

type Rgb = readonly [number, number, number]

/** sRGB to linear light: IEC 61966-2-1. */
const linear = (byte: number): number => {
  const share = byte / 255
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
}

/** CIE 1976 lightness L* of linear light (CIE 15); white is 100. */
const lightness = ([red, green, blue]: Rgb): number => {
  const y = 0.2126 * red + 0.7152 * green + 0.0722 * blue
  return y > (6 / 29) ** 3 ? 116 * Math.cbrt(y) - 16 : (29 / 3) ** 3 * y
}

const levels = 64
const coloursOf = (palette: 'light' | 'print'): readonly Rgb[] => {
  const table = colourTable(colourStops(palette), levels)
  return Array.from(
    { length: levels },
    (_, level): Rgb => [linear(table[3 * level]), linear(table[3 * level + 1]), linear(table[3 * level + 2])],
  )
}

const rises = (values: readonly number[]): readonly number[] =>
  values.slice(1).map((value, index) => value - values[index])

/** How eyes without one kind of cone see linear light: Machado, Oliveira & Fernandes 2009, severity 1.0; from memory. */
const blindness: Readonly<Record<string, readonly Rgb[]>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

describe('the scale of colours', () => {
  test('is even to the eye: lightness rises by equal steps, from dark to bright', () => {
    const seen = coloursOf('light').map(lightness)
    const steps = rises(seen)
    const mean = (seen[levels - 1] - seen[0]) / (levels - 1)
    expect(seen[0]).toBeLessThan(20)
    expect(seen[levels - 1]).toBeGreaterThan(88)
    for (const step of steps) expect(Math.abs(step / mean - 1)).toBeLessThan(0.35)
  })

  test.for(Object.entries(blindness))('keeps its order for eyes with %s', ([, rows]) => {
    const seen = coloursOf('light').map((colour) => {
      const light = rows.map((row) => Math.max(0, row[0] * colour[0] + row[1] * colour[1] + row[2] * colour[2]))
      return lightness([light[0], light[1], light[2]])
    })
    for (const step of rises(seen)) expect(step).toBeGreaterThan(0)
  })

  test('in print is grey, in order, and leaves white to empty cells', () => {
    const seen = coloursOf('print').map(lightness)
    for (const step of rises(seen)) expect(step).toBeGreaterThan(0)
    expect(seen[levels - 1]).toBeLessThan(93)
  })

  test('passes through entries of the published table: 0, 30, 60, 120 and 255 of 256', () => {
    // viridis in colormaps.py of BIDS/colormap (CC0), as bytes.
    const table = colourTable(colourStops('light'), 256)
    const at = (entry: number): readonly number[] => [...table.subarray(3 * entry, 3 * entry + 3)]
    expect(at(0)).toEqual([68, 1, 84])
    expect(at(30)).toEqual([71, 42, 122])
    expect(at(60)).toEqual([61, 78, 138])
    expect(at(120)).toEqual([35, 137, 142])
    expect(at(255)).toEqual([253, 231, 37])
  })
})
