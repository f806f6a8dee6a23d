import { describe, expect, test } from 'vitest'
import { frictionLimits, limitsIn, logAxis, planBasis, planWindow } from '../../../src/core/plan/index.ts'
import { lacquerQuestion, oatQuestion } from './questions.ts'

describe('limits of friction', () => {
  const cases = { lacquerQuestion, oatQuestion }
  test.for(Object.entries(cases))('say of expected friction what the window says: %s', ([, question]) => {
    const speeds = logAxis(question.ask.slowest / 10, question.ask.fastest, 40)
    for (const force of logAxis(question.ask.leastForce / 4, question.ask.mostForce, 12)) {
      const basis = planBasis(question)
      const window = planWindow(basis, { speeds, forces: Float64Array.of(force) })
      const { floor, ceiling, tilt, unsure } = frictionLimits(basis, force, speeds)
      for (let i = 0; i < speeds.length; i++) {
        const broken = limitsIn(window.broken[i])
        const friction = window.friction[i]
        expect(broken.includes('torqueFloor')).toBe(window.frictionLow[i] < floor)
        expect(broken.includes('torqueCeiling')).toBe(window.frictionHigh[i] > ceiling)
        expect(broken.includes('turns')).toBe(friction < tilt[i])
        // At the very border rounding decides.
        if (Math.abs(friction / unsure[i] - 1) > 1e-9) expect(broken.includes('uncertainty')).toBe(friction < unsure[i])
      }
    }
  })

  test('refuses no load', () => {
    expect(() => frictionLimits(planBasis(lacquerQuestion), 0, Float64Array.of(1e-3))).toThrow(RangeError)
  })
})
