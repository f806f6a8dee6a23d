import { expect, test } from 'vitest'
import { clock } from '../../../../src/web/stations/rig-up/clock.ts'

test.for([
  [0, '0:00'],
  [59, '0:59'],
  [760, '12:40'],
  [3725, '1:02:05'],
] as const)('%i s is %s', ([seconds, text]) => {
  expect(clock(seconds)).toBe(text)
})
