import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { nothingGiven } from '../../../src/bench/given.ts'
import type { AddEvent, LabCall } from '../../../src/bench/lab/index.ts'
import { keepFiles } from '../../../src/bench/lab/keepFiles.ts'
import { rawSource } from '../../../src/bench/lab/rawSource.ts'
import { setupFinder } from '../../../src/bench/lab/setupFiles.ts'
import type { Outside } from '../../../src/core/terms/index.ts'
import type { KeptRecord } from '../../../src/store/index.ts'
import { demoFolder, freshLab, kinds, look, outside, value } from './labs.ts'

// Long files are made out of short ones here: whatever has more than a thousand bytes counts as long.
const longAbove = 1000

async function keep(call: LabCall, files: readonly string[], own: Outside = outside) {
  const told: string[] = []
  const setupOf = setupFinder(undefined)
  const onAdd = (event: AddEvent): void => {
    told.push(`${event.what} ${'file' in event ? basename(event.file) : ''}`)
  }
  const toKeep = files.map((file) => ({ file, setup: setupOf(file), facts: {} }))
  const kept = await look(call, (lab) =>
    keepFiles(toKeep, { lab, call, given: nothingGiven, names: {}, outside: own, onAdd, longAbove }),
  )
  return { records: value(kept), told }
}

const record = (call: LabCall): Promise<KeptRecord> => look(call, async (lab) => value(await lab.records.list())[0])

test('a long file is kept piece by piece, recognised, and comes back byte for byte', async () => {
  const call = await freshLab()
  const file = join(demoFolder('wax'), 'wax.csv')
  expect((await keep(call, [file])).told).toEqual(['kept wax.csv'])
  const again = await keep(call, [file])
  expect(again.told).toEqual(['known wax.csv'])
  expect(again.records).toHaveLength(1)
  await look(call, async (lab) => {
    const raw = value(await rawSource(lab, await record(call), longAbove))
    if (typeof raw.source !== 'string') throw new Error('long bytes come as a file')
    expect(readFileSync(raw.source)).toEqual(readFileSync(file))
    raw.dispose()
    expect(existsSync(dirname(raw.source))).toBe(false)
  })
})

test('one that is written to while it is read is refused; those before and after it are kept', async () => {
  const call = await freshLab()
  const folder = demoFolder('lacquer-a-1', 'lacquer-a-2', 'wax')
  const files = ['lacquer-a-1', 'lacquer-a-2', 'wax'].map((name) => join(folder, `${name}.csv`))
  // The clock is looked at before a file is read and before it is kept; the second file grows in between.
  let looks = 0
  const growing = { ...outside, now: () => (++looks === growAt ? grow() : outside.now()) }
  const grow = (): Date => {
    appendFileSync(files[1], '\n')
    return outside.now()
  }
  const growAt = 4
  const { told } = await keep(call, files, growing)
  expect(told).toEqual(['kept lacquer-a-1.csv', 'refused lacquer-a-2.csv', 'kept wax.csv'])
  await look(call, async (lab) => {
    expect(value(await lab.records.list()).map(({ name }) => name)).toEqual(['lacquer-a-1.csv', 'wax.csv'])
    expect(value(await lab.check()).problems).toEqual([])
  })
  expect((await keep(call, files)).told).toEqual(['known lacquer-a-1.csv', 'kept lacquer-a-2.csv', 'known wax.csv'])
})

test('long bytes that were changed in the lab are no source, and leave no file behind', async () => {
  const call = await freshLab()
  await keep(call, [join(demoFolder('wax'), 'wax.csv')])
  const { id } = await record(call)
  writeFileSync(join(call.place, 'raw', id.slice(0, 2), id), 'x'.repeat(2000))
  await look(call, async (lab) =>
    expect(kinds(await rawSource(lab, await record(call), longAbove))).toEqual(['rawChanged']),
  )
})
