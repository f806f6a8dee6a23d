import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { type AmendArgs, amendRecord, type LabCall, showThing, verifyLab } from '../../../src/bench/lab/index.ts'
import { add, demoFolder, freshLab, kinds, look, outside, value } from './labs.ts'

async function waxLab(): Promise<{ call: LabCall; folder: string }> {
  const call = await freshLab()
  const folder = demoFolder('wax')
  value((await add(call, [folder])).done)
  return { call: { ...call, why: 'another fixture' }, folder }
}

/** The setup of the wax with another track radius. */
function otherSetup(folder: string, radius = '16 mm'): string {
  const text = readFileSync(join(folder, 'wax.setup.yaml'), 'utf8')
  const file = join(folder, `other-${radius}.yaml`)
  writeFileSync(file, text.replace('trackRadius: 15 mm', `trackRadius: ${radius}`))
  return file
}

const amend = (call: LabCall, more: Partial<AmendArgs>) =>
  amendRecord({ word: 'wax.csv', names: {}, facts: {}, ...more }, call, outside)

test('another setup: a new version that supersedes, a new result that counts, and all that was there before', async () => {
  const { call, folder } = await waxLab()
  const { before, after, brief } = value(await amend(call, { setup: otherSetup(folder) }))
  expect(after).toMatchObject({ version: 2, supersedes: 1, change: { who: 'MK', why: 'another fixture' } })
  expect(brief?.points).toBe(17)
  const shown = value(await showThing('wax.csv', call, outside))
  if (shown.kind !== 'record') throw new Error('it is a record')
  expect(shown.versions.map(({ setup }) => setup)).toEqual([before.setup, after.setup])
  expect(shown.results.map(({ origin }) => origin.setup)).toEqual([before.setup, after.setup])
  expect(shown.current?.id).toBe(shown.results[1].id)
  // µ = M/(r·F): a lever 16/15 as long makes friction 15/16 of what it was.
  const friction = async (id: string) =>
    JSON.parse(await look(call, async (lab) => value(await lab.results.text(id)))).points[0].friction
  const [old, fresh] = await Promise.all(shown.results.map(({ id }) => friction(id)))
  expect(fresh / old).toBeCloseTo(15 / 16, 6) // the ripple of a partial turn is estimated in steps that end before that
  expect(value(await verifyLab({ word: undefined, keep: false, threads: 0 }, call, outside))).toMatchObject({
    ...{ same: 2, findings: [], notReduced: [] },
  })
})

test('the same again changes nothing; going back makes the old result count again', async () => {
  const { call, folder } = await waxLab()
  const setup = otherSetup(folder)
  value(await amend(call, { setup }))
  expect(value(await amend(call, { setup })).after.version).toBe(2)
  expect(value(await amend(call, { setup: join(folder, 'wax.setup.yaml') })).after.version).toBe(3)
  const shown = value(await showThing('wax.csv', call, outside))
  if (shown.kind !== 'record') throw new Error('it is a record')
  expect(shown.results).toHaveLength(2)
  expect(shown.current?.id).toBe(shown.results[0].id)
})

test('what people say, with a sample that is new', async () => {
  const { call } = await waxLab()
  const { after, brief } = value(
    await amend(call, { names: { sample: 'Wax, old tin' }, facts: { replicate: 2, mountedBy: 'AB' } }),
  )
  expect(after).toMatchObject({ version: 2, sample: 'wax-old-tin', replicate: 2, mountedBy: 'AB' })
  expect(brief).toBeUndefined()
})

test('a setup that cannot reduce the record changes nothing', async () => {
  const { call, folder } = await waxLab()
  const bad = join(folder, 'bad.yaml')
  const text = readFileSync(join(folder, 'wax.setup.yaml'), 'utf8')
  writeFileSync(bad, `${text}columns:\n  Torque: { channel: ignore }\n`)
  expect(kinds(await amend(call, { setup: bad })).length).toBeGreaterThan(0)
  await look(call, async (lab) => {
    expect(value(await lab.records.list())).toMatchObject([{ version: 1 }])
    expect(value(await lab.setups.list())).toHaveLength(1)
  })
})

test('no reason, no correction', async () => {
  const { call } = await waxLab()
  expect(kinds(await amend({ ...call, why: ' ' }, { facts: { replicate: 2 } }))).toEqual(['reasonMissing'])
})
