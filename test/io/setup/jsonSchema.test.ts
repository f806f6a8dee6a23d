import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { reduceDefaults } from '../../../src/core/reduce/index.ts'
import { fixtureKindsWritten } from '../../../src/io/setup/fixtureKeys.ts'
import { readSetup, setupJsonSchema, setupTemplate, writeSetup } from '../../../src/io/setup/index.ts'
import { anySetup } from './anySetup.ts'

const shipped = JSON.parse(readFileSync(new URL('../../../schema/setup.schema.json', import.meta.url), 'utf8'))
const ajv = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true })
const validate = ajv.compile(shipped)
/** As an editor sees the file: YAML 1.2 core, numbers as numbers. */
const accepts = (text: string): boolean => validate(parse(text))

test('the shipped schema is the one that the key table gives (node scripts/setupSchema.ts writes it)', () => {
  expect(shipped).toEqual(setupJsonSchema())
})

test('it is a valid schema of draft-07', () => {
  expect(ajv.validateSchema(shipped)).toBe(true)
  expect(shipped.$schema).toBe('http://json-schema.org/draft-07/schema#')
})

test.for(Object.values(fixtureKindsWritten))('it accepts the starter file for %s', (kind) => {
  expect(accepts(setupTemplate(kind)), JSON.stringify(validate.errors)).toBe(true)
  const on = setupTemplate(kind).replace(/^(\s*)#(?=["\w][^\n]*:)/gm, '$1')
  expect(accepts(on), JSON.stringify(validate.errors)).toBe(true)
})

test('it accepts whatever the writer writes', () => {
  fc.assert(
    fc.property(anySetup, (setup) => {
      expect(accepts(writeSetup(setup)), JSON.stringify(validate.errors)).toBe(true)
    }),
    { numRuns: 200 },
  )
})

describe('schema and reader refuse the same slips', () => {
  const text = setupTemplate('ballsOnPlate')
  test.for<readonly [string, string, string]>([
    ['a mistyped key', 'trackRadius:', 'trackRaduis:'],
    ['a key of another fixture', '  balls: 3', '  balls: 3\n  inclination: 45°'],
    ['an unknown kind', 'kind: balls on plate', 'kind: bowls on plate'],
    ['a missing key', '  balls: 3\n', ''],
    ['a number without unit', 'trackRadius: 15 mm', 'trackRadius: 15'],
    ['a section where a value belongs', 'trackRadius: 15 mm', 'trackRadius: {}'],
    ['a value where a section belongs', 'run:', 'run: 5\nother:'],
    ['an option of the wrong word', '#segmentation: auto', 'segmentation: steps'],
    ['a fraction of a ball', 'balls: 3', 'balls: 2.5'],
    ['an unknown channel', '#columns:', 'columns: { M: { channel: torqe } }\n#columns:'],
  ])('%s', ([, from, to]) => {
    const slipped = text.replace(from, to)
    expect(slipped).not.toBe(text)
    expect(accepts(slipped)).toBe(false)
    expect(readSetup(slipped, 'setup.yaml').ok).toBe(false)
  })
})

test('the defaults in the schema are those of the reduction', () => {
  const options = shipped.properties.options.properties
  expect(Object.keys(options).sort()).toEqual(Object.keys(reduceDefaults).sort())
  const written = `options:\n${Object.entries<{ default: string }>(options)
    .map(([name, key]) => `  ${name}: ${key.default}\n`)
    .join('')}`
  const read = readSetup(setupTemplate('discOnPlate').replace(/^options:$/m, written.trimEnd()), 'setup.yaml')
  expect(read.ok && read.value.setup.options).toEqual(reduceDefaults)
})
