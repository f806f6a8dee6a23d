import { appendFileSync, cpSync, readFileSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { type AddEvent, type LabCall, watchFolder } from '../../../src/bench/lab/index.ts'
import type { Outside } from '../../../src/core/terms/index.ts'
import { demoFolder, freshLab, kinds, look, outside, quick, temporaryFolder, value } from './labs.ts'

/** A watch that runs beside the test, with what it told so far. */
function watching(folder: string, call: LabCall, more: { still?: number } = {}) {
  const stop = { aborted: false }
  const events: AddEvent[] = []
  const troubles: string[] = []
  const own: Outside = { ...outside, now: () => new Date(), stop }
  const ended = watchFolder({ ...quick, folder, still: more.still ?? 0.2 }, call, {
    outside: own,
    onAdd: (event) => void events.push(event),
    onTrouble: (problems) => void troubles.push(...problems.map(({ kind }) => kind)),
  })
  const told = (): string[] =>
    events.map((event) => `${event.what} ${basename('file' in event ? event.file : event.record.name)}`)
  return {
    told,
    troubles,
    /** Waits until something was told. */
    async until(line: string): Promise<void> {
      for (const end = performance.now() + 20_000; !told().includes(line); await setTimeout(20)) {
        if (performance.now() > end) throw new Error(`"${line}" was never told, only ${told().join(', ')}`)
      }
    },
    async end() {
      stop.aborted = true
      return ended
    },
  }
}

test('files that are there and files that appear are added once they have stopped growing', async () => {
  const call = await freshLab()
  const folder = demoFolder('wax')
  const text = readFileSync(join(folder, 'wax.csv'), 'utf8')
  const lines = text.split('\n')
  const watch = watching(folder, call, { still: 0.6 })
  await watch.until('reduced wax.csv')
  cpSync('examples/lacquer/lacquer-a-1.setup.yaml', join(folder, 'slow.setup.yaml'))
  for (let from = 0; from < lines.length; from += 400) {
    appendFileSync(join(folder, 'slow.csv'), `${lines.slice(from, from + 400).join('\n')}\n`)
    await setTimeout(150) // slower than one look, faster than the patience
  }
  await watch.until('reduced slow.csv')
  value(await watch.end())
  expect(watch.told()).toEqual(['kept wax.csv', 'reduced wax.csv', 'kept slow.csv', 'reduced slow.csv'])
  await look(call, async (lab) => {
    const records = value(await lab.records.list())
    expect(records.map(({ name }) => name)).toEqual(['wax.csv', 'slow.csv']) // no half of it was ever taken
  })
})

test('a bad file is told once, and again when it has changed; the others go on', async () => {
  const call = await freshLab()
  const folder = demoFolder('wax')
  writeFileSync(join(folder, 'a-poem.txt'), 'roses are red\n')
  cpSync('examples/lacquer/wax.setup.yaml', join(folder, 'a-poem.setup.yaml'))
  const watch = watching(folder, call)
  await watch.until('reduced wax.csv')
  await setTimeout(600)
  expect(watch.told()).toEqual(['refused a-poem.txt', 'kept wax.csv', 'reduced wax.csv'])
  cpSync('examples/lacquer/lacquer-a-2.csv', join(folder, 'a-poem.txt'))
  await watch.until('reduced a-poem.txt')
  value(await watch.end())
})

test('started again, it knows what it did, and ends what it had begun', async () => {
  const call = await freshLab()
  const folder = demoFolder('lacquer-a-1', 'lacquer-a-2')
  const first = watching(folder, call)
  await first.until('kept lacquer-a-1.csv')
  value(await first.end())
  const second = watching(folder, call)
  for (const name of ['lacquer-a-1', 'lacquer-a-2']) {
    if (!first.told().includes(`reduced ${name}.csv`)) await second.until(`reduced ${name}.csv`)
  }
  await setTimeout(500)
  value(await second.end())
  const all = [...first.told(), ...second.told()]
  for (const name of ['lacquer-a-1', 'lacquer-a-2']) {
    expect(all.filter((line) => line === `kept ${name}.csv`)).toHaveLength(1)
    expect(all.filter((line) => line === `reduced ${name}.csv`)).toHaveLength(1)
  }
})

test('a folder that is not there, a setup that is wrong: said at once', async () => {
  const call = await freshLab()
  expect(kinds(await watching(join(temporaryFolder(), 'none'), call).end())).toEqual(['folderMissing'])
})
