import { readdirSync, readFileSync } from 'node:fs'
import { afterAll, describe, expect, test } from 'vitest'
import { reduceRecord } from '../../src/core/reduce/index.ts'
import { integratedAutocorrelationTime } from '../../src/core/stats/index.ts'
import type { Reduction, RemarkKind } from '../../src/core/terms/index.ts'
import { readRecord, readSetup } from '../../src/io/index.ts'

// Records with known truth, made by a program of others than this one's virtual rig; see test/data/records/README.md.
const folder = 'test/data/records'
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.csv'))
  .map((name) => name.slice(0, -4))

async function reduce(file: string, setupFile: string): Promise<Reduction> {
  const setup = readSetup(readFileSync(setupFile, 'utf8'), setupFile)
  if (!setup.ok) throw new Error(JSON.stringify(setup.problems))
  const columns = Object.fromEntries(
    Object.entries(setup.value.columns).map(([heading, { channel, unit }]) => [
      heading,
      { channel: channel === 'ignore' ? null : channel, unit },
    ]),
  )
  const record = await readRecord(file, { columns })
  if (!record.ok) throw new Error(JSON.stringify(record.problems))
  try {
    const reduction = reduceRecord(record.value.channels, setup.value.setup)
    if (!reduction.ok) throw new Error(JSON.stringify(reduction.problems))
    return reduction.value
  } finally {
    record.value.close()
  }
}

const setupOf = (name: string): string => `${folder}/${name.startsWith('varnish') ? 'varnish' : name}.setup.yaml`

interface TrueStep {
  readonly step: number
  readonly kind: 'slide' | 'blank'
  readonly mu: number | null
}

const truthOf = (name: string): readonly TrueStep[] =>
  JSON.parse(readFileSync(`${folder}/${name}.truth.json`, 'utf8')).steps

/** Remark of each trouble record, and the steps that must bear it; all other steps must not. */
const troubles: Readonly<Record<string, { readonly kind: RemarkKind; readonly steps: readonly number[] }>> = {
  'lost-contact': { kind: 'contactLost', steps: [7] },
  overload: { kind: 'torqueAtCeiling', steps: [1] },
  'stick-slip': { kind: 'stickSlip', steps: [1, 2, 3, 4, 5] },
  'tilted-plate': { kind: 'frictionRipple', steps: [3, 4, 5, 6, 7, 8, 9, 10, 11] },
  'wearing-ball': { kind: 'gapCreep', steps: [1, 2] },
}

const troubleKinds: readonly RemarkKind[] = [
  'belowTorqueFloor',
  'contactLost',
  'torqueAtCeiling',
  'stickSlip',
  'frictionRipple',
  'forceRipple',
  'gapCreep',
]

const found = { whole: 0, wholeInside: 0, partial: 0, partialInside: 0, widths: [] as number[] }

describe.each(names)('%s', (name) => {
  test('all steps are found, troubles are named on the right steps, clean steps hold the truth', async () => {
    const reduction = await reduce(`${folder}/${name}.csv`, setupOf(name))
    const truth = truthOf(name)
    expect(reduction.steps.map(({ kind }) => kind)).toEqual(truth.map(({ kind }) => kind))
    const sliding = truth.filter(({ kind }) => kind === 'slide')
    const trouble = troubles[name]
    reduction.points.forEach((point, i) => {
      const kinds = point.remarks.map((remark) => remark.kind)
      if (trouble !== undefined) expect(kinds.includes(trouble.kind)).toBe(trouble.steps.includes(sliding[i].step))
      else if (name !== 'near-torque-floor') expect(kinds.filter((kind) => troubleKinds.includes(kind))).toEqual([])
      const clean = name !== 'tilted-plate' && !trouble?.steps.includes(sliding[i].step)
      if (clean) count(name, point, sliding[i].mu ?? Number.NaN)
    })
  })
})

function count(name: string, point: Reduction['points'][number], truth: number): void {
  const inside = (point.low ?? Number.NaN) <= truth && truth <= (point.high ?? Number.NaN)
  if (point.turns >= 1) {
    found.whole++
    if (inside) found.wholeInside++
    const half = ((point.high ?? 0) - (point.low ?? 0)) / 2 / (point.friction ?? 1)
    if (name.startsWith('varnish')) found.widths.push(half)
  } else {
    found.partial++
    if (inside) found.partialInside++
  }
}

// After all records, since the count is over the folder.
afterAll(() => {
  const whole = found.wholeInside / found.whole
  expect(found.whole).toBeGreaterThan(90)
  expect(whole).toBeGreaterThanOrEqual(0.9)
  expect(whole).toBeLessThanOrEqual(0.99)
  expect(found.partialInside / found.partial).toBeGreaterThanOrEqual(0.9)
  const sorted = found.widths.toSorted((a, b) => a - b)
  expect(sorted[sorted.length >> 1]).toBeLessThan(0.001)
})

test('near the torque floor: the slow steps are named, and none of the fast ones', async () => {
  const { points } = await reduce(`${folder}/near-torque-floor.csv`, setupOf('near-torque-floor'))
  const named = points.filter((point) => point.remarks.some((remark) => remark.kind === 'belowTorqueFloor'))
  // The setup's floor is 45 µN·m; true torque is µ·15 mm·0.5 N.
  const truth = truthOf('near-torque-floor').filter(({ kind }) => kind === 'slide')
  const clearlyUnder = truth.filter(({ mu }) => (mu ?? 0) * 0.015 * 0.5 < 40e-6).map(({ step }) => step)
  const clearlyOver = truth.filter(({ mu }) => (mu ?? 0) * 0.015 * 0.5 > 50e-6).map(({ step }) => step)
  const steps = named.map(({ step }) => step)
  expect(clearlyUnder.length).toBeGreaterThan(2)
  expect(steps).toEqual(expect.arrayContaining(clearlyUnder))
  expect(steps.filter((step) => clearlyOver.includes(step))).toEqual([])
})

// Plain readings from the notice beside the files: mean friction force of all rows and of the second half, over 50 N.
describe('real files, one speed held, friction force measured', () => {
  test.for([
    { file: 'pin-disc-base-a', setup: 'pin-disc-base', all: 20.9312, half: 19.8334, time: 63 },
    { file: 'pin-disc-base-b', setup: 'pin-disc-base', all: 19.2176, half: 19.8919, time: 7 },
    { file: 'pin-disc-2p5-a', setup: 'pin-disc-2p5', all: 26.9469, half: 27.6029, time: 23 },
  ])('$file', async ({ file, setup, all, half, time }) => {
    const path = `test/data/open-data/${file}.txt`
    const { points } = await reduce(path, `test/data/open-data/${setup}.setup.yaml`)
    const [point] = points
    expect(points.length).toBe(1)
    // What is kept lies between all rows and the second half, so its mean does as well.
    expect(point.friction).toBeGreaterThanOrEqual(Math.min(all, half) / 50 - 1e-4)
    expect(point.friction).toBeLessThanOrEqual(Math.max(all, half) / 50 + 1e-4)
    expect(point.low).toBeLessThan(half / 50)
    expect(point.high).toBeGreaterThan(half / 50)
    const force = readFileSync(path, 'latin1')
      .split(/[\r\n]+/)
      .slice(1)
      .map((line) => Number(line.split(';')[1]?.trim().replace(',', '.')))
      .filter((value) => value > 0)
    const second = integratedAutocorrelationTime(force.slice(force.length >> 1))
    expect(Math.abs(second.time - time)).toBeLessThan(second.standardError)
  })
})
