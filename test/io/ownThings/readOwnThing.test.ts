import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import {
  ownJsonSchema,
  ownStarters,
  ownTemplate,
  readFlowCurve,
  readOwnThing,
} from '../../../src/io/ownThings/index.ts'

const body = `body:
  name: birch plywood
  synonyms: ply, ours
  source: bending test
  family: natural
  elasticModulus: { value: 9 GPa, low: 8 GPa, high: 10 GPa }
  poissonRatio: { value: 0.35, source: handbook }
  hardness: { scale: Brinell N/mm², value: 30 }
  strength: { kind: flexural, value: 40 MPa }
`
const liquid = `liquid:
  name: syrup
  source: bottle 3
  viscosities: 3.5 mPa·s at 35 °C; 5.1 mPa·s at 20 °C
  viscosityUncertainty: 2 %
  pressureViscosity: 0.5
`

const problems = (text: string) => {
  const read = readOwnThing(text, 'own.yaml')
  return read.ok ? [] : read.problems
}

test('a body becomes SI, each value with its span and source', () => {
  const read = readOwnThing(body, 'own.yaml')
  expect(read.ok && read.value).toMatchObject({
    kind: 'material',
    material: {
      name: 'birch plywood',
      synonyms: ['ply', 'ours'],
      family: 'natural',
      elasticModulus: { value: 9e9, low: 8e9, high: 10e9, source: 'bending test', seen: 'own' },
      poissonRatio: { value: 0.35, low: 0.35, high: 0.35, source: 'handbook' },
      hardness: [{ scale: 'Brinell N/mm²', value: 30 }],
      strength: { kind: 'flexural', value: 40e6 },
    },
  })
})

test('a name of the table changes what is given and keeps the rest', () => {
  const read = readOwnThing(
    'body:\n  name: PMMA\n  source: our sheet\n  elasticModulus: { value: 3 GPa }\n',
    'own.yaml',
  )
  expect(read.ok && read.value.kind === 'material' && read.value.material.poissonRatio).toBeUndefined()
  expect(read.ok).toBe(true)
})

test('viscosities are sorted by temperature', () => {
  const read = readOwnThing(liquid, 'own.yaml')
  if (!read.ok || read.value.kind !== 'liquid') throw new Error('it is a liquid')
  const { points, shared } = read.value.liquid
  expect(points.map(({ temperature }) => temperature)).toEqual([293.15, 308.15])
  expect(points[0].viscosity).toBeCloseTo(5.1e-3, 12)
  expect(points[1].viscosity).toBeCloseTo(3.5e-3, 12)
  expect(points[1].viscosityUncertainty).toBeCloseTo(7e-5, 12)
  expect(shared.pressureCoefficient).toBeCloseTo(5e-10, 20)
})

describe('bad input is told with its line and its mend', () => {
  test.for([
    ['Poisson ratio 0.7', body.replace('value: 0.35', 'value: 0.7'), 7, 'at most 0.5'],
    ['a negative modulus', body.replace('value: 9 GPa', 'value: -9 GPa'), 6, 'more than 0'],
    ['a value outside its span', body.replace('value: 9 GPa', 'value: 11 GPa'), undefined, 'low ≤ value ≤ high'],
    ['a value without its unit', body.replace('9 GPa', '9'), 6, 'GPa'],
    ['a mistyped key', body.replace('family', 'famly'), 5, 'Did you mean "family"'],
    ['no modulus', 'body:\n  name: felt\n  source: x\n', undefined, 'Give both.'],
    ['no source', body.replace('  source: bending test\n', ''), 1, 'Add "source:'],
    ['a viscosity without temperature', liquid.replace(' at 35 °C', ''), 4, '3.5 mPa·s at 35 °C'],
    ['neither viscosities nor flow curve', 'liquid:\n  name: x\n  source: y\n', undefined, 'Add "viscosities'],
    ['a body and a liquid', body + liquid, undefined, 'a file of its own'],
    ['nothing', '# empty\n', undefined, ''],
    ['a list', '- 1\n', undefined, ''],
  ] as const)('%s', ([, text, line, mend]) => {
    const found = problems(text)
    expect(found.length).toBeGreaterThan(0)
    expect(found[0]).toMatchObject({ class: 'badInput', place: { file: 'own.yaml' } })
    if (line !== undefined) expect(found[0].place.line).toBe(line)
    expect(found[0].mend).toContain(mend)
  })

  test('whatever the text, it never throws', () => {
    fc.assert(fc.property(fc.string(), (text) => void readOwnThing(`body:\n  name: ${text}\n`, 'x')))
    fc.assert(fc.property(fc.string(), (text) => void readOwnThing(text, 'x')))
    fc.assert(fc.property(fc.string(), (text) => void readFlowCurve(`shear rate [1/s];viscosity [Pa·s]\n${text}`, 'x')))
  })
})

