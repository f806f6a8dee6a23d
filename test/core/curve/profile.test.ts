import { describe, expect, test } from 'vitest'
import { averagedInterval, rootAlong } from '../../../src/core/curve/averagedInterval.ts'
import { curveFamily } from '../../../src/core/curve/curveFamily.ts'
import { type Observations, reachOf } from '../../../src/core/curve/curvePoint.ts'
import { linearQuantity, smoothQuantity } from '../../../src/core/curve/curveQuantity.ts'
import { fitMember, withScatter } from '../../../src/core/curve/fitMember.ts'
import { leastFriction } from '../../../src/core/curve/leastFriction.ts'
import { leastSpeedProfile, profile, type SignedRoot } from '../../../src/core/curve/profile.ts'

const straight = (centre: number, sd: number): SignedRoot => ({
  at: [-3, -1, 0, 1, 3].map((r) => centre + r * sd),
  root: [-3, -1, 0, 1, 3],
  stuckLow: false,
  stuckHigh: false,
})

const wide = { low: -100, high: 100 }

describe('interval from profiles', () => {
  test('one straight root: ±1.96 standard deviations', () => {
    const { low, high } = averagedInterval([{ profile: straight(5, 2), weight: 0.3 }], wide)
    expect(low).toBeCloseTo(5 - 2 * 1.959964, 4)
    expect(high).toBeCloseTo(5 + 2 * 1.959964, 4)
  })

  test('two far apart: each end leaves 5 % of its own tail', () => {
    // Half the weight each: at the low end the upper one has no tail, so the lower keeps 2 × 2.5 %; z(5 %) = 1.644854.
    const both = [straight(0, 1), straight(50, 1)].map((root) => ({ profile: root, weight: 0.5 }))
    const { low, high } = averagedInterval(both, wide)
    expect(low).toBeCloseTo(-1.644854, 4)
    expect(high).toBeCloseTo(51.644854, 4)
  })

  test('an end outside the reach is open', () => {
    const { low, high } = averagedInterval([{ profile: straight(0, 1), weight: 1 }], { low: -1, high: 9 })
    expect(low).toBeNull()
    expect(high).toBeCloseTo(1.959964, 4)
  })

  test('a root that is stuck before it is large leaves its end open', () => {
    const stuck: SignedRoot = { at: [0, 1], root: [0, 1.2], stuckLow: true, stuckHigh: true }
    expect(averagedInterval([{ profile: stuck, weight: 1 }], wide)).toEqual({ low: null, high: null })
  })
})

/** A power law of known variance: linear in its parameters, so that everything about it is exact. */
const line: Observations = {
  lnSpeeds: Float64Array.of(-7, -6, -4, -3, -1),
  lnFriction: Float64Array.of(-1.2, -1.1, -0.9, -0.85, -0.5),
  own: Float64Array.of(0.01, 0.02, 0.01, 0.03, 0.02),
  freedom: new Float64Array(5).fill(1e9),
}
const lineFit = withScatter(fitMember(curveFamily.powerLaw(reachOf(line)), line), 0)

describe('profile of a linear member', () => {
  test.for([
    { name: 'a parameter', weights: [0, 1] },
    { name: 'a sum', weights: [1, 2.5] },
  ])('$name: the root is its distance in standard deviations', ({ weights }) => {
    const quantity = linearQuantity(Float64Array.from(weights))
    const [a, b] = weights
    const c = lineFit.covariance
    const sd = Math.sqrt(a * a * c[0] + 2 * a * b * c[1] + b * b * c[3])
    const best = quantity.value(lineFit.parameters)
    const root = rootAlong(profile(lineFit, quantity, { low: best - 20 * sd, high: best + 20 * sd, root: 3 }))
    for (const z of [-2.5, -1.96, -0.7, 0.4, 1.96, 2.9]) expect(root(best + z * sd)).toBeCloseTo(z, 2)
  })

  test('a curved scale of the same quantity gives the same root', () => {
    const plain = linearQuantity(Float64Array.of(0, 1))
    const bent = smoothQuantity((parameters) => Math.exp(3 * parameters[1]))
    const best = plain.value(lineFit.parameters)
    const roots = [
      rootAlong(profile(lineFit, plain, { low: best - 1, high: best + 1, root: 3 })),
      rootAlong(profile(lineFit, bent, { low: Math.exp(3 * best - 3), high: Math.exp(3 * best + 3), root: 3 })),
    ]
    const sd = Math.sqrt(lineFit.covariance[3])
    for (const z of [-1.96, 1.96]) {
      expect(roots[0](best + z * sd)).toBeCloseTo(roots[1](Math.exp(3 * (best + z * sd))), 2)
    }
  })
})

describe('speed of least friction', () => {
  const lnSpeeds = Float64Array.from({ length: 15 }, (_, i) => Math.log(1e-4) + (i / 14) * Math.log(1e4))
  const reach = { lnSlowest: lnSpeeds[0], lnFastest: lnSpeeds[14], lnLeast: -4, lnMost: 0 }
  const member = curveFamily.stribeck(reach)
  const truth = Float64Array.of(Math.log(0.4), 0.5, Math.log(0.3), Math.log(5e-3), 1.8)
  const lnFriction = new Float64Array(15)
  member.evaluate(truth, { lnSpeeds, lnFriction })
  const observations: Observations = {
    lnSpeeds,
    lnFriction,
    own: new Float64Array(15).fill(0.01),
    freedom: new Float64Array(15).fill(1e9),
  }

  test('the root rises through zero at the minimum', () => {
    const fit = withScatter(fitMember(member, observations), 0)
    const best = leastFriction(member, fit.parameters, reach).lnSpeed
    const { at, root } = leastSpeedProfile(fit, best, { low: reach.lnSlowest, high: reach.lnFastest, root: 3 })
    expect(at[root.indexOf(0)]).toBeCloseTo(best, 12)
    for (let k = 1; k < at.length; k++) {
      expect(at[k]).toBeGreaterThan(at[k - 1])
      expect(root[k]).toBeGreaterThanOrEqual(root[k - 1])
    }
    expect(root[0]).toBeLessThan(-3)
  })

  test('a falling curve has its minimum beyond the data: all roots are below zero', () => {
    const falling = Float64Array.of(Math.log(0.02), 0, Math.log(0.3), Math.log(5e-2), 1.2)
    const fallen = new Float64Array(15)
    member.evaluate(falling, { lnSpeeds, lnFriction: fallen })
    const fit = withScatter(fitMember(member, { ...observations, lnFriction: fallen }), 0)
    const { root } = leastSpeedProfile(fit, reach.lnFastest, { low: reach.lnSlowest, high: reach.lnFastest, root: 3 })
    expect(Math.max(...root)).toBeLessThanOrEqual(0)
    expect(Math.min(...root)).toBeLessThan(-3)
  })
})
