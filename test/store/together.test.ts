import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { describe, expect, onTestFinished, test } from 'vitest'
import { openEngine } from '../../src/store/opening.ts'
import { change, engines, freshLab, kinds, openedLab, rawBytes, value } from './engines.ts'

/** Holds the lock of a writer, as a process does that is busy or hangs, until the given call. */
async function holdWriter(where: string): Promise<() => Promise<void>> {
  const engine = openEngine(where)
  onTestFinished(() => engine.close())
  let release = () => {}
  const released = new Promise<void>((resolve) => {
    release = resolve
  })
  let holding: Promise<void> = Promise.resolve()
  await new Promise<void>((held) => {
    holding = engine.write(async () => {
      held()
      await released
    })
  })
  return () => {
    release()
    return holding
  }
}

const storeChild = join(import.meta.dirname, '../../scripts/storeChild.ts')

/** Runs a process that adds records from `first` on, and gives the ids that it acknowledged. */
function adding(where: string, first: number, count: number): Promise<string[]> {
  const child = spawn(process.execPath, [storeChild, 'add', where, String(first), String(count)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  let heard = ''
  child.stdout.setEncoding('utf8').on('data', (text) => {
    heard += text
  })
  return new Promise((resolve, reject) => {
    child.on('close', (code) => {
      if (code !== 0) reject(new Error(`the child ended with ${code}: ${heard}`))
      resolve([...heard.matchAll(/^kept record (\w+)$/gm)].map(([, id]) => id))
    })
  })
}

describe.each(engines)('several at once on $name', ({ place }) => {
  test('who waits too long for a writer is told so, and can read meanwhile', async () => {
    const where = await place()
    const lab = await freshLab(where)
    const [{ record }] = value(await lab.records.add([{ bytes: rawBytes(1), name: 'one.csv' }], change(1)))
    const release = await holdWriter(where)
    const other = await openedLab(where, { patience: 300 })
    const second = { bytes: rawBytes(2), name: 'two.csv' }
    expect(kinds(await other.records.add([second], change(2)))).toEqual(['labBusy'])
    expect(value(await other.records.list())).toEqual([record])
    const patient = await openedLab(where, { patience: 20_000 })
    const waiting = patient.records.add([second], change(2))
    await release()
    expect(value(await waiting)).toMatchObject([{ isNew: true }])
    expect(value(await other.check())).toMatchObject({ raws: 2, problems: [] })
  })

  test('calls of one process take turns', async () => {
    const lab = await freshLab(await place())
    const calls = Array.from({ length: 12 }, (_, i) =>
      lab.records.add([{ bytes: rawBytes(i % 6), name: `${i}` }], change(i)),
    )
    const added = (await Promise.all(calls)).flatMap(value)
    expect(added.filter(({ isNew }) => isNew)).toHaveLength(6)
    expect(value(await lab.history.list()).map((entry) => entry.change.number)).toEqual([1, 2, 3, 4, 5, 6, 7])
  })

  test('two processes that add the same records and others keep each once', async () => {
    const where = await place()
    const lab = await freshLab(where)
    const acknowledged = await Promise.all([adding(where, 0, 30), adding(where, 15, 30)])
    expect(acknowledged.map((ids) => ids.length)).toEqual([30, 30])
    const kept = value(await lab.records.list()).map(({ id }) => id)
    expect(new Set(kept)).toEqual(new Set(acknowledged.flat()))
    expect(kept).toHaveLength(45)
    expect(value(await lab.check())).toMatchObject({ raws: 45, problems: [] })
    const numbers = value(await lab.history.list()).map((entry) => entry.change.number)
    expect(numbers).toEqual(numbers.map((_, i) => i + 1))
  })
})
