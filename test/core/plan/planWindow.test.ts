import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  frictionAt,
  frictionModel,
  limitsIn,
  logAxis,
  measurableRun,
  measurableShare,
  type PlanLimit,
  type PlanQuestion,
  planBasis,
  planWindow,
  pointUncertainty,
  stepTime,
  turnTime,
} from '../../../src/core/plan/index.ts'
import { lacquerQuestion, oatQuestion } from './questions.ts'

const axes = { speeds: logAxis(1e-5, 10, 60), forces: logAxis(1e-3, 200, 50) }

const cellAt = (question: PlanQuestion, speed: number, force: number) => {
  const window = planWindow(planBasis(question), { speeds: Float64Array.of(speed), forces: Float64Array.of(force) })
  return { limits: limitsIn(window.broken[0]), friction: window.friction[0], uncertainty: window.uncertainty[0] }
}

describe('each limit bites where its own arithmetic says', () => {
  const base = { ...lacquerQuestion, ask: { ...lacquerQuestion.ask, mostTime: 1e9, mostDistance: 1e9 } }
  const ask = (more: Partial<PlanQuestion['ask']>): PlanQuestion => ({ ...base, ask: { ...base.ask, ...more } })

  test.for<{ limit: PlanLimit; question: PlanQuestion; free: [number, number]; barred: [number, number] }>([
    // A zero known to 0.5 µN·m makes 5 % at 10 µN·m: µ_low·r·F = 0.25/1.6·0.015·F is that at 4.27 mN.
    {
      limit: 'torqueFloor',
      question: base,
      free: [0.01, 0.0043],
      barred: [0.01, 0.0042],
    },
    // µ_high·r·F = 0.25·1.6·0.015·F over 10 mN·m: F over 1.667 N.
    {
      limit: 'torqueCeiling',
      question: { ...base, rig: { ...base.rig, torque: { ...base.rig.torque, ceiling: 0.01 } } },
      free: [0.01, 1.66],
      barred: [0.01, 1.67],
    },
    { limit: 'forceTooLow', question: base, free: [0.01, 0.0101], barred: [0.01, 0.0099] },
    { limit: 'forceTooHigh', question: base, free: [0.01, 49.9], barred: [0.01, 50.1] },
    // Ω·r: 1e-5 rad/s and 300 rad/s on 15 mm.
    { limit: 'speedTooLow', question: base, free: [1.51e-7, 1], barred: [1.49e-7, 1] },
    { limit: 'speedTooHigh', question: base, free: [4.49, 1], barred: [4.51, 1] },
    // One ball alone: F·R_t over 0.06 N·m, F over 4 N.
    {
      limit: 'tiltingMoment',
      question: {
        ...ask({ mostTiltingMoment: 0.06 }),
        fixture: { ...base.fixture, balls: 1 } as PlanQuestion['fixture'],
      },
      free: [0.01, 3.99],
      barred: [0.01, 4.01],
    },
    // One turn within 120 s: 2π·15 mm/120 s = 0.785 mm/s; below, a tilt of 2° shifts µ by more than 5 %.
    {
      limit: 'turns',
      question: { ...base, noise: { tilt: 0.5 } },
      free: [7.86e-4, 1],
      barred: [7.4e-4, 1],
    },
  ])('$limit', ({ limit, question, free, barred }) => {
    expect(cellAt(question, ...free).limits).not.toContain(limit)
    expect(cellAt(question, ...barred).limits).toContain(limit)
  })

  test('time: one whole turn per point down to 0.1 mm/s takes 1.3 h', () => {
    const whole = ask({
      slowest: 1e-4,
      fastest: 1,
      perDecade: 10,
      direction: 'up',
      turns: 1,
      leastDwell: 0.001,
      mostDwell: 1e9,
    })
    const within = (hours: number) => ({ ...whole, ask: { ...whole.ask, mostTime: hours * 3600 } })
    expect(cellAt(within(1.25), 1e-4, 5).limits).toContain('time')
    expect(cellAt(within(1.35), 1e-4, 5).limits).not.toContain('time')
  })

  test('distance: the sweep up to a speed, both ways, with the conditioning', () => {
    const short = ask({
      slowest: 0.01,
      fastest: 0.1,
      perDecade: 1,
      direction: 'upAndDown',
      turns: 0.001,
      leastDwell: 10,
    })
    // 2·(0.01·10 + 0.1·10) + 2 m = 4.2 m.
    const within = (mostDistance: number) => ({ ...short, ask: { ...short.ask, mostDistance } })
    expect(cellAt(within(4.21), 0.1, 5).limits).not.toContain('distance')
    expect(cellAt(within(4.19), 0.1, 5).limits).toContain('distance')
    expect(cellAt(within(4.19), 0.01, 5).limits).not.toContain('distance')
  })

  test('pressure: first yield of lacquer, p₀ = 1.6·Y within what its Poisson ratio changes', () => {
    // p₀ = (6WE*²/π³R²)^⅓ backwards; 1.61 Y for ν = 0.3, a little more for 0.35.
    const modulus = 1 / ((1 - 0.35 ** 2) / 2.5e9 + (1 - 0.3 ** 2) / 210e9)
    const loadAt = (pressure: number) => (Math.PI ** 3 * 0.003175 ** 2 * pressure ** 3) / (6 * modulus ** 2)
    expect(cellAt(base, 0.01, 3 * loadAt(1.58 * 60e6)).limits).not.toContain('pressure')
    expect(cellAt(base, 0.01, 3 * loadAt(1.75 * 60e6)).limits).toContain('pressure')
  })

  test('coating: δ = a²/R over a tenth of 60 µm', () => {
    const modulus = 1 / ((1 - 0.35 ** 2) / 2.5e9 + (1 - 0.3 ** 2) / 210e9)
    const load = (4 / 3) * modulus * Math.sqrt(0.003175) * 6e-6 ** 1.5
    expect(cellAt(base, 0.01, 2.99 * load).limits).not.toContain('coating')
    expect(cellAt(base, 0.01, 3.01 * load).limits).toContain('coating')
  })

  test('wear: the scar is as wide as the elastic contact, d⁴ = 64RV/π', () => {
    const rate = 1e-15
    const worn = { ...base, bears: { ...base.bears, upper: { wearRate: rate } } }
    const modulus = 1 / ((1 - 0.35 ** 2) / 2.5e9 + (1 - 0.3 ** 2) / 210e9)
    const a = Math.cbrt((0.75 * 1 * 0.003175) / modulus)
    const distance = (Math.PI * (2 * a) ** 4) / (64 * 0.003175 * rate * 1)
    const short = (metres: number) => ({
      ...worn,
      ask: {
        ...worn.ask,
        slowest: 0.01,
        fastest: 0.01,
        direction: 'up' as const,
        turns: 0.001,
        leastDwell: metres / 0.01,
        mostDwell: 1e12,
        conditioningDistance: 0,
      },
    })
    expect(cellAt(short(distance * 0.99), 0.01, 3).limits).not.toContain('wear')
    expect(cellAt(short(distance * 1.01), 0.01, 3).limits).toContain('wear')
  })
})

