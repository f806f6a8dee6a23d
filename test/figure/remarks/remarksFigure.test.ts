import { describe, expect, test } from 'vitest'
import type { Point, Remark, RemarkKind } from '../../../src/core/terms/index.ts'
import { type PaletteName, type RemarksFigureData, remarksFigure } from '../../../src/figure/index.ts'
import { remarkNumbers } from '../../../src/figure/remarks/remarkNumbers.ts'
import { faultsOf } from '../faultsOf.ts'
import { goldenText } from '../goldenText.ts'
import { inventedPoints, inventedRemark, nothing, stribeck, trouble, twentyEight } from '../inventedCurves.ts'

const remark = (kind: RemarkKind, seen: number, about: Partial<Remark> = {}): Remark => ({
  ...inventedRemark(kind),
  seen,
  limit: 1,
  ...about,
})

const turns = [0.06, 0.13, 0.27, 0.58]
const points: readonly Point[] = inventedPoints({ from: 0.001, to: 0.1, count: 9, friction: stribeck }).map(
  (point, index) => ({
    ...point,
    remarks: [
      ...(index < 4 ? [remark('underOneTurn', turns[index], { step: index + 1 })] : []),
      ...(index < 2
        ? [remark('belowTorqueFloor', 3.5e-5 + 1e-6 * index, { unit: 'N·m', limit: 4.5e-5, step: index + 1 })]
        : []),
      ...(index === 6 ? [remark('forceOffTarget', 0.034, { limit: 0.02, step: 7 })] : []),
    ],
  }),
)

const data: RemarksFigureData = {
  title: 'Lacquer B on beech, remarks (invented)',
  caption: 'nine steps from 1 to 100 mm/s',
  points,
  remarks: [
    remark('torqueBlankMissing', 0, {
      sentence: 'The record holds no torque without contact, so residual torque and drag are not taken off.',
    }),
    remark('forceZeroDrift', 0.013, {
      sentence: 'The zero of the axial force drifts by 1.3 % of the load over the record; the drift is taken off.',
    }),
  ],
  note: 'Invented data: no lab measured them.',
}

const wordsIn = (svg: string): readonly string[] => [...svg.matchAll(/<text [^>]*>([^<]*)</g)].map((hit) => hit[1])

test.for<PaletteName>(['light', 'dark', 'print'])('lies in golden/ as it is drawn: %s', async (palette) => {
  await expect(goldenText(remarksFigure(data, { palette, id: 'golden' }))).toMatchFileSnapshot(
    `../golden/remarks-${palette}.svg`,
  )
})

describe('numbers of remarks', () => {
  test.for([
    {
      name: 'one unit for all of a row',
      of: [
        remark('belowTorqueFloor', 3.5e-5, { unit: 'N·m', limit: 4.5e-5 }),
        remark('belowTorqueFloor', 4.3e-5, { unit: 'N·m', limit: 4.5e-5 }),
      ],
      seen: '35 to 43 µN·m',
      limit: '45 µN·m',
    },
    { name: 'shares in per cent', of: [remark('stickSlip', 0.484, { limit: 0.05 })], seen: '48 %', limit: '5 %' },
    {
      name: 'turns are turns',
      of: [remark('underOneTurn', 0.0147), remark('underOneTurn', 0.732)],
      seen: '0.015 to 0.73 turns',
      limit: '1 turn',
    },
    { name: 'rows are rows', of: [remark('tooFewSamples', 3, { limit: 8 })], seen: '3 rows', limit: '8 rows' },
    {
      name: 'a difference of temperatures keeps its kelvin',
      of: [remark('temperatureOff', 1.26, { unit: 'K' })],
      seen: '1.3 K',
      limit: '1 K',
    },
    {
      name: 'what is no number',
      of: [remark('gapCreep', Number.NaN, { unit: 'm', limit: 1e-6 })],
      seen: '– mm',
      limit: '0.001 mm',
    },
  ])('$name', ({ of, seen, limit }) => {
    const numbers = remarkNumbers(of)
    expect(numbers.seen).toBe(seen)
    expect(numbers.limit).toBe(limit)
  })
})

