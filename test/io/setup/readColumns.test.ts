import { expect, test } from 'vitest'
import { readSetup, setupTemplate } from '../../../src/io/setup/index.ts'

const problemsOf = (text: string) => {
  const read = readSetup(text, 'my.setup.yaml')
  return read.ok ? [] : read.problems
}

test('two columns for one channel', () => {
  const text = `${setupTemplate('discOnPlate')}columns:\n  M: { channel: torque }\n  M2: { channel: torque }\n`
  expect(problemsOf(text)).toMatchObject([{ kind: 'channelTwice', mend: expect.stringContaining('none') }])
  expect(problemsOf(text.replace('M2: { channel: torque }', 'M2: { channel: none }'))).toEqual([])
})

test('several slips in the answers, each told', () => {
  const text = `${setupTemplate('discOnPlate')}columns:
  FF: { chanel: torque }
  M: 5
  z: { unit: }
  v: { unit: mm, unit: m }
  n: { channel: temperature, unit: °X }
`
  expect(problemsOf(text).map(({ kind, place }) => `${place.name} ${kind}`)).toEqual([
    'columns.FF.chanel keyUnknown',
    'columns.M sectionExpected',
    'columns.z.unit valueMissing',
    'columns.v.unit keyTwice',
    'columns.n.unit unitUnfit',
  ])
})
