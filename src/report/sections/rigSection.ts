import type { Dimension } from '../../core/quantity/index.ts'
import type { RigSpec, SensorLimits } from '../../core/terms/index.ts'
import type { Fact } from '../reportContent.ts'
import type { ReportInput } from '../reportInput.ts'
import { fixtureInWords } from '../words/fixtureInWords.ts'
import { capital, percent, plain, printed } from '../words/printed.ts'
import { figureNamed } from './figureNamed.ts'
import type { SectionOf } from './sectionOf.ts'

/** What the rheometer can do, and the bodies with their lever arm. */
export const rigSection: SectionOf = (input, numbers) => ({
  heading: 'Rig and fixture',
  blocks: [
    { kind: 'facts', facts: [...rigFacts(input.setup.rig), ...fixtureFacts(input)] },
    ...figureNamed('fixture', input, numbers),
  ],
})

function rigFacts(rig: RigSpec): Fact[] {
  const facts: Fact[] = [
    { term: 'Rheometer', value: rig.name },
    { term: 'Torque', value: sensorInWords(rig.torque, 'torque') },
    { term: 'Axial force', value: sensorInWords(rig.axialForce, 'force') },
    { term: 'Rotation', value: rangeInWords(rig.angularVelocity, 'angularVelocity') },
  ]
  if (rig.inertia !== undefined) facts.push({ term: 'Inertia', value: printed(rig.inertia, 'momentOfInertia') })
  if (rig.torsionalStiffness !== undefined) {
    facts.push({ term: 'Torsional stiffness', value: printed(rig.torsionalStiffness, 'torsionalStiffness') })
  }
  return facts
}

function fixtureFacts({ setup, geometry, pressure }: ReportInput): Fact[] {
  const { lever, loadFactor, contacts } = geometry
  const facts: Fact[] = [
    { term: 'Fixture', value: capital(fixtureInWords(setup.fixture)) },
    { term: 'Lever arm r', value: printed(lever, 'length', 5) },
    { term: 'Load factor c', value: plain(loadFactor, 5) },
    { term: 'Contacts n', value: String(contacts) },
  ]
  if (pressure !== null) {
    const peak = pressure.peak === null ? '' : `, at most ${printed(pressure.peak, 'pressure')}`
    facts.push({
      term: 'Contact pressure',
      value: `${printed(pressure.mean, 'pressure')} in the mean${peak}, under ${printed(pressure.load, 'force')} on each contact (${pressure.law}).${pressure.doubts.map((doubt) => ` ${doubt}`).join('')}`,
    })
  }
  return facts
}

const sensorInWords = (limits: SensorLimits, dimension: Dimension): string =>
  `${rangeInWords(limits, dimension)}; ${limits.scaleAccuracy > 0 ? `scale within ±${percent(limits.scaleAccuracy)}` : 'scale error left out of the budget'}`

function rangeInWords({ floor, ceiling }: { floor?: number; ceiling?: number }, dimension: Dimension): string {
  if (floor === undefined && ceiling === undefined) return 'range not stated'
  if (floor === undefined) return `up to ${printed(ceiling ?? 0, dimension)}`
  if (ceiling === undefined) return `from ${printed(floor, dimension)}`
  return `${printed(floor, dimension)} to ${printed(ceiling, dimension)}`
}
