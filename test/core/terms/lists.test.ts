import { expect, test } from 'vitest'
import {
  channelNames,
  curveModelNames,
  done,
  doubtKinds,
  failed,
  type Problem,
  remarkKinds,
  sharedSources,
  windowLimits,
} from '../../../src/core/terms/index.ts'

test.for([
  ['channelNames', channelNames],
  ['curveModelNames', curveModelNames],
  ['doubtKinds', doubtKinds],
  ['remarkKinds', remarkKinds],
  ['sharedSources', sharedSources],
  ['windowLimits', windowLimits],
] as const)('%s holds plain camel-case names, each once: they are keys in files that others read', ([, names]) => {
  expect(new Set(names).size).toBe(names.length)
  for (const name of names) expect(name).toMatch(/^[a-z][a-zA-Z]*$/)
})

test('an outcome is a value or every problem at once', () => {
  const problem = (line: number): Problem => ({
    kind: 'notANumber',
    class: 'badInput',
    place: { file: 'a.csv', line },
    what: `line ${line} is not a number`,
    mend: 'Write a number.',
  })
  expect(done(3)).toEqual({ ok: true, value: 3 })
  expect(failed(problem(1), problem(2))).toEqual({ ok: false, problems: [problem(1), problem(2)] })
})
