import { expect, test } from 'vitest'
import { breakawayOf } from '../../../../src/core/reduce/questions/index.ts'
import { channelsInMemory } from '../../../../src/core/terms/index.ts'
import { threeBalls } from '../virtualRuns.ts'

test('a start with the bodies apart is none: the force hangs at its zero, a little under nothing', () => {
  const rows = 400
  const time = Float64Array.from({ length: rows }, (_, row) => row / 50)
  const angularVelocity = time.map((at) => (at < 3 ? 0 : 0.5))
  const angle = time.map((at) => Math.max(0, at - 3) * 0.5)
  const torque = time.map((_, row) => 1e-6 * Math.sin(row * row))
  const channels = channelsInMemory({ time, angularVelocity, angle, torque, axialForce: time.map(() => -0.03) })
  const found = breakawayOf(channels, {
    rig: {
      name: 'invented',
      torque: { scaleAccuracy: 0.01 },
      axialForce: { scaleAccuracy: 0.01 },
      angularVelocity: {},
    },
    fixture: threeBalls,
    pair: { upper: { name: 'ball' }, lower: { name: 'plate' } },
    run: {},
    options: {},
  })
  expect(found.ok ? found.value.starts : found.problems.map(({ kind }) => kind)).toEqual(['noStart'])
})
