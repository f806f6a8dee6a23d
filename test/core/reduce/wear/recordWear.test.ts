import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { effectiveModulus } from '../../../../src/core/contact/index.ts'
import { reduceRecord } from '../../../../src/core/reduce/index.ts'
import {
  recordWear,
  scarWear,
  trackWearOfSections,
  trackWearOfWidth,
} from '../../../../src/core/reduce/questions/index.ts'
import { familyLaw, type SampledWear, sampleWear, simulateRecord } from '../../../../src/core/rig/index.ts'
import type { Setup } from '../../../../src/core/terms/index.ts'
import { realRecord } from '../../../figure/realRecords.ts'

const close = (value: number, want: number, within: number): void =>
  expect(Math.abs(value / want - 1)).toBeLessThan(within)
const steel = { elasticModulus: 210e9, poissonRatio: 0.3 }
const sphere = { radius: 6.35e-3, effectiveModulus: effectiveModulus(steel, steel) }

describe('scars of the interlaboratory programme, ball d 10 mm (ASTM G99 tables, numbers from memory, volumes recomputed)', () => {
  test.for([
    { scar: 2.11e-3, volume: 197.6e-12 },
    { scar: 2.08e-3, volume: 186.5e-12 },
    { scar: 0.3e-3, volume: 0.0795e-12 },
  ])('$scar m', ({ scar, volume }) => {
    const wear = scarWear([{ along: scar, across: scar }], { radius: 5e-3, uncertainty: 1e-6, seed: 1 })
    close(wear?.volume.value ?? 0, volume, 1e-3)
  })

  test('0.198 mm³ at 10 N over 1000 m are 1.98e-5 mm³/(N·m)', () => {
    // k = V/(Fs), the definition.
    expect(0.198e-9 / (10 * 1000)).toBeCloseTo(1.98e-14, 20)
  })
})

test('the interval of one scar is that of its diameter carried over, and lies unevenly about the volume', () => {
  const wear = scarWear([{ along: 4e-4, across: 4e-4 }], { radius: 5e-3, uncertainty: 2e-5, seed: 1 })
  const [scar] = wear?.scars ?? []
  // d⁴: (1 ± 1.96 · 5 %)⁴.
  close(scar.volume.high / scar.volume.value, (1 + 1.96 * 0.05) ** 4, 2e-3)
  close(scar.volume.low / scar.volume.value, (1 - 1.96 * 0.05) ** 4, 2e-3)
})

test('a width of 0.64 mm on a track of 16 mm by a ball of 5 mm: 0.439767 mm³, approximate 0.439226 (ASTM G99 §9, from memory, recomputed)', () => {
  const wear = trackWearOfWidth({ width: 0.64e-3, uncertainty: 1e-6 }, { trackRadius: 16e-3, endRadius: 5e-3 })
  close(wear.volume.value, 0.439767e-9, 1e-5)
  close(wear.approximate ?? 0, 0.439226e-9, 1e-5)
})

test('profiles: mean area × 2πR, with Student’s t on their scatter or the stated reading, whichever is larger', () => {
  const [a, b, c] = [100e-12, 110e-12, 120e-12]
  const wear = trackWearOfSections([a, b, c], 15e-3, undefined)
  close(wear?.volume.value ?? 0, 2 * Math.PI * 15e-3 * 110e-12, 1e-12)
  // s = 10, t(0.975; 2) = 4.302653.
  close(
    ((wear?.volume.high ?? 0) - (wear?.volume.value ?? 0)) / (2 * Math.PI * 15e-3),
    (4.302653 * 10e-12) / Math.sqrt(3),
    1e-6,
  )
  const coarse = trackWearOfSections([a, b, c], 15e-3, 100e-12)
  close(
    ((coarse?.volume.high ?? 0) - (coarse?.volume.value ?? 0)) / (2 * Math.PI * 15e-3),
    (1.959964 * 100e-12) / Math.sqrt(3),
    1e-6,
  )
})

describe('the record of the wearing ball', async () => {
  const record = await realRecord('wearing-ball')
  const truth = JSON.parse(readFileSync('test/data/records/wearing-ball.truth.json', 'utf8'))
  const wear = recordWear(record, undefined)

  test('the gap tells what it was made with, 2 µm per metre', () => {
    const { low, high } = wear.gap?.perMetre ?? { low: Number.NaN, high: Number.NaN }
    expect(low).toBeLessThanOrEqual(truth.spec.wear_rate)
    expect(high).toBeGreaterThanOrEqual(truth.spec.wear_rate)
    close(high / low, 1, 0.01)
    expect(wear.gap?.clear).toBe(true)
  })

  test('the path is speed × time: 0.05 m/s for 600 s', () => close(wear.slid.distance, 30, 1e-3))

  test('names the growth that it took for granted', () => {
    expect(wear.gap?.drift.from).toBe('usual')
    expect(wear.sentences.join(' ')).toMatch(/µm\/K, as usual/)
  })

  test('without moduli it does not say that pressure moved', () => expect(wear.moved.verdict).toBe('cannotTell'))
})

test('an even gap that only warms is no wear: the remark names the drift, and the depth is not called clear', () => {
  const { wear } = worn((sample) => ({ ...sample.run.disturbances, wear: { kind: 'perDistance', rate: 5e-8 } }))
  expect(wear.gap?.clear).toBe(false)
  expect(wear.rates.some(({ of }) => of === 'gap')).toBe(false)
})