test.for([
  ['lacquer', lacquerQuestion],
  ['oat drink', oatQuestion],
] as const)('%s: the plane agrees with its single places', ([, question]) => {
  const basis = planBasis(question)
  const window = planWindow(basis, axes)
  const model = frictionModel(question, basis.contact)
  const { ask } = question
  for (let j = 0; j < axes.forces.length; j += 7) {
    for (let i = 0; i < axes.speeds.length; i += 9) {
      const k = j * axes.speeds.length + i
      const one = frictionAt(model, axes.speeds[i], window.byForce.load[j])
      expect(window.friction[k] / one.value).toBeCloseTo(1, 10)
      expect(window.frictionLow[k] / one.low).toBeCloseTo(1, 10)
      expect(window.frictionHigh[k] / one.high).toBeCloseTo(1, 10)
      const dwell = stepTime(axes.speeds[i], basis.geometry.lever, {
        turns: ask.turns,
        least: ask.leastDwell,
        most: ask.mostDwell,
      })
      const turns = dwell / turnTime(axes.speeds[i], basis.geometry.lever)
      const told = pointUncertainty(
        { friction: one.value, force: axes.forces[j], dwell, turns },
        { rig: question.rig, geometry: basis.geometry, noise: basis.noise },
      )
      expect(window.uncertainty[k] / told.total).toBeCloseTo(1, 10)
    }
  }
})

test('nothing in a window is NaN, whatever pair and rig', () => {
  const size = (low: number, high: number) =>
    fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp)
  fc.assert(
    fc.property(
      fc.record({
        elasticModulus: size(1e3, 1e12),
        viscosity: size(1e-4, 1e3),
        roughness: size(1e-9, 1e-4),
        boundary: size(1e-3, 2),
        liquid: fc.boolean(),
      }),
      ({ elasticModulus, viscosity, roughness, boundary, liquid }) => {
        const question: PlanQuestion = {
          ...oatQuestion,
          pair: { ...oatQuestion.pair, lower: { ...oatQuestion.pair.lower, elasticModulus, roughness } },
          liquid: liquid ? { name: 'any', viscosity } : undefined,
          expected: { ...oatQuestion.expected, boundary },
        }
        const window = planWindow(planBasis(question), { speeds: logAxis(1e-6, 10, 12), forces: logAxis(1e-3, 100, 9) })
        for (const values of [
          window.friction,
          window.frictionLow,
          window.frictionHigh,
          window.uncertainty,
          window.lambda ?? [],
        ]) {
          for (const value of values) expect(Number.isFinite(value)).toBe(true)
        }
        for (const [k, value] of window.friction.entries()) {
          expect(window.frictionLow[k]).toBeLessThanOrEqual(value)
          expect(window.frictionHigh[k]).toBeGreaterThanOrEqual(value)
        }
      },
    ),
    { numRuns: 60 },
  )
})

test('an unknown modulus judges no pressure, and says no λ', () => {
  const { elasticModulus: _, ...lower } = lacquerQuestion.pair.lower
  const window = planWindow(planBasis({ ...lacquerQuestion, pair: { ...lacquerQuestion.pair, lower } }), axes)
  expect(window.lambda).toBeNull()
  expect([...window.broken].some((mask) => limitsIn(mask).includes('pressure'))).toBe(false)
})

test('the widest run of speeds is found', () => {
  const basis = planBasis({ ...lacquerQuestion, bears: { upper: {}, lower: {} } })
  const window = planWindow(basis, { speeds: logAxis(1e-5, 1, 200), forces: Float64Array.of(0.5, 1) })
  const run = measurableRun(window, 0)
  expect(run).not.toBeNull()
  expect(measurableShare(window, 0)).toBeGreaterThan(0.3)
  expect(run?.count).toBeLessThanOrEqual(200 * measurableShare(window, 0) + 1e-9)
})
