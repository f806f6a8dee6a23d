import { expect, test } from 'vitest'
import { compareKept, compareStudy, decisionContent } from '../../../src/bench/compare/index.ts'
import { add, freshLab, kinds, look, outside, value } from '../lab/labs.ts'

const folder = 'test/data/records'
const files = (letter: string): string[] => [1, 2, 3].map((n) => `${folder}/varnish-${letter}-${n}.csv`)
const quickly = { draws: 400 }

async function labOfVarnishes() {
  const call = await freshLab()
  for (const letter of ['a', 'b']) {
    await add(call, files(letter), {
      setup: `${folder}/varnish.setup.yaml`,
      names: { study: 'Drawer runners', sample: `varnish ${letter.toUpperCase()}` },
    })
  }
  return call
}

test('a study is compared as its results are kept, with what its paper of decision says', async () => {
  const call = await labOfVarnishes()
  const study = 'drawer-runners'
  const plain = value(await compareStudy({ study, ask: quickly }, call, outside))
  expect(plain.title).toBe('Drawer runners')
  expect(plain.records.map(({ sample }) => sample)).toEqual([
    ...Array(3).fill('varnish A'),
    ...Array(3).fill('varnish B'),
  ])
  expect(plain.comparison.differences[0].sentence).toMatch(/^varnish B slips more easily than varnish A/)

  const content = {
    margin: 0.3,
    removals: [
      { record: plain.records[1].record, by: 'AB', why: 'the plate was not clean' },
      { record: 'left long ago', by: 'AB', why: 'odd' },
    ],
  }
  const change = { at: outside.now().toISOString(), who: 'AB', why: 'decided' }
  await look(call, async (lab) => {
    value(await lab.keepPaper({ subject: 'study', subjectId: study, kind: 'decision', content, after: 0 }, change))
  })
  const decided = value(await compareStudy({ study, ask: quickly }, call, outside))
  expect(decided.comparison.samples[0].used).toBe(2)
  expect(decided.removals).toHaveLength(1)
  expect(decided.comparison.margin).toBe(0.3)
  expect(decided.comparison.sentences[0]).toMatch(/less than the 30 % that matter/)
  // What is said in the call goes before the paper.
  const said = value(await compareStudy({ study, ask: { ...quickly, margin: '5 %' } }, call, outside))
  expect(said.comparison.margin).toBe(0.05)

  await look(call, async (lab) => {
    const held = value(await compareKept(lab, { study, ask: { options: quickly } }, outside))
    expect(held.comparison).toEqual(decided.comparison)
    expect(decisionContent(held, {}).sections.map(({ name }) => name)).toContain('records')
  })
}, 60_000)

test('a record is taken out by its name or the beginning of its id, and a study that is not there is told', async () => {
  const call = await labOfVarnishes()
  const study = 'drawer-runners'
  const without = ['varnish-a-1.csv=scratched']
  const { comparison, records } = value(
    await compareStudy({ study, ask: { ...quickly, without, by: 'MK' } }, call, outside),
  )
  expect(comparison.samples[0].replicates[0].removed).toMatchObject({ by: 'MK', why: 'scratched' })
  const byId = [`${records[0].record.slice(0, 10)}=scratched`]
  const again = value(await compareStudy({ study, ask: { ...quickly, without: byId, by: 'MK' } }, call, outside))
  expect(again.comparison).toEqual(comparison)
  expect(kinds(await compareStudy({ study: 'nowhere', ask: {} }, call, outside))).toEqual(['notThere'])
  expect(kinds(await compareStudy({ study, ask: { without: ['odd.csv=x'], by: 'MK' } }, call, outside))).toEqual([
    'removalUnknown',
  ])
}, 60_000)
