import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { type Dimension, printExact } from '../../src/core/quantity/index.ts'
import { reduceDefaults } from '../../src/core/reduce/index.ts'
import { type RemarkKind, remarkKinds, remarkWords } from '../../src/core/terms/index.ts'

const page = readFileSync(new URL('../../docs/remarks.md', import.meta.url), 'utf8')
const sections = new Map(
  page
    .split(/^### /m)
    .slice(1)
    .map((section) => [section.slice(0, section.indexOf('\n')), section] as const),
)

test('docs/remarks.md has an entry for every kind of remark, and no other', () => {
  expect([...sections.keys()].sort()).toEqual([...remarkKinds].sort())
})

test.for([...remarkKinds])('%s: words, weight, meaning, limit and what to do', (kind) => {
  const section = sections.get(kind) ?? ''
  expect(section).toContain(`\n${remarkWords[kind].words} · ${remarkWords[kind].weight}\n`)
  for (const line of ['- Means: ', '- Limit: ', '- Do: ']) expect(section).toContain(line)
})

type NumberOption = Exclude<keyof typeof reduceDefaults, 'segmentation'>

test.for<[RemarkKind, NumberOption, Dimension]>([
  ['belowTorqueFloor', 'floorFactor', 'count'],
  ['contactLost', 'contactShare', 'ratio'],
  ['speedNotReached', 'settleTolerance', 'ratio'],
  ['forceOffTarget', 'forceTolerance', 'ratio'],
  ['notSteady', 'significance', 'ratio'],
  ['forceRipple', 'forceRippleLimit', 'ratio'],
  ['frictionRipple', 'frictionRippleLimit', 'ratio'],
  ['temperatureOff', 'temperatureTolerance', 'temperatureDifference'],
  ['gapCreep', 'gapCreepLimit', 'length'],
  ['directionsDiffer', 'biasLimit', 'ratio'],
  ['scatterBeyondOwn', 'significance', 'ratio'],
])('%s names the option %s with its default', ([kind, option, dimension]) => {
  const section = (sections.get(kind) ?? '').replace(/\s+/g, ' ')
  expect(section).toContain(`\`${option}\``)
  expect(section.toLowerCase()).toContain(`default ${printExact(reduceDefaults[option], dimension).toLowerCase()}`)
})
