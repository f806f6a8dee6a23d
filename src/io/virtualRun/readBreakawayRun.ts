import { parseQuantity } from '../../core/quantity/index.ts'
import type { BreakawayRun, SensorNoise } from '../../core/rig/index.ts'
import { type ChannelName, done, failed, type Outcome, type Problem, type Setup } from '../../core/terms/index.ts'
import { assembleSetup } from '../setup/assembleSetup.ts'
import { crossChecks } from '../setup/crossChecks.ts'
import type { Gathered } from '../setup/gathered.ts'
import { setupProblem } from '../setup/setupProblem.ts'
import { yamlSource } from '../setup/yamlSource.ts'
import type { TableDialect } from '../write/index.ts'
import { assembleDialect } from './assembleDialect.ts'
import { breakawayKeys } from './breakawayKeys.ts'
import { readRunSections } from './readRunSections.ts'
import { RunValues } from './runValues.ts'

/** A virtual run of torque ramps as a file tells it. */
export interface BreakawayRunFile {
  readonly run: BreakawayRun
  readonly setup: Setup
  readonly dialect: TableDialect
  readonly seed: number
}

/** Columns of such a record, in their order. */
const columns: readonly ChannelName[] = ['step', 'time', 'angularVelocity', 'torque', 'axialForce', 'angle']

/** Temperature of a run that names none. */
const roomTemperature = 296.15

/** Whether a file tells of torque ramps: it has a section of that name. */
export const isBreakawayRun = (text: string): boolean => /^breakaway\s*:/m.test(text)

/** Reads torque ramps from YAML with units as people write them. All problems at once; never throws on bad input. */
export function readBreakawayRun(text: string, fileName: string): Outcome<BreakawayRunFile> {
  const source = yamlSource(text.replace(/^\uFEFF/, ''), fileName)
  if (!source.ok) return source
  const gathered: Gathered = { values: new Map(), problems: [], columns: {} }
  const sections = {
    keys: breakawayKeys,
    called: 'a virtual run of torque ramps',
    withoutColumns: 'Take it out: the setup that is written beside the record says it.',
  }
  readRunSections(source.value.root, { source: source.value, into: gathered, path: '' }, sections)
  const values = new RunValues(gathered)
  const dwells = dwellsOf(values)
  const problems = [...gathered.problems, ...crossChecks(gathered), ...dwells.problems, ...missing(values, fileName)]
  if (problems.length > 0) return failed(...problems)
  const setup = assembleSetup(gathered)
  return done({
    run: runOf(values, setup, dwells.seconds),
    setup,
    dialect: { ...assembleDialect(values), columns },
    seed: values.number('seed', 1),
  })
}

function runOf(values: RunValues, setup: Setup, dwells: readonly number[]): BreakawayRun {
  const of = (key: string, otherwise?: number): number => values.number(`breakaway.${key}`, otherwise)
  const noise = (channel: string): SensorNoise | undefined =>
    values.has(`noise.${channel}`)
      ? {
          white: values.number(`noise.${channel}.white`, 0),
          correlated: values.number(`noise.${channel}.correlated`, 0),
          correlation: values.number(`noise.${channel}.correlation`, 0),
          resolution: values.number(`noise.${channel}.resolution`, 0),
        }
      : undefined
  const stiffness = setup.rig.torsionalStiffness ?? Number.NaN
  const rampTime = of('rampTime')
  return {
    fixture: setup.fixture,
    axialForce: values.number('run.axialForce'),
    temperature: setup.run.temperature ?? roomTemperature,
    samplingRate: of('samplingRate'),
    dwells,
    torqueRate: of('mostTorque') / rampTime,
    mostTorque: of('mostTorque'),
    stopAngle: of('stopAngle', 0.05),
    fastest: of('fastest', 1),
    inertia: setup.rig.inertia ?? Number.NaN,
    torsionalStiffness: stiffness,
    // Creep grows with the square of time on a ramp: at its end it is that share of the twist M/k.
    creep: (2 * of('creep', 0)) / (stiffness * rampTime),
    friction: {
      level: of('level'),
      slope: of('growth', 0),
      time: of('ageingTime', 1),
      kinetic: of('kinetic'),
      scatter: of('scatter', 0),
    },
    noise: { torque: noise('torque'), axialForce: noise('axialForce'), angle: noise('angle') },
  }
}

function dwellsOf(values: RunValues): { seconds: readonly number[]; problems: readonly Problem[] } {
  if (!values.has('breakaway.dwells')) return { seconds: [], problems: [] }
  const seconds: number[] = []
  const problems: Problem[] = []
  for (const part of values.text('breakaway.dwells').split(';')) {
    const read = parseQuantity(part, 'time')
    if (read.ok && read.value >= 0) seconds.push(read.value)
    else {
      const words = read.ok ? { what: 'A time at rest is below zero.', mend: 'Write zero or more.' } : read
      problems.push(
        setupProblem(values.place('breakaway.dwells'), {
          kind: 'quantityUnreadable',
          what: words.what,
          mend: words.mend,
        }),
      )
    }
  }
  return { seconds, problems }
}

function missing(values: RunValues, file: string): Problem[] {
  const wanted = [
    ['run.axialForce', 'Add "axialForce: 5 N" under "run:".'],
    ['rig.inertia', 'Add "inertia: 20 µN·m·s²" under "rig:".'],
    ['rig.torsionalStiffness', 'Add "torsionalStiffness: 100 N·m/rad" under "rig:".'],
  ] as const
  return wanted
    .filter(([name]) => !values.has(name))
    .map(([name, mend]) => setupProblem({ file, name }, { kind: 'keyMissing', what: `${name} is missing.`, mend }))
}
