// How many records a second the lab takes in, by itself: node bench/store.ts [RECORDS] [FOLDER]

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startPostgres } from '../scripts/postgresForTests.ts'
import { channelsInMemory } from '../src/core/terms/index.ts'
import { columnsToParquet, minMaxPyramid, pyramidToParquet } from '../src/io/columns/index.ts'
import { type ColumnFiles, type Lab, type NewRecord, newLab } from '../src/store/index.ts'

const count = Number(process.argv[2] ?? 1000)
const folder = mkdtempSync(join(process.argv[3] ?? tmpdir(), 'kufe-bench-'))
const change = { at: '2026-11-25T09:00:00.000Z', who: 'Ada', why: 'how fast?' }
const batches = [1, 10, 50, 200]
const rows = 2000

const say = (text: string): boolean => process.stdout.write(`${text}\n`)

/** Text of a made-up record: 2,000 rows of 6 columns, about 100 kB. */
function inventedText(number: number): Uint8Array {
  const lines = [`record ${number}`]
  for (let row = 0; row < rows; row++) {
    const phase = row * 0.37 + number
    const cells = [row / 100, row >> 6, Math.sin(phase) / 100, 5 + Math.cos(phase) / 50, phase % 6.28, 23.1]
    lines.push(cells.map((cell, i) => cell.toFixed(i === 2 ? 9 : 4)).join(','))
  }
  return new TextEncoder().encode(`${lines.join('\n')}\n`)
}

const records: NewRecord[] = Array.from({ length: count }, (_, i) => ({ bytes: inventedText(i), name: `${i}.csv` }))

async function freshLab(where: string): Promise<Lab> {
  const made = await newLab(where, { id: 'bench', title: 'bench' }, { change, program: 'kufe bench' })
  if (!made.ok) throw new Error(JSON.stringify(made.problems))
  return made.value
}

/** Wall and processor time of a task, for each of the records. */
async function timed(what: string, act: () => Promise<void>): Promise<void> {
  const processor = process.cpuUsage()
  const started = performance.now()
  await act()
  const wall = performance.now() - started
  const { user, system } = process.cpuUsage(processor)
  const perSecond = ((count * 1000) / wall).toFixed(0)
  say(
    `${what.padEnd(34)} ${perSecond.padStart(7)} a second   ${((user + system) / 1000 / count).toFixed(2).padStart(6)} ms of processor each`,
  )
}

async function addAll(lab: Lab, batch: number): Promise<void> {
  for (let from = 0; from < count; from += batch) {
    const added = await lab.records.add(records.slice(from, from + batch), change)
    if (!added.ok) throw new Error(JSON.stringify(added.problems))
  }
}

/** Columns of one record and its pyramid, made and kept. */
async function keepColumns(lab: Lab, batch: number): Promise<void> {
  const kept = await lab.records.list()
  const column = Float64Array.from({ length: rows }, (_, i) => Math.sin(i) / 100)
  const channels = channelsInMemory({
    time: column,
    step: column,
    torque: column,
    axialForce: column,
    angle: column,
    temperature: column,
  })
  for (let from = 0; kept.ok && from < kept.value.length; from += batch) {
    const files = kept.value.slice(from, from + batch).map(({ id }): ColumnFiles => {
      const [parquet, pyramid] = [columnsToParquet(channels), pyramidToParquet(minMaxPyramid(channels))]
      return { raw: id, reading: 'bench', rows, program: 'kufe bench', parquet, pyramid }
    })
    await lab.columns.put(files)
  }
}

const server = await startPostgres({ durable: true })
try {
  say(`${count} records of ${rows} rows, ${Math.round((records[0].bytes as Uint8Array).length / 1000)} kB each`)
  for (const [engine, place] of [
    ['folder', async (batch: number) => join(folder, `lab-${batch}`)],
    ['PostgreSQL', 'why' in server ? undefined : server.newDatabase],
  ] as const) {
    if (place === undefined) continue
    for (const batch of batches) {
      const lab = await freshLab(await place(batch))
      await timed(`${engine}, ${batch} at a time`, () => addAll(lab, batch))
      if (batch === 50) {
        await timed(`${engine}, all known already`, () => addAll(lab, batch))
        await timed(`${engine}, columns made and kept`, () => keepColumns(lab, batch))
        await timed(`${engine}, checked`, async () => void (await lab.check()))
        await timed(`${engine}, backed up`, async () => void (await lab.backup(join(folder, `backup-${engine}`))))
      }
      await lab.close()
    }
  }
} finally {
  if (!('why' in server)) await server.stop()
  rmSync(folder, { recursive: true, force: true })
}
