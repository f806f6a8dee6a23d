import { copyFileSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { fillSetup } from '../../../src/bench/fillSetup.ts'
import { foundThing, keepOwnThing, materialTable, ownThings } from '../../../src/bench/material/index.ts'
import { planFile } from '../../../src/bench/plan/index.ts'
import { readSetup } from '../../../src/io/index.ts'
import { freshLab, kinds, look, outside, temporaryFolder, value } from '../lab/labs.ts'

const creamy = 'examples/oat-drinks/oat-drink-creamy.material.yaml'
const nothing = { materials: [], liquids: [] }

function file(name: string, text: string): string {
  const path = join(temporaryFolder(), name)
  writeFileSync(path, text)
  return path
}

const ply = (modulus = '9 GPa') =>
  file(
    'ply.yaml',
    `body:\n  name: birch plywood\n  source: ours\n  elasticModulus: { value: ${modulus} }\n  poissonRatio: { value: 0.35 }\n`,
  )

test('the flow curve of the demo gives back the law that it was made with', async () => {
  const own = value(await ownThings({ files: [creamy], lab: undefined }, outside))
  const [{ recipe }] = own.liquids
  // Made with Cross 85 and 4 mPa·s, 0.4 s, 0.72 and 1.5 % of noise on each point.
  expect(recipe).toMatchObject({ kind: 'flowCurve', law: 'cross', temperature: 308.15, beyond: true })
  if (recipe.kind !== 'flowCurve') throw new Error('it is a flow curve')
  expect(recipe.parameters.restViscosity).toBeCloseTo(0.085, 2)
  expect(recipe.parameters.time).toBeCloseTo(0.4, 1)
  expect(Math.abs(recipe.parameters.exponent - 0.72)).toBeLessThan(0.03)
  expect(recipe.relativeUncertainty).toBeGreaterThan(0.005)
  expect(recipe.relativeUncertainty).toBeLessThan(0.03)
})

test('kept in the lab it is there for a question, and another value is a new version', async () => {
  const call = await freshLab()
  expect(value(await keepOwnThing(ply(), call, outside))).toMatchObject({
    id: 'birch-plywood',
    version: 1,
    isNew: true,
  })
  expect(value(await keepOwnThing(ply(), call, outside))).toMatchObject({ version: 1, isNew: false })
  expect(kinds(await keepOwnThing(ply('10 GPa'), call, outside))).toEqual(['notUsable']) // a correction needs a reason
  const why = { ...call, why: 'measured again' }
  expect(value(await keepOwnThing(ply('10 GPa'), why, outside))).toMatchObject({ version: 2, isNew: true })
  value(await keepOwnThing(creamy, call, outside))
  const own = value(await ownThings({ files: [], lab: call }, outside))
  expect(own.materials).toMatchObject([{ name: 'birch plywood', elasticModulus: { value: 10e9 } }])
  const question = file(
    'q.yaml',
    readFileSync('examples/oat-drinks/question.yaml', 'utf8')
      .replace('oat drink, plain', 'Oat drink, creamy')
      .replace(/^ {2}viscosity.*\n/gm, ''),
  )
  const planned = value(await planFile(question, own))
  expect(planned.plan.question.flow?.law).toBe('cross')
  expect(planned.taken.join(' ')).toContain('flow curve of the kitchen lab')
  const history = await look(call, async (lab) => value(await lab.history.list({ kind: 'paper' })))
  expect(history.map(({ id, version }) => `${id} ${version}`)).toEqual([
    'lab/material/birch-plywood 1',
    'lab/material/birch-plywood 2',
    'lab/liquid/oat-drink-creamy 1',
  ])
})

test('a file goes before the lab, and the lab before the table', async () => {
  const call = await freshLab()
  value(await keepOwnThing(ply('9 GPa'), call, outside))
  const own = value(await ownThings({ files: [ply('7 GPa')], lab: call }, outside))
  expect(own.materials.map(({ elasticModulus }) => elasticModulus?.value)).toEqual([7e9])
  const { bodies } = value(materialTable(own))
  expect(bodies.filter((body) => body.own).map(({ name }) => name)).toEqual(['birch plywood'])
  expect(bodies.length).toBeGreaterThanOrEqual(26)
})

test('a setup is filled with what is known by name, and reads', async () => {
  const setup = file(
    'wax.setup.yaml',
    readFileSync('examples/lacquer/wax.setup.yaml', 'utf8').replace(/^ {4}(elasticModulus|poissonRatio): .*\n/gm, ''),
  )
  const text = readFileSync(setup, 'utf8').replace(/(lower:\n\s*name: ).*/, '$1birch plywood')
  writeFileSync(setup, text)
  const own = value(await ownThings({ files: [ply()], lab: undefined }, outside))
  const filled = value(await fillSetup(setup, own))
  expect(filled.taken.join(' ')).toContain('birch plywood: modulus 9 GPa')
  const read = value(readSetup(filled.text, 'filled.yaml'))
  expect(read.setup.pair.lower).toMatchObject({ elasticModulus: 9e9, poissonRatio: 0.35 })
  expect(value(await fillSetup(file('again.yaml', filled.text), own)).taken).toEqual([])
})

test('a setup is filled with the flow curve of a thinning liquid, from which the same law comes back', async () => {
  const text = readFileSync('examples/oat-drinks/oat-drink-creamy.setup.yaml', 'utf8')
  const setup = file(
    'oat.setup.yaml',
    text.replace(/(liquid:\n\s*name: ).*/, '$1oat drink, creamy').replace(/^ {2}viscosity.*\n/gm, ''),
  )
  const own = value(await ownThings({ files: [creamy], lab: undefined }, outside))
  const { liquid } = value(readSetup(value(await fillSetup(setup, own)).text, 'filled.yaml')).setup
  expect(liquid?.viscosity).toBeCloseTo(4.982e-3, 6) // at the fastest rate measured
  expect(liquid?.byRate?.map(({ at }) => at).filter((_, i) => i % 3 === 0)).toEqual([0.1, 1, 10, 100, 1000])
  expect(liquid?.byRate?.[3].viscosity).toBeCloseTo(57.35e-3, 4)
})

describe('what is shown', () => {
  test('a body, and a liquid at temperatures within its table', () => {
    expect(value(foundThing('PMMA', nothing))).toMatchObject({ kind: 'body', body: { name: 'PMMA' } })
    const water = value(foundThing('water', nothing, 293.15))
    if (water.kind !== 'liquid') throw new Error('water is a liquid')
    // IAPWS R12-08: 1.0016 mPa·s at 20 °C.
    expect(water.viscosities[0].at.viscosity).toBeCloseTo(1.0016e-3, 6)
    expect(kinds(foundThing('water', nothing, 473.15))).toEqual(['temperatureOutsideTable'])
    expect(kinds(foundThing('moon dust', nothing))).toEqual(['materialUnknown'])
    expect(kinds(foundThing('steel', nothing))).toEqual(['materialAmbiguous'])
  })

  test('a thinning liquid at the rates that were measured', async () => {
    const own = value(await ownThings({ files: [creamy], lab: undefined }, outside))
    const found = value(foundThing('oat drink, creamy', own))
    if (found.kind !== 'liquid') throw new Error('it is a liquid')
    expect(found.viscosities.map(({ shearRate }) => shearRate)).toEqual([0.1, 1, 10, 100, 1000])
  })
})

test.for([
  ['a curve that is not there', 'none.csv', ['fileMissing']],
  ['too few rates', 'short.csv', ['flowCurveTooShort']],
])('%s is told', async ([, curve, want]) => {
  const folder = temporaryFolder()
  copyFileSync(creamy, join(folder, 'own.yaml'))
  writeFileSync(join(folder, 'short.csv'), 'shear rate [1/s];viscosity [Pa·s]\n1;2\n10;1\n')
  const text = readFileSync(creamy, 'utf8').replace(/file: .*/, `file: ${curve}`)
  writeFileSync(join(folder, 'own.yaml'), text)
  expect(kinds(await ownThings({ files: [join(folder, 'own.yaml')], lab: undefined }, outside))).toEqual(want)
})

test('papers that others keep of the lab are taken where they can be used, and passed over where not', async () => {
  const call = await freshLab()
  const value9 = { value: 9e9, low: 9e9, high: 9e9, source: 'ours', seen: 'own' }
  const papers = [
    [
      'material',
      'felt',
      { name: 'felt', elasticModulus: value9, poissonRatio: { ...value9, value: 0.3, low: 0.3, high: 0.3 } },
    ],
    ['material', 'odd', { name: 'odd', elasticModulus: 'stiff' }],
    [
      'liquid',
      'syrup',
      { kind: 'measured', name: 'syrup', source: 'ours', points: [{ temperature: 293.15, viscosity: 0.1 }] },
    ],
    ['liquid', 'none', { kind: 'measured', name: 'none', source: 'ours' }],
    ['rig', 'rig', { name: 'rig' }],
  ] as const
  await look(call, async (lab) => {
    for (const [kind, name, content] of papers) {
      const change = { at: outside.now().toISOString(), who: 'AB', why: '' }
      value(await lab.keepPaper({ subject: 'lab', subjectId: 'lab', kind, name, content, after: 0 }, change))
    }
  })
  const own = value(await ownThings({ files: [], lab: call }, outside))
  expect(own.materials.map(({ name }) => name)).toEqual(['felt'])
  expect(own.liquids.map(({ name }) => name)).toEqual(['syrup'])
})
