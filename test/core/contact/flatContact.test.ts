import { expect, test } from 'vitest'
import { effectiveModulus, flatContact, liftOffTilt, nominalPressure } from '../../../src/core/contact/index.ts'
import { integrate } from '../../../src/core/numeric/index.ts'
import { near, steel } from './near.ts'

test('clutch face of 250 and 175 mm under 4 kN: 159.779 kPa (Shigley, ch. 16)', () => {
  near(nominalPressure(4000, Math.PI * (0.125 ** 2 - 0.0875 ** 2)), 159.779e3, 1e-5)
})

test('lift-off: the pressure of the tilted disc carries load and moment, touches zero, and makes the tilt (Johnson 1985, §3.8)', () => {
  const [load, radius, modulus] = [10, 0.0125, effectiveModulus(steel, steel)]
  const moment = (load * radius) / 3
  // p = F/(2πR√(R² − r²)) + 3M·x/(2πR³√(R² − r²)) is zero all along the lifted edge x = −R.
  near(load / (2 * Math.PI * radius), (3 * moment * radius) / (2 * Math.PI * radius ** 3), 1e-14)
  const turned = integrate((angle) => Math.sin(angle) ** 3, [0, Math.PI / 2]).value
  near((3 * moment * Math.PI * turned) / (2 * Math.PI), moment, 1e-10)
  // Slope in the middle: (1/πE*)∫∫ p cos θ/r² · r dr dθ.
  const slope = integrate(() => 1, [0, Math.PI / 2]).value * ((3 * moment) / (2 * Math.PI * radius ** 3))
  near(slope / modulus, liftOffTilt(load, radius, modulus), 1e-10)
})

test('a hard disc tilted by 0.1° stands on its edge, a soft one lies flat', () => {
  const tilt = Math.PI / 1800
  const disc = { area: Math.PI * 0.0125 ** 2, outerRadius: 0.0125 }
  const hard = flatContact(10, { ...disc, effectiveModulus: effectiveModulus(steel, steel) }, tilt)
  expect(hard.doubts.map(({ kind }) => kind)).toEqual(['edgeLoaded'])
  near(hard.meanPressure, 10 / (Math.PI * 0.0125 ** 2), 1e-14)
  expect(flatContact(10, { ...disc, effectiveModulus: 1e6 }, tilt).doubts).toEqual([])
  expect(flatContact(10, { ...disc, effectiveModulus: 1e11 }).doubts).toEqual([])
})

test.for([
  [() => nominalPressure(-1, 1), /load/],
  [() => nominalPressure(1, 0), /area/],
  [() => liftOffTilt(Number.NaN, 1, 1), /load/],
  [() => flatContact(1, { area: 1, outerRadius: 1, effectiveModulus: 1 }, Number.NaN), /tilt/],
] as const)('refused: %s', ([call, words]) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(words)
})
