import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { reduceRecord } from '../../../../src/core/reduce/index.ts'
import { type HoldOptions, holdDefaults, holdOf } from '../../../../src/core/reduce/questions/index.ts'
import { type Disturbances, familyLaw, simulateRecord, usualColumns } from '../../../../src/core/rig/index.ts'
import type { Hold, Setup } from '../../../../src/core/terms/index.ts'
import { readRecord, readSetup } from '../../../../src/io/index.ts'
import { threeBalls } from '../virtualRuns.ts'

const setup: Setup = {
  rig: { name: 'virtual rig', torque: { scaleAccuracy: 0.006 }, axialForce: { scaleAccuracy: 0 }, angularVelocity: {} },
  fixture: threeBalls,
  pair: { upper: { name: 'ball' }, lower: { name: 'lacquer (invented)' } },
  run: { axialForce: 5 },
  options: {},
}

/** 0.12 at 50 mm/s for ten minutes: 30 m. */
function held(disturbances: Disturbances, options: Partial<HoldOptions> = {}, seed = 4): Hold {
  const { channels } = simulateRecord(
    {
      fixture: threeBalls,
      rig: { noise: { torque: { correlated: 4e-5, correlation: 0.6 }, axialForce: { white: 5e-3 } }, riseTime: 0.2 },
      sheet: {
        speeds: { kind: 'list', speeds: [0.05] },
        dwell: { kind: 'time', seconds: 600 },
        samplingRate: 5,
        axialForce: 5,
        temperature: 298.15,
        gap: 0,
        blankBefore: false,
        blankAfter: false,
        lift: 1e-3,
      },
      friction: familyLaw('plateau', { h: 0.12 }),
      disturbances,
      columns: usualColumns,
    },
    seed,
  )
  const reduction = reduceRecord(channels, setup)
  if (!reduction.ok) throw new Error(JSON.stringify(reduction.problems))
  const hold = holdOf({ channels, setup, reduction: reduction.value }, { ...holdDefaults, ...options })
  if (!hold.ok) throw new Error(JSON.stringify(hold.problems))
  return hold.value
}

const within = (truth: number, found: { low: number | null; high: number | null } | null | undefined): boolean =>
  found != null && found.low !== null && found.high !== null && found.low <= truth && truth <= found.high

describe('running-in of 40 % over 2 m', () => {
  const hold = held({
    runningIn: { excess: 0.4, distance: 2 },
    frictionRipple: [{ order: 1, amplitude: 0.02, phase: 1 }],
  })

  test('is the law that is taken, and its quantities hold the truth', () => {
    expect(hold.law).toBe('runIn')
    const named = (name: string) => hold.quantities.find((one) => one.name === name)
    expect(within(0.12, named('steady'))).toBe(true)
    expect(within(2, named('length'))).toBe(true)
    expect(named('length')?.value).toBeCloseTo(2, 1)
  })

  test('comes within 2 % of its steady value after s₀·ln(0.4/0.02) = 5.99 m', () => {
    expect(hold.steadyFrom?.value).toBeCloseTo(2 * Math.log(20), 0)
    expect(Math.abs((hold.steadyFrom?.value ?? 0) - 2 * Math.log(20))).toBeLessThan(0.1)
  })

  test('is over in the last third, and what all points share stays apart', () => {
    expect(hold.runIn.verdict).toBe('runIn')
    expect(hold.remarks).toEqual([])
    expect(hold.shared.torqueScale).toBeCloseTo((0.12 * 0.006) / Math.sqrt(3), 5)
    expect((hold.late.high ?? 0) - hold.late.value).toBeLessThan(hold.shared.torqueScale ?? 0)
  })
})

test('a run-in that is as long as the record is no steady state', () => {
  const hold = held({ runningIn: { excess: 0.6, distance: 30 } })
  expect(hold.runIn.verdict).toBe('notRunIn')
  expect(hold.remarks.map(({ kind }) => kind)).toEqual(['notRunIn'])
})

test('where the margin is finer than the noise the answer is that it cannot be told', () => {
  expect(held({}, { margin: 1e-5 }).runIn.verdict).toBe('cannotTell')
})

test('a constant friction is one level', () => {
  const hold = held({})
  expect(hold.law).toBe('level')
  expect(within(0.12, hold.late)).toBe(true)
  expect(hold.life).toBeNull()
})

