import type { Point, RigSpec } from '../../core/terms/index.ts'
import type { ReportInput } from '../reportInput.ts'
import { counted, listed, percent, printed } from '../words/printed.ts'
import { printedSpan } from '../words/printedSpan.ts'
import { type Found, lacking, partly, present, sayInNote, writeInSetup } from './found.ts'

/** How the test was run and read. */
export const findTest = {
  load: ({ setup, geometry, reduction }: ReportInput): Found => {
    const force = setup.run.axialForce ?? meanForce(reduction.points)
    if (!(force > 0)) return lacking(writeInSetup('run.axialForce'))
    const each = (geometry.loadFactor * force) / geometry.contacts
    const how = setup.run.axialForce === undefined ? 'read' : 'commanded'
    return present(`Axial force ${printed(force, 'force')} ${how}, ${printed(each, 'force')} on each contact.`)
  },

  motion: ({ reduction: { points } }: ReportInput): Found => {
    if (points.length === 0) return lacking('Measure a record with sliding steps.')
    const speeds = points.map(({ slidingSpeed }) => slidingSpeed)
    const distance = points.reduce((sum, { slidingSpeed, duration }) => sum + slidingSpeed * duration, 0)
    const time = points.reduce((sum, { duration }) => sum + duration, 0)
    return present(
      `${printedSpan(speeds, (speed) => printed(speed, 'velocity')) ?? ''}; the rows that were kept hold ${printed(distance, 'length')} of sliding in ${printed(time, 'time')}.`,
    )
  },

  environment: ({ setup: { run }, reduction }: ReportInput): Found => {
    const read = reduction.points.some(({ temperature }) => temperature !== null)
    const known: string[] = []
    if (run.temperature !== undefined) known.push(`${printed(run.temperature, 'temperature')} at the fixture`)
    else if (read) known.push('temperature at the fixture as read')
    if (run.roomTemperature !== undefined) known.push(`room at ${printed(run.roomTemperature, 'temperature')}`)
    if (run.relativeHumidity !== undefined) known.push(`relative humidity ${percent(run.relativeHumidity)}`)
    const missing: string[] = []
    if (run.temperature === undefined && !read) missing.push('run.temperature')
    if (run.roomTemperature === undefined) missing.push('run.roomTemperature')
    if (run.relativeHumidity === undefined) missing.push('run.relativeHumidity')
    const has = known.length === 0 ? '' : `${listed(known)}.`
    if (missing.length === 0) return present(`${has} Atmosphere: air unless a note says otherwise.`)
    return known.length === 0 ? lacking(writeInSetup(...missing)) : partly(has, writeInSetup(...missing))
  },

  runIn: (): Found => lacking(sayInNote('at which load and speed the surfaces ran in, and how far', 'runIn')),

  calibration: ({ setup: { rig } }: ReportInput): Found =>
    partly(
      `Torque and axial force by the rheometer; ${scales(rig)}.`,
      sayInNote('when and how they were last calibrated', 'calibration'),
    ),

  evaluation: (): Found => present('Kinetic friction at each speed, see Method. Static friction was not evaluated.'),

  repeats: ({ texts }: ReportInput): Found =>
    texts.replicate === undefined
      ? lacking(
          `This report holds one record. ${sayInNote('how many there are, their mean and their scatter', 'repeats')}`,
        )
      : partly(
          `This is replicate ${texts.replicate}.`,
          sayInNote('how many there are, their mean and their scatter', 'repeats'),
        ),

  trace: ({ figures }: ReportInput): Found =>
    figures.some(({ name }) => name === 'strip')
      ? present('The whole record, see Record.')
      : lacking(sayInNote('where the record can be seen', 'trace')),

  unusual: ({ reduction: { points } }: ReportInput): Found => {
    const steps = points.filter(({ remarks }) => remarks.some(({ kind }) => kind === 'stickSlip'))
    const seen = sayInNote('whether material was transferred or debris was seen', 'unusual')
    if (steps.length === 0) return partly('No stick–slip was found in the record.', seen)
    return partly(`Stick–slip in ${counted(steps.length, 'step')}, see Remarks.`, seen)
  },

  damage: (): Found => lacking(sayInNote('what both bodies looked like afterwards', 'damage')),
}

const scales = ({ torque, axialForce }: RigSpec): string =>
  torque.scaleAccuracy > 0 || axialForce.scaleAccuracy > 0
    ? `scale errors within ±${percent(torque.scaleAccuracy)} and ±${percent(axialForce.scaleAccuracy)}`
    : 'no error of scale is stated'

/** Mean axial force over the points, N; NaN without points. */
const meanForce = (points: readonly Point[]): number =>
  points.reduce((sum, { axialForce }) => sum + axialForce, 0) / points.length
