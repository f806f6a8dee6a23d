import { readFileSync } from 'node:fs'
import { columnEdges, minMaxColumns } from '../../src/core/numeric/index.ts'
import { recordStretches, reduceRecord } from '../../src/core/reduce/index.ts'
import {
  type ChannelName,
  type Channels,
  channelsInMemory,
  type Reduction,
  type Setup,
} from '../../src/core/terms/index.ts'
import { type StripFigureData, stripColumns } from '../../src/figure/index.ts'
import { readRecord, readSetup } from '../../src/io/index.ts'

/** A record of test/data/records all the way to its points; its channels lie in memory. */
export interface RealRecord {
  readonly name: string
  readonly channels: Channels
  readonly setup: Setup
  readonly reduction: Reduction
}

const folder = 'test/data/records'

export async function realRecord(name: string): Promise<RealRecord> {
  const setupFile = `${folder}/${name.startsWith('varnish') ? 'varnish' : name}.setup.yaml`
  const setup = readSetup(readFileSync(setupFile, 'utf8'), setupFile)
  if (!setup.ok) throw new Error(JSON.stringify(setup.problems))
  const columns = Object.fromEntries(
    Object.entries(setup.value.columns).map(([heading, { channel, unit }]) => [
      heading,
      { channel: channel === 'ignore' ? null : channel, unit },
    ]),
  )
  const record = await readRecord(`${folder}/${name}.csv`, { columns })
  if (!record.ok) throw new Error(JSON.stringify(record.problems))
  const { channels: outside } = record.value
  const channels = channelsInMemory(
    Object.fromEntries(outside.names.map((channel) => [channel, outside.read(channel, 0, outside.rows).slice()])),
  )
  record.value.close()
  const reduction = reduceRecord(channels, setup.value.setup)
  if (!reduction.ok) throw new Error(JSON.stringify(reduction.problems))
  return { name, channels, setup: setup.value.setup, reduction: reduction.value }
}

const drawn: readonly ChannelName[] = [
  'angularVelocity',
  'slidingSpeed',
  'torque',
  'frictionForce',
  'axialForce',
  'gap',
  'temperature',
]

/** What a strip of the record shows. */
export function stripOf({ name, channels, setup, reduction }: RealRecord, width?: number): StripFigureData {
  const { rows } = channels
  const time = channels.read('time', 0, rows)
  const edges = columnEdges(time, stripColumns(width))
  return {
    title: `${name} (invented)`,
    time: [time[0], time[rows - 1]],
    channels: drawn
      .filter((channel) => channels.names.includes(channel))
      .map((channel) => ({ name: channel, columns: minMaxColumns(channels.read(channel, 0, rows), edges) })),
    stretches: recordStretches(channels, setup, reduction),
    note: 'Invented data: no lab measured them.',
  }
}
