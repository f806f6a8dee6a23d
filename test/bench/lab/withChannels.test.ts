import { readdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { simulate } from '../../../src/bench/index.ts'
import { readKept } from '../../../src/bench/lab/readKept.ts'
import { withChannels } from '../../../src/bench/lab/withChannels.ts'
import { done } from '../../../src/core/terms/index.ts'
import { parquetToPyramid } from '../../../src/io/columns/index.ts'
import { add, freshLab, look, outside, temporaryFolder, value } from './labs.ts'

test('columns of a long record are kept with their pyramid, read from there, and made again when they are lost', async () => {
  const call = await freshLab()
  const folder = temporaryFolder()
  value(simulate({ folder, name: 'long', rows: 90_000, seed: 1, force: false }, outside))
  value((await add(call, [folder])).done)
  await look(call, async (lab) => {
    const [record] = value(await lab.records.list())
    const [result] = value(await lab.results.list())
    const { setup } = value(await readKept(lab, result))
    expect(record.size).toBeGreaterThan(1 << 22)
    const torque = async () =>
      value(
        await withChannels(lab, { record, result, setup }, async (channels) =>
          done(channels.read('torque', 0, channels.rows).slice()),
        ),
      )
    const keptFiles = () =>
      readdirSync(join(call.place, 'columns'), { recursive: true, withFileTypes: true }).filter((entry) =>
        entry.isFile(),
      )
    expect(keptFiles()).toEqual([])
    const first = await torque()
    expect(first.length).toBeGreaterThan(80_000)
    expect(keptFiles()).toHaveLength(2)
    expect(await torque()).toEqual(first)
    rmSync(join(keptFiles()[0].parentPath, keptFiles()[0].name))
    expect(await torque()).toEqual(first)
    expect(keptFiles()).toHaveLength(2)
    const files = keptFiles().map(({ parentPath, name }) => readFileSync(join(parentPath, name)))
    const [pyramid] = files.sort((a, b) => a.length - b.length) // the columns are far longer
    const { rows, levels } = await parquetToPyramid(new Uint8Array(pyramid))
    expect(rows).toBe(first.length)
    expect(Math.max(...(levels.at(-1)?.max.torque ?? []))).toBe(first.reduce((most, one) => Math.max(most, one)))
  })
})
