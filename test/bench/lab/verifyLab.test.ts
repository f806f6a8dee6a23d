import { chmodSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { LabCall } from '../../../src/bench/lab/index.ts'
import { verifyLab } from '../../../src/bench/lab/index.ts'
import { add, demoFolder, freshLab, kinds, later, look, outside, value } from './labs.ts'

async function labWith(...names: readonly string[]): Promise<LabCall> {
  const call = await freshLab()
  value((await add(call, [demoFolder(...names)])).done)
  return call
}

const verify = async (call: LabCall, more: { word?: string; keep?: boolean; outside?: typeof outside } = {}) =>
  value(await verifyLab({ word: more.word, keep: more.keep ?? false, threads: 0 }, call, more.outside ?? outside))

/** Changes rows behind the back of the lab, as nobody should. */
function tamper({ place }: LabCall, sql: string): void {
  const database = new DatabaseSync(join(place, 'kufe.sqlite'))
  const guards = database.prepare("select name, sql from sqlite_schema where type = 'trigger'").all()
  for (const { name } of guards) database.exec(`drop trigger ${name}`)
  database.exec(sql)
  for (const { sql: guard } of guards) database.exec(String(guard))
  database.close()
}

test('an untouched lab comes out again bit for bit', async () => {
  const call = await labWith('lacquer-a-1', 'wax')
  expect(await verify(call)).toMatchObject({
    ...{ records: 2, setups: 2, results: 2, same: 2, sameByOther: 0, superseded: 0 },
    ...{ findings: [], notReduced: [] },
  })
})

test('one record alone, by its id or its name', async () => {
  const call = await labWith('lacquer-a-1', 'wax')
  expect(await verify(call, { word: 'wax.csv' })).toMatchObject({ records: 1, results: 1, same: 1, findings: [] })
  expect(kinds(await verifyLab({ word: 'wx.csv', keep: false, threads: 0 }, call, outside))).toEqual(['nothingNamed'])
})

describe('what was changed is found and named', () => {
  test('any one byte of the raw file, whichever', async () => {
    const call = await labWith('wax')
    const [record] = await look(call, async (lab) => value(await lab.records.list()))
    const file = join(call.place, 'raw', record.id.slice(0, 2), record.id)
    const bytes = readFileSync(file)
    chmodSync(file, 0o644)
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), async (at, by) => {
        const changed = Buffer.from(bytes)
        changed[at] ^= by
        writeFileSync(file, changed)
        const { findings } = await verify(call)
        expect(findings).toMatchObject([
          { what: 'damaged', problem: { kind: 'rawChanged' }, records: [{ name: 'wax.csv' }] },
        ])
      }),
      { numRuns: 20 },
    )
    writeFileSync(file, bytes)
    expect((await verify(call)).findings).toEqual([])
  })

  test('a setup', async () => {
    const call = await labWith('lacquer-a-1', 'wax')
    tamper(call, "update setups set text = replace(text, '5 N', '6 N') where change = (select min(change) from setups)")
    const { findings, same } = await verify(call)
    expect(findings).toMatchObject([
      { what: 'damaged', problem: { kind: 'setupChanged' }, records: [{ name: 'lacquer-a-1.csv' }] },
    ])
    expect(same).toBe(1) // the other record is none the worse
  })

  test('a result', async () => {
    const call = await labWith('lacquer-a-1', 'wax')
    tamper(
      call,
      `update results set text = replace(text, '"friction": 0.2', '"friction": 0.1') where raw in
      (select raw from record_versions where name = 'wax.csv')`,
    )
    const { findings } = await verify(call)
    expect(findings).toMatchObject([
      { what: 'damaged', problem: { kind: 'resultChanged' }, records: [{ name: 'wax.csv' }] },
    ])
  })

  test('a result whose checksum was changed with it: it does not come out again', async () => {
    const call = await labWith('wax')
    const text = await look(call, async (lab) => value(await lab.results.text(value(await lab.results.list())[0].id)))
    const changed = text.replace('"trusted": true', '"trusted": false')
    const { checksum } = await import('../../../src/store/index.ts')
    tamper(call, `update results set text = '${changed.replaceAll("'", "''")}', sha256 = '${checksum(changed)}'`)
    const { findings, same } = await verify(call)
    expect(same).toBe(0)
    expect(findings).toMatchObject([
      {
        what: 'differs',
        record: { name: 'wax.csv' },
        differences: [{ field: 'points[].trusted', changed: 1, at: 'points[0].trusted', before: false, after: true }],
      },
    ])
  })
})

describe('another version of the program', () => {
  test('that gives the same is no finding', async () => {
    const call = await labWith('wax')
    const seen = await verify(call, { outside: later })
    expect(seen).toMatchObject({ same: 0, sameByOther: 1, superseded: 0, keptBeside: 0, findings: [] })
  })

  test('that gives something else: what changed, by how much; kept beside where asked to', async () => {
    const call = await labWith('lacquer-a-1', 'wax')
    // The older version is made up: its results have one friction value two per cent higher.
    await look(call, async (lab) => {
      const { checksum } = await import('../../../src/store/index.ts')
      for (const { id } of value(await lab.results.list())) {
        const document = JSON.parse(value(await lab.results.text(id)))
        document.points[2].friction *= 1.02
        const text = `${JSON.stringify(document, null, 2)}\n`
        tamper(
          call,
          `update results set text = '${text.replaceAll("'", "''")}', sha256 = '${checksum(text)}' where id = '${id}'`,
        )
      }
    })
    const first = await verify(call, { outside: later })
    expect(first.findings).toMatchObject([
      { what: 'changed', record: { name: 'lacquer-a-1.csv' }, keptBeside: false },
      {
        what: 'changed',
        record: { name: 'wax.csv' },
        differences: [{ field: 'points[].friction', changed: 1, of: 17 }],
      },
    ])
    const [, finding] = first.findings
    if (finding.what !== 'changed') throw new Error('it changed')
    expect(finding.differences[0].largest).toBeCloseTo(1 - 1 / 1.02, 10)
    expect(await verify(call, { outside: later, keep: true })).toMatchObject({ keptBeside: 2 })
    // From now on the new results count, and the old ones are only held against their checksums.
    expect(await verify(call, { outside: later })).toMatchObject({ same: 2, superseded: 2, findings: [] })
    await look(call, async (lab) => expect(value(await lab.results.list())).toHaveLength(4))
  })
})

test('a record that is kept and not reduced is named, and is no finding', async () => {
  const call = await labWith('wax')
  await look(call, async (lab) => {
    const bytes = new TextEncoder().encode('Time [s],Torque [N·m]\n0,1\n1,2\n')
    value(await lab.records.add([{ bytes, name: 'bare.csv' }], { at: outside.now().toISOString(), who: 'MK', why: '' }))
  })
  expect(await verify(call)).toMatchObject({ records: 2, findings: [], notReduced: [{ name: 'bare.csv' }] })
})
