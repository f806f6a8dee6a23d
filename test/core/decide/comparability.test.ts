import { describe, expect, test } from 'vitest'
import { type ComparedSystem, comparability, heldNumbers } from '../../../src/core/decide/index.ts'
import type { Setup } from '../../../src/core/terms/index.ts'
import { stepsOf } from './inventedSteps.ts'

const setup: Setup = {
  rig: { name: 'ours', torque: { scaleAccuracy: 0.005 }, axialForce: { scaleAccuracy: 0.005 }, angularVelocity: {} },
  fixture: { kind: 'ballsOnPlate', balls: 3, ballDiameter: 6.35e-3, trackRadius: 15e-3, trackRadiusUncertainty: 2e-5 },
  pair: { upper: { name: 'steel ball' }, lower: { name: 'lacquer A' } },
  liquid: { name: 'wax', viscosity: 0.08 },
  run: { axialForce: 5, temperature: 296.15, sample: 'lacquer A' },
  options: {},
}

const system = (changes: Partial<Setup> = {}, more: Partial<ComparedSystem> = {}): ComparedSystem => ({
  name: 'a record',
  setup: { ...setup, ...changes },
  load: 1.67,
  pressure: null,
  temperature: 296.15,
  segmentation: 'stepColumn',
  directions: [1],
  ...more,
})

const against = (changes: Partial<Setup>, more: Partial<ComparedSystem> = {}) =>
  comparability(system(), system(changes, more))

test('two records of one rig, fixture and pair are comparable', () => {
  expect(against({})).toEqual({ verdict: 'comparable', differences: [], sameRig: true, sameFixture: true })
})

describe('what refuses', () => {
  test.for<{ name: string; changes?: Partial<Setup>; more?: Partial<ComparedSystem> }>([
    {
      name: 'fixture',
      changes: { fixture: { kind: 'discOnPlate', radius: 0.02, pressure: 'uniformWear', radiusUncertainty: 0 } },
    },
    {
      name: 'diameter of the ball',
      changes: { fixture: { ...setup.fixture, ballDiameter: 12.7e-3 } as Setup['fixture'] },
    },
    { name: 'upper body', changes: { pair: { ...setup.pair, upper: { name: 'glass ball' } } } },
    { name: 'lower body', changes: { pair: { ...setup.pair, lower: { name: 'lacquer B' } } } },
    { name: 'liquid', changes: { liquid: undefined } },
    { name: 'liquid', changes: { liquid: { name: 'oil', viscosity: 0.08 } } },
    { name: 'viscosity', changes: { liquid: { name: 'Wax ', viscosity: 0.16 } } },
    // 2^(1/3) − 1 is 26 %, over the tenth at which a load refuses.
    { name: 'load', more: { load: 2 * 1.67 } },
    { name: 'temperature', more: { temperature: 303.15 } },
    { name: 'definition of a value', more: { segmentation: 'ramp' } },
  ])('another $name', ({ name, changes = {}, more = {} }) => {
    const { verdict, differences } = against(changes, more)
    expect(verdict).toBe('refused')
    expect(differences.filter(({ weight }) => weight === 'refuses').map(({ what }) => what)).toContain(name)
  })
})

describe('what only shifts', () => {
  test.for<{ name: string; changes?: Partial<Setup>; more?: Partial<ComparedSystem>; says?: string }>([
    // 1.2^(1/3) − 1 = 6.3 %, the other way round 5.9 %.
    { name: 'load', more: { load: 1.67 / 1.2 }, says: '5.9 %' },
    { name: 'temperature', more: { temperature: 299.15 }, says: '12 %' },
    { name: 'viscosity', changes: { liquid: { name: 'wax', viscosity: 0.1 } }, says: '1.25 times' },
    { name: 'rig', changes: { rig: { ...setup.rig, name: 'theirs' } } },
    { name: 'direction of the speeds', more: { directions: [1, -1] } },
  ])('$name', ({ name, changes = {}, more = {}, says = '' }) => {
    const { verdict, differences } = against(changes, more)
    expect(verdict).toBe('withCare')
    expect(differences.map(({ what }) => what)).toEqual([name])
    expect(differences[0].sentence).toContain(says)
  })
})

test('another lower body of another sample is what is compared', () => {
  const other = { pair: { ...setup.pair, lower: { name: 'lacquer B' } }, run: { ...setup.run, sample: 'lacquer B' } }
  expect(against(other)).toMatchObject({ verdict: 'comparable', differences: [{ weight: 'asked' }] })
})

test('what one of them does not say, nobody knows; what neither says is no difference', () => {
  expect(against({}, { temperature: null })).toMatchObject({
    verdict: 'withCare',
    differences: [{ weight: 'notStated', what: 'temperature' }],
  })
  expect(comparability(system({}, { temperature: null }), system({}, { temperature: null })).verdict).toBe('comparable')
})

describe('numbers', () => {
  const shared = { torqueScale: 0.02 }
  const [first, second] = [0.1, 0.11].map((friction) =>
    stepsOf([], { points: [{ slidingSpeed: 0.01, friction, own: 0.001 * (friction / 0.1), shared }] }),
  )
  const setting = { cancels: true, repeatability: null, betweenLaboratories: null, at: [] }
  const log = Math.log(1.1)

  test('on one rig and fixture the shared part cancels; on two it counts twice', () => {
    const [one] = heldNumbers(first, second, setting)
    expect(one.difference).toBeCloseTo(0.1, 12)
    expect(one.en).toBeCloseTo(log / (1.959964 * Math.hypot(0.01, 0.01)), 5)
    const [two] = heldNumbers(first, second, { ...setting, cancels: false })
    expect(two.en).toBeCloseTo(log / (1.959964 * Math.hypot(0.01, 0.01, 0.02, 0.02)), 5)
  })

  test('scatter between mountings and between laboratories', () => {
    const [one] = heldNumbers(first, second, {
      ...setting,
      cancels: false,
      repeatability: 0.05,
      betweenLaboratories: 0.08,
    })
    expect(one.en).toBeCloseTo(log / (1.959964 * Math.hypot(0.05, 0.05, 0.02, 0.02, 0.08, 0.08)), 5)
  })

  test('without a speed in common there are none', () => {
    expect(heldNumbers(first, stepsOf([0.1, 0.1]), { ...setting, at: [0.5] })).toEqual([])
  })
})
