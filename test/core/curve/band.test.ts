import { describe, expect, test } from 'vitest'
import { band } from '../../../src/core/curve/band.ts'
import { curveFamily } from '../../../src/core/curve/curveFamily.ts'
import { type Observations, reachOf } from '../../../src/core/curve/curvePoint.ts'
import { fitMember, withScatter } from '../../../src/core/curve/fitMember.ts'
import { randomFrom } from '../../../src/core/numeric/index.ts'

const line: Observations = {
  lnSpeeds: Float64Array.of(-7, -6, -4, -3, -1),
  lnFriction: Float64Array.of(-1.2, -1.1, -0.9, -0.85, -0.5),
  own: Float64Array.of(0.01, 0.02, 0.01, 0.03, 0.02),
  freedom: new Float64Array(5).fill(1e9),
}
const reach = reachOf(line)
const fit = withScatter(fitMember(curveFamily.powerLaw(reach), line), 0)
const request = { fit, fits: [{ fit, weight: 1 }], reach, draws: 4000, speeds: 9 }

describe('band', () => {
  test('of a straight line: ±1.96 standard deviations of the line', () => {
    const middle = (reach.lnSlowest + reach.lnFastest) / 2
    for (const { slidingSpeed, friction, low, high } of band({ ...request, random: randomFrom(1) })) {
      const distance = Math.log(slidingSpeed) - middle
      const { covariance: c } = fit
      const sd = Math.sqrt(c[0] + 2 * distance * c[1] + distance ** 2 * c[3])
      // Standard error of a 2.5 % percentile of 4000 normal draws: 4.2 % of a standard deviation.
      expect(Math.abs(Math.log(friction / low) / sd - 1.96)).toBeLessThan(4 * 0.042)
      expect(Math.abs(Math.log(high / friction) / sd - 1.96)).toBeLessThan(4 * 0.042)
    }
  })

  test('the same seed gives the same band, another seed another', () => {
    const draw = (seed: number) => band({ ...request, draws: 100, random: randomFrom(seed) })
    expect(draw(5)).toEqual(draw(5))
    expect(draw(5)).not.toEqual(draw(6))
  })

  test('two members with even weights: the band holds both', () => {
    const level = withScatter(fitMember(curveFamily.plateau(reach), line), 0)
    const both = band({
      ...request,
      fits: [
        { fit, weight: 0.5 },
        { fit: level, weight: 0.5 },
      ],
      random: randomFrom(1),
    })
    expect(both[0].high).toBeGreaterThan(Math.exp(level.parameters[0]))
    expect(both[8].low).toBeLessThan(Math.exp(level.parameters[0]))
    expect(both[0].low).toBeLessThan(Math.exp(-1.2))
  })
})