describe('a coating that fails at 18 m over 2 m', () => {
  const failing = { coatingFailure: { distance: 18, width: 2, friction: 0.48 } }

  test('passes 0.3 half way up, at 19 m', () => {
    const { life, law, remarks } = held(failing, { threshold: 0.3 })
    expect(life?.distance?.value).toBeCloseTo(19, 1)
    expect((life?.distance?.high ?? 0) - (life?.distance?.low ?? 0)).toBeLessThan(0.1)
    // What was slid before is asked for its law, not what came after.
    expect(law).toBe('level')
    expect(remarks.map(({ kind }) => kind)).toContain('coatingFailed')
  })

  test('never passes 0.6: the life is longer than what was slid', () => {
    const { life } = held(failing, { threshold: 0.6 })
    expect(life?.distance).toBeNull()
    expect(life?.watched).toBeCloseTo(30, 0)
  })

  test('without a threshold the rise itself is the law', () => {
    const hold = held(failing)
    expect(hold.law).toBe('failure')
    expect(hold.quantities.find(({ name }) => name === 'onset')?.value).toBeCloseTo(18, 1)
  })
})

async function fileHeld(record: string, setupFile: string): Promise<Hold> {
  const read = readSetup(readFileSync(setupFile, 'utf8'), setupFile)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const columns = Object.fromEntries(
    Object.entries(read.value.columns).map(([heading, { channel, unit }]) => [
      heading,
      { channel: channel === 'ignore' ? null : channel, unit },
    ]),
  )
  const table = await readRecord(record, { columns })
  if (!table.ok) throw new Error(JSON.stringify(table.problems))
  const { channels } = table.value
  const reduction = reduceRecord(channels, read.value.setup)
  if (!reduction.ok) throw new Error(JSON.stringify(reduction.problems))
  const hold = holdOf({ channels, setup: read.value.setup, reduction: reduction.value })
  table.value.close()
  if (!hold.ok) throw new Error(JSON.stringify(hold.problems))
  return hold.value
}

test('wearing-ball: run in at 0.0474715, two steps of one speed joined, the gap closes by 2 µm per metre (its truth file)', async () => {
  const hold = await fileHeld('test/data/records/wearing-ball.csv', 'test/data/records/wearing-ball.setup.yaml')
  expect(hold.steps).toEqual([1, 2])
  expect(hold.runIn.verdict).toBe('runIn')
  expect(Math.abs(hold.late.value / 0.0474706 - 1)).toBeLessThan(2e-4)
  expect(hold.gapCreep?.value).toBeCloseTo(-2e-6, 9)
  expect(hold.remarks).toEqual([])
})

describe('real friction of an aluminium alloy (open data, README beside)', () => {
  const folder = 'test/data/open-data'
  const file = (name: string) => fileHeld(`${folder}/${name}.txt`, `${folder}/pin-disc-base.setup.yaml`)

  test('one repeat starts with a running-in hump, the other does not', async () => {
    const [a, b] = await Promise.all([file('pin-disc-base-a'), file('pin-disc-base-b')])
    expect(a.hump?.height.value).toBeGreaterThan(0.05)
    // The top stands between 35 and 50 s at 2.4 m/s, as the plain rows show.
    expect(a.hump?.at).toBeGreaterThan(35 * 2.4)
    expect(a.hump?.at).toBeLessThan(50 * 2.4)
    expect(b.hump).toBeNull()
  })

  test('friction wanders for so long that neither is called run in', async () => {
    const [a, b] = await Promise.all([file('pin-disc-base-a'), file('pin-disc-base-b')])
    expect([a.runIn.verdict, b.runIn.verdict]).toEqual(['cannotTell', 'cannotTell'])
  })
})

test('a record that holds no speed long enough says what is needed', () => {
  const { channels } = simulateRecord(
    {
      fixture: threeBalls,
      rig: { noise: {}, riseTime: 0 },
      sheet: {
        speeds: { kind: 'list', speeds: [0.01, 0.1] },
        dwell: { kind: 'time', seconds: 1 },
        samplingRate: 10,
        axialForce: 5,
        temperature: 298.15,
        gap: 0,
        blankBefore: false,
        blankAfter: false,
        lift: 1e-3,
      },
      friction: familyLaw('plateau', { h: 0.12 }),
      disturbances: {},
      columns: usualColumns,
    },
    1,
  )
  const reduction = reduceRecord(channels, setup)
  const hold = reduction.ok ? holdOf({ channels, setup, reduction: reduction.value }) : reduction
  expect(hold.ok ? [] : hold.problems.map(({ kind }) => kind)).toEqual(['holdTooShort'])
})
