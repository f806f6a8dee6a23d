import { expect, test } from 'vitest'
import { asked } from '../../../../src/web/stations/report/asked.ts'

test.for([
  ['Say how both were cleaned in the note “cleaning” of the report.', 'cleaning', []],
  ['Write run.roomTemperature into the setup.', null, ['run.roomTemperature']],
  [
    'One contact. Write pair.upper.elasticModulus and pair.lower.poissonRatio into the setup. The pressure follows.',
    null,
    ['pair.upper.elasticModulus', 'pair.lower.poissonRatio'],
  ],
  [
    'Write pair.lower.roughness into the setup. Say how in the note “surfaces” of the report.',
    'surfaces',
    ['pair.lower.roughness'],
  ],
  ['All of it is there.', null, []],
] as const)('%s', ([text, note, setup]) => {
  expect(asked(text)).toEqual({ note, setup })
})