test('each kind has a row with its words, what was seen and the limit', () => {
  const words = wordsIn(remarksFigure(data))
  for (const text of [
    'torque under the floor',
    'seen 35 to 36 µN·m',
    'limit 45 µN·m',
    'under one turn',
    'seen 0.06 to 0.58 turns',
    'limit 1 turn',
    'axial force off target',
    'seen 3.4 %',
    'limit 2 %',
  ]) {
    expect(words).toContain(text)
  }
})

test('each sign stands at its speed with its number below', () => {
  const svg = remarksFigure(data)
  const groups = [...svg.matchAll(/<g><title>Step (\d+): [^<]*<\/title>(.*?)<\/g>/g)]
  expect(groups).toHaveLength(7)
  const seen = new Map(
    groups.map(([, step, inside]) => [`${step} ${inside.match(/font-weight="700">(\w)</)?.[1]}`, inside]),
  )
  // The letters are those of the curve figure: stops first, then cautions.
  expect([...seen.keys()].sort()).toEqual(['1 a', '1 c', '2 a', '2 c', '3 c', '4 c', '7 b'])
  const x = (key: string): number => Number(seen.get(key)?.match(/<text x="([\d.]+)"/)?.[1])
  expect(x('1 a')).toBe(x('1 c'))
  // Speeds are evenly spread on a logarithm.
  expect(x('3 c') - x('2 c')).toBeCloseTo(x('2 c') - x('1 c'), 1)
  expect(seen.get('4 c')).toContain('>0.58<')
})

test('remarks on the whole record stand below with their sentences, the heavier first', () => {
  const words = wordsIn(remarksFigure(data))
  expect(words.indexOf('zero of the axial force drifted')).toBeGreaterThan(words.indexOf('on the whole record'))
  expect(words.indexOf('no torque blank')).toBeGreaterThan(words.indexOf('zero of the axial force drifted'))
  expect(words.some((text) => text.startsWith('The zero of the axial force drifts by 1.3 %'))).toBe(true)
})

test('a sweep up and down has a lane for each', () => {
  const words = wordsIn(remarksFigure({ ...data, points: twentyEight.points }))
  expect(words).toContain('rising')
  expect(words).toContain('falling')
  expect(wordsIn(remarksFigure(data))).not.toContain('falling')
})

test('signs that would lie over each other become strokes', () => {
  const many = inventedPoints({ from: 0.001, to: 0.1, count: 150, friction: stribeck, remarks: () => ['notSteady'] })
  const svg = remarksFigure({ ...data, points: many })
  expect(faultsOf(svg)).toEqual([])
  const signs = [...svg.matchAll(/font-weight="700">a</g)].length
  expect(signs).toBeGreaterThan(20)
  expect(signs).toBeLessThan(80)
})

test('no words lie over each other or outside, at any width', () => {
  for (const width of [480, 640, 880, 1200]) {
    for (const { points: some } of [data, trouble, twentyEight, nothing]) {
      expect(faultsOf(remarksFigure({ ...data, points: some }, { width }))).toEqual([])
    }
  }
})

test('a record without remarks says so', () => {
  const clean = { ...data, remarks: [], points: points.map((point) => ({ ...point, remarks: [] })) }
  const svg = remarksFigure(clean)
  expect(wordsIn(svg)).toContain('no remark on any step')
  expect(svg).toContain('No remark on 9 steps.')
  expect(faultsOf(remarksFigure({ ...clean, points: [] }))).toEqual([])
})

test('people who hear the picture get the numbers; the same bytes again', () => {
  const svg = remarksFigure(data)
  const words = svg.match(/<desc[^>]*>([^<]*)</)?.[1] ?? ''
  expect(words).toContain('under one turn: steps 1–4, seen 0.06 to 0.58 turns, limit 1 turn.')
  expect(remarksFigure(structuredClone(data))).toBe(svg)
})
