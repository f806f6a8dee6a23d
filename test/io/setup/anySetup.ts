import fc from 'fast-check'
import { fixtureFaults } from '../../../src/core/fixture/index.ts'
import type { FixtureSpec, ReduceOptions, Setup, SurfaceSpec } from '../../../src/core/terms/index.ts'

/** Adding zero turns -0 into 0, which a file cannot tell apart. */
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0)
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined })
const words = fc
  .oneof(
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }),
    fc.constantFrom(
      'true',
      '~',
      'null',
      '- x',
      'a: b',
      '# no',
      '"',
      "'",
      '*a',
      '&b',
      '!c',
      '%',
      '@',
      '5 N',
      '1e3',
      'no\nyes',
      '[x]',
      '{',
      '2026-11-25',
    ),
  )
  .map((text) => text.trim())
  // biome-ignore lint/suspicious/noControlCharactersInRegex: a setup with control characters is refused as no text.
  .filter((text) => text !== '' && !/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u2028\u2029\ufeff\ufffd]/.test(text))

/** Drops undefined entries at every level, as the reader does. */
export function withoutUndefined<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value
  // Lists hold no undefined entries.
  if (Array.isArray(value)) return value
  const kept = Object.entries(value).filter(([, inner]) => inner !== undefined)
  return Object.fromEntries(kept.map(([name, inner]) => [name, withoutUndefined(inner)])) as T
}

const length = within(1e-6, 0.1)
const small = within(0, 1e-4)
const pressure = fc.constantFrom('uniformPressure' as const, 'uniformWear' as const)

export const anyFixture: fc.Arbitrary<FixtureSpec> = fc
  .oneof(
    fc.record({
      kind: fc.constant('ballsOnPlate' as const),
      balls: fc.integer({ min: 1, max: 6 }),
      ballDiameter: length,
      trackRadius: length,
      trackRadiusUncertainty: small,
    }),
    fc.record({
      kind: fc.constant('ballOnPlates' as const),
      plates: fc.integer({ min: 2, max: 6 }),
      ballDiameter: length,
      ballDiameterUncertainty: small,
      inclination: within(0.01, 1.56),
      inclinationUncertainty: within(0, 0.009),
    }),
    fc.record({
      kind: fc.constant('ballOnBalls' as const),
      ballDiameter: length,
      ballDiameterUncertainty: small,
    }),
    fc.record({
      kind: fc.constant('ringOnPlate' as const),
      outerRadius: length,
      innerRadius: length,
      segments: fc.integer({ min: 1, max: 6 }),
      pressure,
      radiusUncertainty: small,
    }),
    fc.record({
      kind: fc.constant('discOnPlate' as const),
      radius: length,
      pressure,
      radiusUncertainty: small,
    }),
    fc.record({
      kind: fc.constant('pinsOnDisc' as const),
      pins: fc.integer({ min: 1, max: 6 }),
      pinDiameter: length,
      endRadius: maybe(within(1e-6, 9)),
      trackRadius: length,
      trackRadiusUncertainty: small,
    }),
  )
  .filter((spec) => fixtureFaults(spec).length === 0)

const surface: fc.Arbitrary<SurfaceSpec> = fc.record({
  name: words,
  roughness: maybe(within(1e-10, 1e-4)),
  elasticModulus: maybe(within(1, 1e12)),
  poissonRatio: maybe(within(-1, 0.5)),
  thickness: maybe(within(1e-9, 0.1)),
})

const options: fc.Arbitrary<Partial<ReduceOptions>> = fc.record({
  segmentation: maybe(fc.constantFrom('auto', 'stepColumn', 'plateaus', 'ramp')),
  rampBinsPerDecade: maybe(fc.integer({ min: 1, max: 1000 })),
  settleTolerance: maybe(within(1e-6, 0.99)),
  floorFactor: maybe(within(0.1, 999)),
  forceTolerance: maybe(within(1e-6, 0.99)),
  temperatureTolerance: maybe(within(1e-3, 999)),
  forceRippleLimit: maybe(within(1e-6, 9)),
  frictionRippleLimit: maybe(within(1e-6, 9)),
  contactShare: maybe(within(1e-6, 0.99)),
  gapCreepLimit: maybe(within(1e-9, 0.1)),
  biasLimit: maybe(within(1e-6, 0.99)),
  significance: maybe(within(1e-9, 0.5)),
  bandDraws: maybe(fc.integer({ min: 100, max: 1e6 })),
  seed: maybe(fc.integer({ min: 0, max: 4294967295 })),
})

const sensor = (low: fc.Arbitrary<number>, high: fc.Arbitrary<number>) =>
  fc.record({ scaleAccuracy: within(0, 0.49), floor: maybe(low), ceiling: maybe(high) })

/** Any setup that can exist, with names that are awkward in YAML. */
export const anySetup: fc.Arbitrary<Setup> = fc
  .record({
    rig: fc.record({
      name: words,
      torque: sensor(within(1e-9, 0.1), within(0.2, 999)),
      axialForce: sensor(within(1e-6, 1), within(2000, 99999)),
      angularVelocity: fc.record({ floor: maybe(within(1e-9, 1)), ceiling: maybe(within(2000, 99999)) }),
      inertia: maybe(within(1e-9, 0.9)),
      torsionalStiffness: maybe(within(1e-3, 1e5)),
    }),
    fixture: anyFixture,
    pair: fc.record({ upper: surface, lower: surface }),
    liquid: maybe(
      fc.record({
        name: words,
        viscosity: maybe(within(1e-5, 1e5)),
        byTemperature: maybe(
          fc.array(fc.record({ viscosity: within(1e-5, 1e5), at: within(200, 500) }), { minLength: 1, maxLength: 3 }),
        ),
        byRate: maybe(
          fc.array(fc.record({ viscosity: within(1e-5, 1e5), at: within(1e-3, 1e5) }), { minLength: 1, maxLength: 3 }),
        ),
      }),
    ),
    run: fc.record({
      axialForce: maybe(within(1e-3, 1000)),
      temperature: maybe(within(0.01, 2000)),
      angularVelocity: maybe(within(1e-9, 1000)),
      sample: maybe(words),
      operator: maybe(words),
      note: maybe(words),
      relativeHumidity: maybe(within(0, 1)),
      roomTemperature: maybe(within(200, 400)),
    }),
    worn: maybe(
      fc.record({
        scars: maybe(fc.array(fc.record({ along: length, across: length }), { minLength: 1, maxLength: 4 })),
        scarUncertainty: maybe(length),
        sections: maybe(fc.array(within(-1e-8, 1e-8), { minLength: 1, maxLength: 4 })),
        sectionUncertainty: maybe(within(1e-14, 1e-8)),
        trackWidth: length,
        trackWidthUncertainty: maybe(length),
        distanceBefore: maybe(within(1e-3, 1e5)),
        growthPerKelvin: maybe(length),
        growthUncertainty: maybe(length),
      }),
    ),
    options,
  })
  .map(withoutUndefined)
