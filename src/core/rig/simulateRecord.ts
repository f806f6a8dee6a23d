import { fixtureGeometry } from '../fixture/index.ts'
import { randomFrom } from '../numeric/index.ts'
import { type ChannelName, type Channels, channelsInMemory, type Metre } from '../terms/index.ts'
import type { Moment } from './moment.ts'
import { moments } from './moments.ts'
import { sheetSteps } from './sheetSteps.ts'
import { type Truth, truthOf } from './truth.ts'
import { createContact } from './virtualContact.ts'
import type { VirtualRun } from './virtualRun.ts'
import { createSensors, type Readings } from './virtualSensors.ts'

/** What happens by chance at the contact; the sensors have streams 1 to 5. */
const contactStream = 6

/** A record of the virtual rig and what it was made from. */
export interface SimulatedRecord {
  readonly channels: Channels
  readonly truth: Truth
}

/** The whole record in memory. The same run and seed give the same numbers, bit for bit. */
export function simulateRecord(run: VirtualRun, seed: number): SimulatedRecord {
  const truth = truthOf(run, seed)
  const [channels] = simulateChunks(run, seed, truth.rows)
  return { channels, truth }
}

/** The same record piece by piece, for records longer than memory; how it is cut changes no number. */
export function* simulateChunks(run: VirtualRun, seed: number, rowsPerChunk = 65_536): Generator<Channels, void> {
  if (!(rowsPerChunk >= 1)) throw new RangeError(`rowsPerChunk must be 1 or more, got ${rowsPerChunk}`)
  const geometry = fixtureGeometry(run.fixture)
  const steps = sheetSteps(run.sheet, geometry.lever)
  const contact = createContact(run, geometry, randomFrom(seed, contactStream))
  const sensors = createSensors(run, seed)
  const drive = { riseTime: run.rig.riseTime, samplingRate: run.sheet.samplingRate }
  let left = steps[steps.length - 1].to
  let chunk = emptyChunk(run.columns, Math.min(rowsPerChunk, left))
  let filled = 0
  for (const moment of moments(steps, drive)) {
    const readings = sensors(moment, contact(moment))
    for (const { name, column } of chunk) column[filled] = cell(name, { moment, readings, lever: geometry.lever })
    filled++
    left--
    if (filled < chunk[0].column.length) continue
    yield channelsInMemory(Object.fromEntries(chunk.map(({ name, column }) => [name, column])))
    chunk = emptyChunk(run.columns, Math.min(rowsPerChunk, left))
    filled = 0
  }
}

interface Column {
  readonly name: ChannelName
  readonly column: Float64Array
}

function emptyChunk(names: readonly ChannelName[], rows: number): readonly Column[] {
  if (names.length === 0) throw new RangeError('a record must have columns, got none')
  return names.map((name) => ({ name, column: new Float64Array(rows) }))
}

interface Sample {
  readonly moment: Moment
  readonly readings: Readings
  readonly lever: Metre
}

function cell(name: ChannelName, { moment, readings, lever }: Sample): number {
  switch (name) {
    case 'time':
      return moment.time
    case 'step':
      return moment.step.number
    case 'angle':
      return moment.angle
    case 'slidingSpeed':
      return readings.angularVelocity * lever
    case 'frictionForce':
      return readings.torque / lever
    default:
      return readings[name]
  }
}
