import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { makeLab, verifyLab } from '../../../src/bench/lab/index.ts'
import { setupFromQuestion } from '../../../src/bench/plan/index.ts'
import { demoLab, holdLab, isDemo, labGlance, paperAt, studyShelf } from '../../../src/bench/serve/index.ts'
import { readSetup } from '../../../src/io/index.ts'

const folder = mkdtempSync(join(tmpdir(), 'kufe-demo-test-'))
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 3 }))
const outside = {
  now: () => new Date('2026-03-10T08:00:00Z'),
  progress: () => {},
  stop: { aborted: false },
  program: 'kufe 0.0.0-test',
}
const call = (name: string) => ({ place: join(folder, name), who: 'MK', why: '' })

test('two studies with replicates and questions; made again, it is as it was', async () => {
  expect(await demoLab(call('demo'), outside)).toEqual({ ok: true, value: null })
  const held = await holdLab(call('demo'), outside)
  if (!held.ok) throw new Error(held.problems[0].what)
  const glance = await labGlance(held.value)
  expect(glance).toMatchObject({ value: { counts: { studies: 2, records: 11, reduced: 11 } } })
  expect(glance.ok && isDemo(glance.value.about)).toBe(true)
  const shelf = await studyShelf(held.value, 'drawer-runners')
  const replicates = shelf.ok ? shelf.value.records.map(({ record }) => `${record.sample} ${record.replicate}`) : []
  expect(replicates).toEqual(
    expect.arrayContaining(['lacquer-a', 'lacquer-b'].flatMap((sample) => [1, 2, 3].map((n) => `${sample} ${n}`))),
  )
  for (const word of ['drawer-runners', 'oat-drinks']) {
    const paper = await paperAt(held.value, { subject: 'study', word, kind: 'question' })
    const content = paper.ok ? paper.value?.content : undefined
    const setup = setupFromQuestion(content as Record<string, unknown>) // kept from a question file
    expect(setup.ok && setup.value.setup.run.axialForce).toBeGreaterThan(0)
    // What the bench writes, the program reads back to the same.
    if (setup.ok) expect(readSetup(setup.value.text, 'setup')).toMatchObject({ value: { setup: setup.value.setup } })
  }
  await held.value.pulse.beat()
  const before = held.value.pulse.last
  await held.value.close()
  expect((await demoLab(call('demo'), outside)).ok).toBe(true)
  const again = await holdLab(call('demo'), outside)
  expect(again.ok && again.value.pulse.last).toBe(before)
  if (again.ok) await again.value.close()
  const verified = await verifyLab({ word: undefined, keep: false, threads: 0 }, call('demo'), outside)
  expect(verified).toMatchObject({ value: { same: 11, findings: [], notReduced: [] } })
})

test("somebody's lab is not taken for the demo", async () => {
  await makeLab(call('own'), 'Own', outside)
  const made = await demoLab(call('own'), outside)
  expect(made).toMatchObject({ ok: false, problems: [{ kind: 'folderNotEmpty' }] })
})

test('a question with gaps gives its problems by their keys', () => {
  const made = setupFromQuestion({ title: 'Which?', ask: { slowest: 'fast' } })
  const names = made.ok ? [] : made.problems.map(({ place }) => place.name)
  expect(names).toEqual(expect.arrayContaining(['ask.slowest', 'rig', 'fixture']))
})