/** The drawn test with other disturbances and another setup. */
function worn(
  change: (sample: SampledWear) => SampledWear['run']['disturbances'],
  setup: Partial<Setup> = {},
  contact?: typeof sphere,
) {
  const sample = sampleWear(20261125, 1)
  const run = { ...sample.run, disturbances: change(sample), friction: familyLaw('plateau', { h: 0.3 }) }
  const whole = { ...sample.setup, ...setup }
  const { channels } = simulateRecord(run, 5)
  const reduction = reduceRecord(channels, whole)
  if (!reduction.ok) throw new Error(reduction.problems.map(({ what }) => what).join(' '))
  return { sample, wear: recordWear({ channels, setup: whole, reduction: reduction.value }, contact) }
}

describe('three scars', () => {
  const scarsOf = (...diameters: readonly number[]): Setup['worn'] => ({
    scars: diameters.map((d) => ({ along: d, across: d })),
    scarUncertainty: 5e-6,
  })

  test('unequal beyond their reading are called so, with shares of the volume', () => {
    const { wear } = worn(({ run }) => run.disturbances, { worn: scarsOf(0.3e-3, 0.32e-3, 0.4e-3) })
    expect(wear.remarks.map(({ kind }) => kind)).toContain('scarsUnequal')
    // Shares of d⁴.
    const fourth = [0.3, 0.32, 0.4].map((d) => d ** 4)
    const sum = fourth.reduce((a, b) => a + b, 0)
    wear.balls?.unlike?.shares.forEach((share, i) => {
      close(share, fourth[i] / sum, 2e-3)
    })
  })

  test('alike within their reading are not', () => {
    const { wear } = worn(({ run }) => run.disturbances, { worn: scarsOf(0.3e-3, 0.302e-3, 0.305e-3) })
    expect(wear.remarks.map(({ kind }) => kind)).not.toContain('scarsUnequal')
  })
})

describe('pressure under 5 N on a ball of 12.7 mm, steel on steel (closed forms)', () => {
  const fixture: Setup['fixture'] = {
    kind: 'ballsOnPlate',
    balls: 1,
    ballDiameter: 12.7e-3,
    trackRadius: 15e-3,
    trackRadiusUncertainty: 0,
  }
  const at = (diameter: number) => {
    const sample = sampleWear(20261125, 1)
    const run = { ...sample.run, fixture, sheet: { ...sample.run.sheet, axialForce: 5 } }
    const setup: Setup = {
      ...sample.setup,
      fixture,
      run: { axialForce: 5 },
      worn: { scars: [{ along: diameter, across: diameter }], scarUncertainty: 1e-6 },
    }
    const { channels } = simulateRecord(run, 3)
    const reduction = reduceRecord(channels, setup)
    if (!reduction.ok) throw new Error('no reduction')
    return recordWear({ channels, setup, reduction: reduction.value }, sphere)
  }

  // Starts at 2a = 0.118 mm and a mean of 456 MPa; flats of 0.2, 0.3 and 0.5 mm carry 159, 71 and 25 MPa.
  test.for([
    { scar: 2e-4, pressure: 159e6 },
    { scar: 3e-4, pressure: 71e6 },
    { scar: 5e-4, pressure: 25e6 },
  ])('a flat of $scar m ends at $pressure Pa', ({ scar, pressure }) => {
    const { pressure: steps } = at(scar)
    close(steps[steps.length - 1].ifAtOnce, pressure, 0.02)
    close(steps[steps.length - 1].ifFresh, 456e6, 2e-3)
  })

  test('a scar narrower than the elastic contact moves nothing, a wide one does', () => {
    expect(at(0.1e-3).moved.verdict).toBe('no')
    expect(at(0.1e-3).moved.wornFrom).toBeNull()
    expect(at(0.5e-3).moved.wornFrom).toBe(1)
  })

  test('the distance within the elastic contact goes with the volume', () => {
    const { moved, slid } = at(0.4e-3)
    // V ∝ d⁴, so s ∝ d⁴: (0.118/0.4)⁴ of the path.
    close(moved.elasticFor ?? 0, slid.distance * (0.11815 / 0.4) ** 4, 0.01)
  })
})

test('pressure never rises along the way and stays between its bounds, whatever the scar', () => {
  fc.assert(
    fc.property(fc.double({ min: 5e-5, max: 2e-3, noNaN: true }), (diameter) => {
      const { wear } = worn(
        ({ run }) => run.disturbances,
        { worn: { scars: [{ along: diameter, across: diameter }] } },
        { ...sphere, radius: 3e-3 },
      )
      let last = Number.POSITIVE_INFINITY
      for (const { pressure, ifAtOnce, ifFresh } of wear.pressure) {
        expect(pressure.value).toBeLessThanOrEqual(last * (1 + 1e-9))
        expect(pressure.value).toBeGreaterThanOrEqual(ifAtOnce * (1 - 1e-9))
        expect(pressure.value).toBeLessThanOrEqual(ifFresh * (1 + 1e-9))
        last = pressure.value
      }
    }),
    { numRuns: 20, seed: 20261125 },
  )
})
