import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { addRecords, amendRecord, type LabCall } from '../../../src/bench/lab/index.ts'
import { writeReports } from '../../../src/bench/lab/report/index.ts'
import { planFile, planSheet, writeSheet } from '../../../src/bench/plan/index.ts'
import { add, demoFolder, freshLab, kinds, look, outside, quick, temporaryFolder, value } from './labs.ts'

/** The filled run sheet of the lacquer question, as a file. */
async function filledSheet(answers: string): Promise<string> {
  const folder = temporaryFolder()
  const [typed, filled] = [join(folder, 'answers.yaml'), join(folder, 'filled.json')]
  writeFileSync(typed, answers)
  const planned = value(await planFile('examples/lacquer/question.yaml'))
  value(await writeSheet(filled, value(await planSheet(planned, typed))))
  return filled
}

const attach = (call: LabCall, answers: string) =>
  amendRecord({ word: 'wax.csv', answers, names: {}, facts: {} }, { ...call, why: 'typed in' }, outside)

const sheetsOf = (call: LabCall) =>
  look(call, async (lab) => {
    const [{ id }] = value(await lab.records.list())
    return value(await lab.paperVersions({ subject: 'record', subjectId: id, kind: 'runSheet' }))
  })

async function reportOf(call: LabCall): Promise<string> {
  const html = join(temporaryFolder(), 'r.html')
  value(await writeReports({ word: 'wax.csv', html }, call, outside))
  return readFileSync(html, 'utf8').replace(/[\u00a0\u202f]/g, ' ')
}

test('attached afterwards, it is kept as versions and stands in the report', async () => {
  const call = await freshLab()
  value((await add(call, [demoFolder('wax')])).done)
  expect(await reportOf(call)).not.toContain('As found at the rig')
  const filled = await filledSheet('mount: yes\nforceRipple: { value: 7 %, note: "tilted <plate>" }\n')
  expect(value(await attach(call, filled)).answers).toEqual({ version: 1, isNew: true })
  expect(value(await attach(call, filled)).answers).toEqual({ version: 1, isNew: false })
  const other = await filledSheet('mount: yes\nforceRipple: 4 %\n')
  expect(value(await attach(call, other))).toMatchObject({ answers: { version: 2 }, after: { version: 1 } })
  const versions = await sheetsOf(call)
  expect(versions.map(({ change }) => [change.who, change.why])).toEqual([
    ['MK', 'typed in'],
    ['MK', 'typed in'],
  ])
  value(await attach(call, filled))
  const page = await reportOf(call)
  expect(page).toContain('As found at the rig')
  expect(page).toContain('One of 13 checks came out as wanted, one did not, 11 are not answered.')
  expect(page).toMatch(/✗ 7 %<[\s\S]*?tilted &lt;plate&gt;/)
  expect(page).toContain('kept by MK on 2026-11-25')
})

test('given with the record that is added', async () => {
  const call = await freshLab()
  const answers = await filledSheet('mount: yes\n')
  const paths = [demoFolder('wax')]
  const on = { outside, onAdd: () => {} }
  for (let time = 0; time < 2; time++) value(await addRecords({ ...quick, paths, answers }, call, on))
  expect(await sheetsOf(call)).toHaveLength(1)
  const two = { ...quick, paths: [demoFolder('wax', 'lacquer-a-1')], answers }
  expect(kinds(await addRecords(two, call, on))).toEqual(['answersForOne'])
})

describe('what is no filled sheet changes nothing and is told', () => {
  test.for([
    ['no JSON', 'mount: yes'],
    ['another document', '{"a": 1}'],
    ['an array', '[]'],
    ['an answer to no check', undefined],
  ])('%s', async ([, text]) => {
    const call = await freshLab()
    value((await add(call, [demoFolder('wax')])).done)
    const file = await filledSheet('mount: yes\n')
    const strange = readFileSync(file, 'utf8').replace('"answers": [', '"answers": [{"id": "moon", "value": true},')
    writeFileSync(file, text ?? strange)
    const found = kinds(await attach(call, file))
    expect(found.length).toBeGreaterThan(0)
    expect(new Set(found)).toEqual(new Set(['answersUnusable']))
    expect(await sheetsOf(call)).toEqual([])
  })
})