describe('a flow curve', () => {
  const want = [
    { shearRate: 0.1, viscosity: 0.045 },
    { shearRate: 10, viscosity: 0.012 },
  ]
  test.for([
    ['semicolons and decimal commas', '# invented\nScherrate [1/s];Viskosität [mPa·s]\n0,1;45\n10;12\n'],
    [
      'tabs with a line of units',
      'Shear rate\tShear stress\tViscosity\n1/s\tPa\tmPa·s\n0.1\t4.5e-3\t45\n10\t0.12\t12\n',
    ],
    ['commas', 'shear_rate_1/s,viscosity (Pa·s)\n0.1,0.045\n10,0.012\n'],
    ['shear stress alone', 'Shear Rate [1/s];Shear Stress [Pa]\n0.1;0.0045\n10;0.12\n'],
    ['blanks', 'shear rate [1/s]   viscosity [mPa·s]\n0.1   45\n10   12\n\n'],
  ])('with %s', ([, text]) => {
    const read = readFlowCurve(text, 'curve.csv')
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    expect(read.value.map(({ shearRate }) => shearRate)).toEqual(want.map(({ shearRate }) => shearRate))
    for (const [i, { viscosity }] of read.value.entries()) expect(viscosity).toBeCloseTo(want[i].viscosity, 12)
  })

  test.for([
    ['no shear rate', 'time [s];viscosity [Pa·s]\n1;2\n', undefined],
    ['no unit', 'shear rate;viscosity\n1;2\n', 1],
    ['a word among numbers', 'shear rate [1/s];viscosity [Pa·s]\n1;2\n2;n/a\n', 3],
    ['a negative viscosity', 'shear rate [1/s];viscosity [Pa·s]\n1;-2\n', 2],
  ] as const)('with %s is refused', ([, text, line]) => {
    const read = readFlowCurve(text, 'curve.csv')
    expect(read.ok ? [] : read.problems[0]).toMatchObject({ kind: 'flowCurveUnreadable', place: { file: 'curve.csv' } })
    expect(read.ok ? 0 : read.problems[0].place.line).toBe(line)
  })
})

describe('schema and starters', () => {
  const shipped = JSON.parse(readFileSync('schema/material.schema.json', 'utf8'))
  const validate = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true }).compile(shipped)

  test('the shipped schema is the one that the key table gives (node scripts/setupSchema.ts writes it)', () => {
    expect(shipped).toEqual(ownJsonSchema())
  })

  test.for([...ownStarters])('the starter "%s" reads and keeps to the schema', (starter) => {
    const text = ownTemplate(starter)
    const read = readOwnThing(text, 'own.yaml')
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    expect(validate(parse(text)), JSON.stringify(validate.errors)).toBe(true)
  })

  test('a mistyped key breaks the schema too', () => {
    expect(validate(parse(body))).toBe(true)
    expect(validate(parse(body.replace('family', 'famly')))).toBe(false)
  })
})
