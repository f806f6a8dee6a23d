import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { withCentralDifferences } from '../../../src/core/curve/centralDifferences.ts'
import { curveFamily } from '../../../src/core/curve/curveFamily.ts'
import type { CurveMember, Reach } from '../../../src/core/curve/curveMember.ts'

const reach: Reach = {
  lnSlowest: Math.log(1e-4),
  lnFastest: Math.log(1),
  lnLeast: Math.log(0.05),
  lnMost: Math.log(0.5),
}
const members = Object.values(curveFamily).map((make) => make(reach))
const lnSpeeds = Float64Array.from([1e-4, 1e-3, 3e-3, 0.02, 0.1, 0.7, 1], Math.log)

/** Parameters inside the members' boxes, levels kept among the friction seen so that no branch drowns in rounding. */
const inside = (member: CurveMember): fc.Arbitrary<Float64Array> =>
  fc
    .tuple(
      ...member.names.map((_, j) => {
        const level = member.levels.includes(j)
        const min = level ? reach.lnLeast : member.lower[j]
        const max = level ? reach.lnMost : member.upper[j]
        return fc.double({ min, max, noNaN: true })
      }),
    )
    .map((values) => Float64Array.from(values))

const friction = (member: CurveMember, parameters: Float64Array): Float64Array => {
  const lnFriction = new Float64Array(lnSpeeds.length)
  member.evaluate(parameters, { lnSpeeds, lnFriction })
  return lnFriction
}

describe.each(members.map((member) => ({ name: member.name, member })))('$name', ({ member }) => {
  test('the gradient is that of central differences', () => {
    const size = lnSpeeds.length
    const plain = withCentralDifferences(
      {
        rows: size,
        names: member.names,
        lower: member.lower,
        upper: member.upper,
        evaluate: (parameters, out) => member.evaluate(parameters, { lnSpeeds, lnFriction: out }),
      },
      member.names.map(() => 1),
    )
    fc.assert(
      fc.property(inside(member), (parameters) => {
        const lnFriction = new Float64Array(size)
        const jacobian = new Float64Array(size * member.names.length)
        const other = new Float64Array(size * member.names.length)
        member.evaluate(parameters, { lnSpeeds, lnFriction, jacobian })
        plain.evaluate(parameters, new Float64Array(size), other)
        for (let i = 0; i < jacobian.length; i++) {
          expect(Math.abs(jacobian[i] - other[i])).toBeLessThan(1e-7 * Math.max(1, Math.abs(other[i])))
        }
      }),
    )
  })

  test('levels times c make friction times c', () => {
    fc.assert(
      fc.property(inside(member), fc.double({ min: 0.1, max: 10, noNaN: true }), (parameters, c) => {
        const scaled = parameters.map((p, j) => (member.levels.includes(j) ? p + Math.log(c) : p))
        const before = friction(member, parameters)
        for (const [i, after] of friction(member, scaled).entries())
          expect(after - before[i]).toBeCloseTo(Math.log(c), 10)
      }),
    )
  })

  test('shown parameters put into the plain formula give the same friction', () => {
    fc.assert(
      fc.property(inside(member), (parameters) => {
        const shown = Object.fromEntries(
          member.shown.map(({ name, weights, offset, logarithmic }) => {
            const value = weights.reduce((sum, w, j) => sum + w * parameters[j], offset)
            return [name, logarithmic ? Math.exp(value) : value]
          }),
        )
        for (const [i, lnFriction] of friction(member, parameters).entries()) {
          expect(Math.log(plainFormula(member.name, shown, Math.exp(lnSpeeds[i])))).toBeCloseTo(lnFriction, 9)
        }
      }),
    )
  })
})

/** The members as their doc comments write them. */
function plainFormula(name: CurveMember['name'], p: Record<string, number>, v: number): number {
  switch (name) {
    case 'plateau':
      return p.h
    case 'powerLaw':
      return p.k * v ** p.n
    case 'stribeckExponential':
      return p.c + (p.h - p.c) * Math.exp(-v / p.x0) + p.k * v
    default: {
      const film = p.k * v ** p.n
      const boundary = p.h * v ** (p.l ?? 0)
      return film + (boundary - film) / (1 + (v / p.x0) ** p.m)
    }
  }
}

describe('Stribeck form (after Bongaerts, Fourtouni & Stokes 2007)', () => {
  const wide: Reach = { ...reach, lnSlowest: Math.log(1e-12), lnFastest: Math.log(1e6) }
  const stribeck = curveFamily.stribeck(wide)
  const k = 1
  const n = 0.55
  const parameters = Float64Array.of(Math.log(k) + n * wide.lnFastest, n, Math.log(0.4), Math.log(1e-3), 2)
  const at = (x: number): number => {
    const lnFriction = new Float64Array(1)
    stribeck.evaluate(parameters, { lnSpeeds: Float64Array.of(Math.log(x)), lnFriction })
    return Math.exp(lnFriction[0])
  }

  // Five values computed from the formula with other software, six digits.
  test.for([
    [1e-5, 0.39996],
    [1e-4, 0.396102],
    [1e-3, 0.211194],
    [1e-2, 0.082607],
    [1e-1, 0.28185],
  ])('at %d', ([x, want]) => expect(Math.abs(at(x) / want - 1)).toBeLessThan(1e-5))

  // Limits of the form itself.
  test('slow: the boundary level; fast: the film; at x0: the mean of both', () => {
    expect(at(1e-12)).toBeCloseTo(0.4, 9)
    expect(at(1e6) / (k * 1e6 ** n)).toBeCloseTo(1, 9)
    expect(at(1e-3)).toBeCloseTo((0.4 + k * 1e-3 ** n) / 2, 12)
  })

  test('a sloped boundary with slope zero is a constant one', () => {
    const sloped = curveFamily.stribeckSloped(wide)
    const lnFriction = new Float64Array(1)
    sloped.evaluate(Float64Array.of(...parameters, 0), { lnSpeeds: Float64Array.of(Math.log(2e-3)), lnFriction })
    expect(Math.exp(lnFriction[0])).toBeCloseTo(at(2e-3), 14)
  })
})
